package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HeardTest {
    @Test
    void whatIsAsItShouldBeIsNotComplainedOf() {
        assertThat(Heard.trouble("No heat for the group, steam is fine"))
                .contains("heat")
                .doesNotContain("steam");
        assertThat(Heard.trouble("A shot takes a minute. The gauge looks as always."))
                .contains("shot")
                .doesNotContain("gauge");
        assertThat(Heard.trouble("The pump is okay but the display stays dark"))
                .contains("display", "dark")
                .doesNotContain("pump");
    }

    @Test
    void whatIsNotAsItShouldBeIs() {
        assertThat(Heard.trouble("the steam isn't fine")).contains("steam");
        assertThat(Heard.trouble("the shot never looks good")).contains("shot");
        assertThat(Heard.trouble("steam is fine")).as("nothing else was said").contains("steam");
    }
}
