package wetside.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.machine.BadFile;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** The tutorial shows files that are there, short and right; its commands are run by {@link ShownOutputTest}. */
class TutorialTest {
    private static final Path PAGE = Path.of("docs/tutorial.md");
    private static final Path MACHINE = Path.of("docs/tutorial/plain.yaml");
    private static final Pattern SHOWN =
            Pattern.compile("<!-- file: (\\S+) -->\\R```yaml\\R(.*?)^```", Pattern.DOTALL | Pattern.MULTILINE);

    @Test
    void showsItsFilesWholeAndTrue() throws IOException {
        String page = Pages.read(PAGE);
        StringBuilder fresh = new StringBuilder();
        Matcher shown = SHOWN.matcher(page);
        while (shown.find()) {
            String file = "<!-- file: " + shown.group(1) + " -->\n```yaml\n" + Files.readString(Path.of(shown.group(1)))
                    + "```";
            shown.appendReplacement(fresh, Matcher.quoteReplacement(file));
        }
        shown.appendTail(fresh);
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, fresh);
        } else {
            assertThat(page).isEqualTo(fresh.toString());
        }
    }

    @Test
    void theMachineHasSixtyLines() throws IOException {
        assertThat(Files.readAllLines(MACHINE)).hasSizeLessThanOrEqualTo(60);
    }

    @Test
    void theFileToBeginFromIsTheSameMachine() throws IOException {
        Machine shown =
                MachineFile.find(MACHINE.toString(), Kinds.declarations()).newest();
        Machine starter = MachineFile.read(
                        "starter.yaml",
                        Files.readString(Path.of("src/main/resources/wetside/starter.yaml")),
                        Kinds.declarations())
                .newest();
        assertThat(starter.joins()).isEqualTo(shown.joins());
        assertThat(starter.components())
                .extracting(Component::id)
                .containsExactlyInAnyOrderElementsOf(
                        shown.components().stream().map(Component::id).toList());
        for (Component c : shown.components()) {
            for (int i = 0; i < c.kind().parameters().size(); i++) {
                assertThat(starter.component(c.id()).value(i)).as(c.id()).isEqualTo(c.value(i));
            }
        }
    }

    @Test
    void withoutItsReliefTheBoilerIsRefusedInTheWordsShown() throws IOException {
        String without = Files.readString(MACHINE)
                .replaceAll("(?s)  over-pressure:\\n.*?\\n", "")
                .replaceAll("    \\{kind: over-pressure valve.*\\n", "")
                .replace("  - tee.c > over-pressure.in:out > tank.return\n", "");
        assertThat(without).doesNotContain("over-pressure");
        try {
            MachineFile.read("plain.yaml", without, Kinds.declarations());
            assertThat(false).as("it was read").isTrue();
        } catch (BadFile e) {
            Matcher words = Pattern.compile("```text\\nboiler: (.*)\\n```").matcher(Pages.read(PAGE));
            assertThat(words.find()).isTrue();
            assertThat(e.getMessage()).contains(words.group(1));
        }
    }
}
