package wetside.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.units.Dimension;

class NodeTest {
    private final Node node = Node.read("n.yaml", """
            title: "Two  words"
            wait: 10 min
            roles: [a, b]
            one: a
            open: yes
            nested: {deep: {text: here}}
            nothing:
            blocked: >
              several
              lines
            """);

    @Test
    void givesWhatIsThere() {
        assertThat(node.text("title")).isEqualTo("Two words");
        assertThat(node.quantity("wait", Dimension.TIME)).isEqualTo(600);
        assertThat(node.texts("roles")).containsExactly("a", "b");
        assertThat(node.texts("one")).containsExactly("a");
        assertThat(node.yes("open", false)).isTrue();
        assertThat(node.need("nested").need("deep").text("text")).isEqualTo("here");
        assertThat(node.text("blocked")).isEqualTo("several lines");
        assertThat(node.choice("one", List.of("a", "b"))).isEqualTo("a");
        assertThatCode(node::check).doesNotThrowAnyException();
    }

    @Test
    void givesTheUsualWhereNothingIsThere() {
        assertThat(node.text("more", "usual")).isEqualTo("usual");
        assertThat(node.quantity("more", Dimension.TIME, 3)).isEqualTo(3);
        assertThat(node.texts("more")).isEmpty();
        assertThat(node.entries("more")).isEmpty();
        assertThat(node.yes("more", true)).isTrue();
        assertThatCode(node::check).doesNotThrowAnyException();
    }

    @Test
    void notesWhatIsMissingOnceAndGoesOn() {
        assertThat(node.need("gone").need("further").text("text")).isEmpty();
        assertThat(node.quantity("title", Dimension.TIME)).isNaN();
        assertThat(node.choice("one", List.of("b", "aa"))).isEmpty();
        node.text("nothing");
        node.need("nested").only("deeep");
        assertThatThrownBy(node::check)
                .isInstanceOfSatisfying(
                        BadFile.class,
                        bad -> assertThat(bad.problems())
                                .extracting(Problem::line)
                                .containsExactly(
                                        "n.yaml:1:1: \"gone\" is missing.",
                                        "n.yaml:1:8: title: \"Two words\" is not a time in s, ms, min, h, d or a.",
                                        "n.yaml:4:6: one: \"a\" is none of b and aa.",
                                        "n.yaml:6:10: nested / deep: \"deep\" is not known here; known are deeep. Maybe \"deeep\".",
                                        "n.yaml:7:1: nothing: nothing is written here; a text is wanted."));
    }

    @Test
    void aProblemCanPointAtAPieceOfAText() {
        node.need("title").problemAt("words", "no such word", "\"worlds\"");
        assertThat(node.problems().all().get(0).excerpt())
                .containsExactly("    1 | title: \"Two  words\"", "      |              ^^^^^", "    2 | wait: 10 min");
    }
}
