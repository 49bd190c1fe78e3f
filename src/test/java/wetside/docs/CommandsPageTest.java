package wetside.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import wetside.casework.CaseFile;
import wetside.cli.Wetside;

/** The page on commands leaves out no option and no field, and its case can be read. */
class CommandsPageTest {
    private static final Path PAGE = Path.of("docs", "commands.md");
    private static final String STAND = "src/test/resources/wetside/cli/stand.yaml";
    private static final Pattern OPTION = Pattern.compile("--[a-z]+(-[a-z]+)*");
    /** Maps whose keys are data: words, names of moments. */
    private static final Set<String> DATA = Set.of("words", "marks", "facts", "composition", "measured");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {"diagnose", "readings", "run", "check", "schema", "new", "tour", "cabinet", "part", "water"})
    void everyOptionIsDescribed(String command) {
        String page = Pages.read(PAGE);
        Matcher option = OPTION.matcher(out("", command, "--help"));
        while (option.find()) {
            if (!Set.of("--help", "--version").contains(option.group())) {
                assertThat(page).as("./wetside %s %s", command, option.group()).contains(option.group());
            }
        }
    }

    @Test
    void everyFieldOfTheJsonIsDescribed() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.yaml"), "wetside machine: 1\n");
        String gauge = "pump gauge at rest, cold: 0.1 bar\n";
        Set<String> fields = new TreeSet<>();
        for (String json : List.of(
                out("", "check", STAND, "--parts", "--json"),
                out("", "check", broken.toString(), "--json"),
                out("", "readings", STAND, "--draws", "8", "--json"),
                out("", "cabinet", "twin-boiler-lever", "--json"),
                out("", "part", "twin-boiler-lever", "gauge-tee", "--draws", "4", "--json"),
                out("", "tour", STAND, "--follow", "all", "--json"),
                out("", "water", "examples/water/tap.yaml", "--machine", "twin-boiler-lever", "--json"),
                out("", "run", STAND, "switched on", "--json"),
                out(gauge, "diagnose", STAND, "--fed-from", "mains", "--draws", "8", "--json"))) {
            collect(JsonMapper.shared().readTree(json), fields);
        }
        assertThat(fields).hasSizeGreaterThan(60);
        String page = Pages.read(PAGE);
        assertThat(fields).allSatisfy(field -> assertThat(page).contains("`" + field + "`"));
    }

    private static void collect(JsonNode node, Set<String> fields) {
        node.propertyNames().forEach(fields::add);
        node.propertyStream().filter(p -> !DATA.contains(p.getKey())).forEach(p -> collect(p.getValue(), fields));
        if (node.isArray()) {
            node.forEach(item -> collect(item, fields));
        }
    }

    @Test
    void theCaseShownIsACase() throws IOException {
        Matcher yaml = Pattern.compile("(?s)```yaml\n(wetside case.*?)```").matcher(Pages.read(PAGE));
        assertThat(yaml.find()).isTrue();
        CaseFile read = CaseFile.read(Files.writeString(folder.resolve("case.yaml"), yaml.group(1)));
        assertThat(read.found()).hasSize(3);
        assertThat(read.installed().feed().word()).isEqualTo("mains");
    }

    private static String out(String input, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        ByteArrayInputStream in = new ByteArrayInputStream(input.getBytes(UTF_8));
        Wetside.run(args, new PrintStream(out, true, UTF_8), new PrintStream(err, true, UTF_8), in);
        assertThat(err.toString(UTF_8)).doesNotContain("Wetside itself failed");
        return out.toString(UTF_8);
    }
}
