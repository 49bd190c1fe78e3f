package wetside.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class RailsTest {
    private static final Rails.Row WORN = new Rails.Row("pump <worn>", 2, 4, 5, 6, 8, false, true, Rails.Verdict.FITS);
    private static final Rails.Row WHOLE =
            new Rails.Row("works as it should", 8.2, 8.5, 8.7, 8.9, 9.2, true, false, Rails.Verdict.NO);

    private static double x(String svg, String look) {
        Matcher m = Pattern.compile("<rect x=\"([0-9.]+)\"[^>]*class=\"" + look + "\"")
                .matcher(svg);
        assertThat(m.find()).as(look).isTrue();
        return Double.parseDouble(m.group(1));
    }

    @Test
    void bandCoreAndMarkShareOneAxisThatBeginsWhereTheDialDoes() {
        String svg = new Rails(List.of(WORN, WHOLE), new Rails.Mark(6.2, 0.4, "6.2"), "bar", true).wide();
        assertThat(x(svg, "band")).isLessThan(x(svg, "core")).isLessThan(x(svg, "zone"));
        assertThat(svg)
                .contains(">0</text>")
                .contains("url(#hatch-w)")
                .contains(">6.2</text>")
                .contains(">fits</text>");
        assertThat(svg).contains("pump &lt;worn&gt;").doesNotContain("style=");
    }

    @Test
    void anOpenCircuitStandsAtTheEndAndStretchesNothing() {
        Rails.Row open = new Rails.Row("lead off", 1e9, 1e9, 1e9, 1e9, 1e9, false, true, Rails.Verdict.NONE);
        String svg = new Rails(List.of(WORN, open), null, "Ω", false).narrow();
        assertThat(svg).contains("open ▸").doesNotContain("NaN").doesNotContain("000000000");
        assertThat(new Rails(List.of(open), null, "Ω", false).words()).isEqualTo("lead off: open");
    }
}
