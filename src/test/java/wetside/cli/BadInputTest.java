package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files as they really come: each gets a message with its place and what would be right, code 2, and nothing half done. */
class BadInputTest {
    private static final String TWIN = "machines/twin-boiler-lever.yaml";
    private static final String CASE = """
            wetside case: 1
            machine: %s
            %s
            found:
              %s
            """;

    @TempDir
    Path folder;

    static Stream<Arguments> machines() {
        return Stream.of(
                Arguments.of(
                        "unknown kind",
                        "kind: pressure gauge",
                        "kind: presure gauge",
                        ":34:11: components / gauge / kind: there is no kind \"presure gauge\". Maybe \"pressure gauge\"."),
                Arguments.of(
                        "unknown unit",
                        "{range: 16 bar}",
                        "{range: 16 baar}",
                        "\"baar\" is not a unit of pressure; use bar, mbar, kPa, MPa, Pa or psi. Maybe \"16 bar\"."),
                Arguments.of(
                        "missing unit",
                        "{range: 16 bar}",
                        "{range: 16}",
                        "\"16\" has no unit; a pressure is written in bar, mbar, kPa, MPa, Pa or psi. Maybe \"16 bar\"."),
                Arguments.of(
                        "port joined twice",
                        "  - tee.c > gauge.in",
                        "  - tee.c > gauge.in\n  - tee.c > cock.in",
                        "\"tee.c\" is joined twice, first in line"),
                Arguments.of(
                        "revision date",
                        "{name: B, from: 2019-09}",
                        "{name: B, from: 2019-19}",
                        "\"2019-19\" is no month; a month is written like 2021-06"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void aWrongMachineFile(String what, String piece, String with, String message) {
        Path file = Shell.changed(folder, Shell.STAND, piece, with);
        for (String command : new String[] {"check", "readings", "diagnose"}) {
            refused(Shell.run(command, file.toString()), file.toString(), message);
        }
        refused(Shell.run("run", file.toString(), "warm-up"), file.toString(), message);
    }

    @Test
    void aBoilerWithoutReliefPath() {
        Path file = Shell.changed(folder, TWIN, "  - steam-boiler.relief > safety-valve.in:out > safety-vent.in\n", "");
        refused(
                Shell.run("check", file.toString()),
                "components / steam-boiler: nothing relieves this vessel: no line leads from it to a safety or"
                        + " over-pressure valve without passing something that can shut");
    }

    @Test
    void aGlassThatLooksIntoNoBoiler() {
        Path file = Shell.changed(
                folder,
                "machines/spring-lever.yaml",
                "  - boiler.glass top > glass.top\n",
                "  - {join: boiler.glass top > glass.top, bore: 3 mm, length: 50 mm}\n");
        refused(
                Shell.run("check", file.toString()),
                "components / glass: port \"top\" looks into a boiler and is screwed straight into it");
    }

    @Test
    void linesThatNoFlowCanBeFoundFor() {
        Path file = Shell.changed(
                folder,
                "machines/spring-lever.yaml",
                "  - breaker-tube.over > tray.a\n",
                "  - breaker-tube.over > tray.a\n  - boiler.upper > tray.b\n");
        for (String command : new String[] {"check", "readings"}) {
            refused(
                    Shell.run(command, file.toString()),
                    "vessel 'boiler' is joined to another vessel or to the open without a line between them");
        }
    }

    @Test
    void allThatIsWrongIsToldAtOnceAlsoToPrograms() throws IOException {
        Path file = Shell.changed(folder, Shell.STAND, "{range: 16 bar}", "{range: 16 baar}");
        Files.writeString(file, Files.readString(file).replace("kind: hose", "kind: hoes"));
        refused(Shell.run("check", file.toString()), "there is no kind \"hoes\"", "\"baar\" is not a unit");
        Shell.Done json = Shell.run("check", file.toString(), "--json");
        assertThat(json.exitCode()).isEqualTo(Wetside.BAD_INPUT);
        assertThat(json.out()).contains("\"ok\" : false", "\"line\" : 28", "there is no kind", "\"maybe\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "readings", "diagnose"})
    void filesThatAreNone(String command) throws IOException {
        Path empty = Files.writeString(folder.resolve("empty.yaml"), "");
        refused(Shell.run(command, empty.toString()), empty + ": the file is empty");
        Path big = folder.resolve("big.yaml");
        try (RandomAccessFile file = new RandomAccessFile(big.toFile(), "rw")) {
            file.setLength(50_000_000);
        }
        refused(Shell.run(command, big.toString()), big + ": the file has 50 MB; the largest taken is 1 MB");
        Path bomb = Files.writeString(folder.resolve("bomb.yaml"), bomb());
        refused(Shell.run(command, bomb.toString()), bomb + ":2:5: aliases (*name) are not used here");
        Path text = Files.writeString(folder.resolve("text.yaml"), "wetside machin: 1\n");
        refused(Shell.run(command, text.toString()), "this is no wetside machine file");
        refused(Shell.run(command, folder.resolve("emty.yaml").toString()), "there is no such file. Maybe " + empty);
    }

    private static String bomb() {
        StringBuilder text = new StringBuilder("a: &a [x, x, x, x, x, x, x, x, x]\n");
        for (char c = 'b'; c < 'k'; c++) {
            String before = "*" + (char) (c - 1);
            text.append(c).append(": &").append(c).append(" [").append((before + ", ").repeat(8));
            text.append(before).append("]\n");
        }
        return text.toString().replace("b: &b [*a", "b: [*a");
    }

    static Stream<Arguments> cases() {
        return Stream.of(
                Arguments.of(
                        "unknown reading",
                        "",
                        "gauge pressure: 2 bar",
                        ":5:3: found / gauge pressure: this machine has no reading \"gauge pressure\""),
                Arguments.of(
                        "reading misspelt",
                        "",
                        "mains cock stand: open",
                        "no reading \"mains cock stand\". Maybe \"mains cock stands\"."),
                Arguments.of(
                        "out of any sense",
                        "",
                        "pump gauge at rest, cold: 90 bar",
                        ":5:29: found / pump gauge at rest, cold: \"pump gauge at rest, cold\" cannot be 90.0 bar: whatever"
                                + " is wrong with this machine, it reads between"),
                Arguments.of("unit missing", "", "pump gauge at rest, cold: 2", "\"2\" has no unit"),
                Arguments.of("unit unknown", "", "pump gauge at rest, cold: 2 baar", "Maybe \"2 bar\""),
                Arguments.of("no such word", "", "mains cock stands: ajar", "it is answered by shut, "),
                Arguments.of("a list", "", "mains cock stands: [open]", "a text is wanted here"),
                Arguments.of(
                        "month that is none",
                        "built: 2021-13",
                        "mains cock stands: open",
                        ":3:8: built: \"2021-13\" is no month; a month is written like 2021-06"),
                Arguments.of(
                        "built too early",
                        "built: 2001-01",
                        "mains cock stands: open",
                        ":3:8: built: no machine of this file was built that early; the first is from 2016-03"),
                Arguments.of(
                        "no such revision",
                        "revision: C",
                        "mains cock stands: open",
                        "this machine has no revision \"C\"; there are A and B"),
                Arguments.of(
                        "wrong installation",
                        "installation: {fed from: well}",
                        "mains cock stands: open",
                        "\"well\" is none of tank and mains"),
                Arguments.of("wrong who", "who: me", "mains cock stands: open", "\"me\" is none of owner"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aWrongCase(String what, String line, String found, String message) throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(
                file,
                String.format(CASE, Path.of(Shell.STAND).toAbsolutePath(), line.isEmpty() ? "# none" : line, found));
        refused(Shell.run("diagnose", file.toString(), "--draws", "8"), file.toString(), message);
        refused(Shell.run("diagnose", file.toString(), "--draws", "8", "--json"), file.toString(), message);
    }

    @Test
    void severalWrongAnswersAreToldTogether() throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(
                file,
                String.format(
                        CASE,
                        Path.of(Shell.STAND).toAbsolutePath(),
                        "# none",
                        "nothing: 1\n  mains cock stands: ajar\n  pump gauge at rest, cold: 2"));
        refused(Shell.run("diagnose", file.toString()), "no reading \"nothing\"", "\"ajar\"", "\"2\" has no unit");
    }

    @Test
    void optionsThatACaseSaysItself() throws IOException {
        Path file = folder.resolve("case.yaml");
        Files.writeString(
                file, String.format(CASE, Path.of(Shell.STAND).toAbsolutePath(), "# none", "mains cock stands: open"));
        refused(Shell.run("diagnose", file.toString(), "--built", "2020-01"), "--built: write that into the case");
    }

    @Test
    void aScenarioWithNamesThisMachineHasNot() throws IOException {
        Path file = folder.resolve("s.yaml");
        Files.writeString(file, "wetside scenario: 1\nsteps:\n  - {set: cock.positon, to: open}\n");
        refused(Shell.run("run", Shell.STAND, file.toString()), "no handle 'cock.positon'. Maybe \"cock.position\".");
        Files.writeString(file, "wetside scenario: 1\nsteps:\n  - {set: cock.position, to: ajar}\n");
        refused(Shell.run("run", Shell.STAND, file.toString()), "cannot be set to 'ajar'; there are shut and open");
        Files.writeString(file, "wetside scenario: 1\nsteps:\n  - {until: lamp.light, is: red, at most: 2 s}\n");
        refused(Shell.run("run", Shell.STAND, file.toString()), "'lamp.light' never shows 'red'; there are");
        Files.writeString(file, "wetside scenario: 1\nsteps:\n  - {go: home}\n  - wait: 5\n");
        refused(
                Shell.run("run", Shell.STAND, file.toString()),
                file + ":3:5: steps / 1: a step is one of set, wait, until, mark",
                file + ":4:11",
                "\"5\" has no unit");
    }

    private static void refused(Shell.Done done, String... parts) {
        assertThat(done.exitCode()).as(done.out() + done.err()).isEqualTo(Wetside.BAD_INPUT);
        assertThat(done.out()).isEmpty();
        assertThat(done.err()).contains(parts).doesNotContain("Exception", "\tat ");
    }

    @Test
    void aFileThatIsThereIsNotWrittenOver(@TempDir Path folder) throws IOException {
        Path mine = folder.resolve("mine.yaml");
        assertThat(Shell.run("new", mine.toString(), "--title", "a \"quoted\" \\ one")
                        .exitCode())
                .isZero();
        assertThat(Shell.run("check", mine.toString()).out()).startsWith("a \"quoted\" \\ one: nothing wrong");
        Files.writeString(mine, "my work");
        Shell.Done done = Shell.run("new", mine.toString());
        assertThat(done.exitCode()).isEqualTo(2);
        assertThat(done.err()).contains("is there already and was left alone");
        assertThat(mine).hasContent("my work");
        assertThat(Shell.run("new", folder.resolve("no/such.yaml").toString()).err())
                .contains("there is no folder");
        assertThat(Shell.run("new", folder.resolve("b.yaml").toString(), "--title", " ")
                        .err())
                .contains("a title has one line");
    }
}
