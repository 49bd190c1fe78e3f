package wetside.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.machine.MachineFile;

/** The page on machine files: its example can be read, and its tables are what the kinds declare today. */
class MachineFilePageTest {
    private static final Path PAGE = Path.of("docs", "machine-file.md");
    private static final Pattern TABLES = Pattern.compile("(?s)(<!-- kinds -->\n).*?(<!-- end of kinds -->\n)");
    private static final Pattern SIZES = Pattern.compile("(?s)(<!-- sizes -->\n).*?(<!-- end of sizes -->\n)");
    private static final Pattern YAML = Pattern.compile("(?s)```yaml\n(.*?)```");

    @Test
    void tablesSayWhatTheKindsDeclare() throws IOException {
        String page = Pages.read(PAGE);
        Matcher tables = TABLES.matcher(page);
        assertThat(tables.find()).isTrue();
        String kinds = tables.replaceAll("$1" + Matcher.quoteReplacement(KindTables.all()) + "$2");
        Matcher sizes = SIZES.matcher(kinds);
        assertThat(sizes.find()).isTrue();
        String right = sizes.replaceAll("$1" + Matcher.quoteReplacement(KindTables.sizes()) + "$2");
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, right);
            return;
        }
        assertThat(page)
                .as("mvn -q test -Dtest=MachineFilePageTest -Ddocs.write=true writes the tables anew")
                .isEqualTo(right);
    }

    @Test
    void theExampleIsAMachine() {
        List<String> examples = YAML.matcher(Pages.read(PAGE))
                .results()
                .map((MatchResult m) -> m.group(1))
                .toList();
        assertThat(examples).hasSize(1);
        MachineFile file = MachineFile.read("example.yaml", examples.get(0), Kinds.declarations());
        assertThat(file.machine("A").has("breaker")).isFalse();
        assertThat(file.machine("B").joins().wires()).hasSize(5);
        assertThat(file.machine("A").joins().wires()).hasSize(3);
    }
}
