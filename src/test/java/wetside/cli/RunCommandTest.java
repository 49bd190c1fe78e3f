package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RunCommandTest {
    private static final String SCENARIO = """
            wetside scenario: 1
            steps:
              - wait: 20 s
              - mark: quiet
              - {set: cock.position, to: open}
              - wait: 10 s
              - mark: filled
              - {set: switch.switch, to: "on"}
              - wait: 30 s
            """;

    @TempDir
    Path folder;

    private Shell.Done run(String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("fill.yaml"), SCENARIO);
        String[] args = Stream.concat(
                        Stream.of("run", Shell.STAND, file.toString(), "--show", "pump gauge.needle,lamp.light"),
                        Stream.of(more))
                .toArray(String[]::new);
        return Shell.run(args);
    }

    @Test
    void theTableTellsWhatWasDoneBetweenItsRows() throws IOException {
        Shell.Done done = run("--rows", "5");
        assertThat(done.exitCode()).as(done.err()).isZero();
        assertThat(done.out())
                .containsSubsequence("time  gauge  lamp light\n", "s    bar\n", "20.0  ─ quiet\n")
                .containsSubsequence("· cock position: open\n", "─ filled\n", "· switch switch: on\n", "lit\n")
                .contains("Balance: water off by");
        assertThat(done.out().lines())
                .allSatisfy(line -> assertThat(Lines.width(line)).isLessThanOrEqualTo(100));
    }

    @Test
    void whereTwoGroupsCanDoItOneMustBeNamed() {
        assertThat(Shell.run("run", "exchanger-two-group", "free flow").err())
                .contains("'free flow, left group' and 'free flow, right group': say which");
        assertThat(Shell.run("run", "exchanger-two-group", "free flow, right group", "--rows", "2")
                        .exitCode())
                .isZero();
    }

    @Test
    void whatTheMachineHasNoPartsForIsToldByItsParts() {
        assertThat(Shell.run("run", "exchanger-two-group", "tank emptied and filled")
                        .err())
                .contains("cannot be taken through 'tank emptied and filled': it has no tank.water");
    }

    @Test
    void manyReadingsMakeSeveralTables() {
        Shell.Done done = Shell.run("run", "twin-boiler-lever", "cold at rest", "--rows", "2");
        assertThat(done.exitCode()).as(done.err()).isZero();
        assertThat(done.out().lines())
                .allSatisfy(line -> assertThat(Lines.width(line)).isLessThanOrEqualTo(100));
        assertThat(done.out()).contains("pump gauge", "drain tube");
    }

    @Test
    void csvHoldsEverythingAndIsThereWhole() throws IOException {
        Path csv = folder.resolve("run.csv");
        assertThat(run("--csv", csv.toString()).exitCode()).isZero();
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines.get(0)).startsWith("time s,").contains(",gauge.needle bar", ",lamp.light");
        int columns = lines.get(0).split(",").length;
        assertThat(lines)
                .hasSizeGreaterThan(12)
                .allSatisfy(l -> assertThat(l.split(",", -1)).hasSize(columns));
        assertThat(lines.get(lines.size() - 1)).startsWith("60.00,");
        assertThat(run("--csv", "-").out()).isEqualTo(Files.readString(csv));
        onlyFiles("fill.yaml", "run.csv");
    }

    @Test
    void whatCannotBeWrittenIsToldBeforeAnythingRuns() throws IOException {
        Path old = Files.writeString(folder.resolve("old"), "as it was");
        for (String option : List.of("--csv", "--svg")) {
            refused(run(option, folder.toString()), option + " " + folder + " is a folder");
            refused(run(option, folder + "/none/x"), "there is no folder " + folder + "/none");
            refused(run(option, old + "/x"), "there is no folder " + old);
            refused(run(option, "a\0b"), "no name of a file");
        }
        refused(run("--csv", old.toString(), "--svg", old.toString()), "the same file");
        assertThat(old).hasContent("as it was");
        onlyFiles("fill.yaml", "old");
    }

    private void onlyFiles(String... names) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.map(f -> f.getFileName().toString())).containsExactlyInAnyOrder(names);
        }
    }

    private static void refused(Shell.Done done, String message) {
        assertThat(done.exitCode()).as(done.err()).isEqualTo(Wetside.BAD_INPUT);
        assertThat(done.out()).isEmpty();
        assertThat(done.err()).contains(message).doesNotContain("Exception");
    }

    @Test
    void jsonHoldsSeriesMarksAndBalance() throws IOException {
        JsonNode json = JsonMapper.shared()
                .readTree(run("--json", "--break", "hose:kinked=0.5").out());
        assertThat(json.get("marks").get("quiet").doubleValue()).isEqualTo(20);
        assertThat(json.get("done").get(0).get("what").asString()).isEqualTo("cock position: open");
        assertThat(json.get("broken").get(0).asString()).isEqualTo("hose:kinked=0.5");
        int times = json.get("time").size();
        assertThat(json.get("readings"))
                .hasSize(2)
                .allSatisfy(r -> assertThat(r.get("values")).hasSize(times));
        assertThat(json.get("readings").get(0).get("unit").asString()).isEqualTo("bar");
        assertThat(Math.abs(json.get("balance").get("waterKg").doubleValue())).isLessThan(1e-6);
    }

    @Test
    void theWholeStoryBeginsWithTheColdMachine() {
        JsonNode part = json("run", Shell.STAND, "switched on", "--json");
        JsonNode whole = json("run", Shell.STAND, "switched on", "--json", "--whole");
        assertThat(part.get("seconds").doubleValue()).isEqualTo(20);
        assertThat(whole.get("seconds").doubleValue()).isEqualTo(140);
        assertThat(part.get("marks").propertyNames()).containsExactly("looked");
        assertThat(whole.get("marks").propertyNames()).containsExactly("rested", "looked");
    }

    private static JsonNode json(String... args) {
        return JsonMapper.shared().readTree(Shell.run(args).out());
    }

    @Test
    void theChartIsWellFormedAndNamesWhatItShows() throws Exception {
        String svg = run("--svg", "-", "--break", "hose:kinked=0.9").out();
        Document document =
                DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
        assertThat(document.getDocumentElement().getTagName()).isEqualTo("svg");
        assertThat(svg).contains(">gauge<", ">lamp light<", ">cock position: open<", "without it", "60 s<");
    }
}
