package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** What is typed wrongly is told in one line or two, with what would be right, and ends with 2. */
class CommandLineTest {
    private static final String TWIN = "twin-boiler-lever";

    static Stream<Arguments> mistakes() {
        return Stream.of(
                mistake("wetside bogus", "'bogus'", "the commands are diagnose, readings, run"),
                mistake("wetside check", "Missing required parameter: 'FILE'", "wetside check --help"),
                mistake("wetside check --jsn x", "Unknown option: '--jsn'", "--json"),
                mistake("wetside check nosuch", "no machine of this name comes with Wetside", TWIN),
                mistake("wetside readings " + TWIN + " --revision C", "no revision 'C'", "there are A and B"),
                mistake("wetside readings " + TWIN + " --built 2021-13", "no month", "2021-06"),
                mistake("wetside readings " + TWIN + " --built 2001-01", "before the first revision", "2016-03"),
                mistake("wetside readings " + TWIN + " --built 2020-01 --revision A", "not both"),
                mistake("wetside readings " + TWIN + " --fed-from well", "tank or mains, not 'well'"),
                mistake("wetside readings " + TWIN + " --voltage 230", "has no unit", "Maybe \"230 V\""),
                mistake("wetside readings " + TWIN + " --voltage 9_V", "voltage lies between 80 V and 265 V"),
                mistake("wetside readings " + TWIN + " --altitude 90_km", "--altitude"),
                mistake("wetside readings " + TWIN + " --draws x", "'x' is no whole number"),
                mistake("wetside readings " + TWIN + " --draws 1", "from 2 to 4096, not 1"),
                mistake("wetside readings " + TWIN + " --who me", "owner, technician or qualified, not 'me'"),
                mistake("wetside diagnose " + TWIN + " --draws 9", "multiple of 8"),
                mistake("wetside diagnose " + TWIN + " --who me", "owner, technician or qualified"),
                mistake("wetside diagnose nosuch.yaml", "there is no such file"),
                mistake("wetside diagnose src", "this is a folder"),
                mistake("wetside run " + TWIN, "Missing required parameter: 'SCENARIO'"),
                mistake("wetside run " + TWIN + " shoot", "no routine and no file 'shoot'", "Maybe \"shot\""),
                mistake("wetside run " + TWIN + " nothing", "the routines are cold at rest"),
                mistake("wetside run " + TWIN + " shot --break pump", "COMPONENT:FAULT"),
                mistake("wetside run " + TWIN + " shot --break pmp:worn", "no component 'pmp'", "Maybe \"pump\""),
                mistake("wetside run " + TWIN + " shot --break pump:x", "no fault 'x'", "worn vanes"),
                mistake("wetside run " + TWIN + " shot --break pump:worn=2", "'2' is not a number from 0"),
                mistake("wetside run " + TWIN + " shot --show cup.flo", "no reading 'cup.flo'", "\"cup.flow\""),
                mistake("wetside run " + TWIN + " shot --rows 1", "from 2 to 1000"),
                mistake("wetside run " + TWIN + " shot --csv - --json", "cannot share the screen"));
    }

    /** Only the command asked for is looked up; it must be the very one that the help of all knows. */
    @Test
    void everyCommandIsTheSameAloneAndAmongAll() {
        CommandLine all = new Commands(new Console(System.out, System.err, InputStream.nullInputStream(), false, false))
                .line("help");
        assertThat(all.getSubcommands()).hasSizeGreaterThan(12);
        all.getSubcommands().forEach((name, command) -> {
            Command said = command.getCommandSpec().userObject().getClass().getAnnotation(Command.class);
            assertThat(said.name()).isEqualTo(name);
            if (!name.equals("help")) {
                assertThat(Shell.run(name, "--help").out())
                        .isEqualTo(Shell.run("help", name).out())
                        .contains("wetside " + name);
            }
        });
    }

    private static Arguments mistake(String command, String... parts) {
        return Arguments.of(command, parts);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("mistakes")
    void aMistakeIsExplained(String command, String[] parts) {
        Shell.Done done = Shell.run(words(command));
        assertThat(done.exitCode()).as(done.err()).isEqualTo(Wetside.BAD_INPUT);
        assertThat(done.out()).isEmpty();
        assertThat(done.err()).contains(parts).doesNotContain("Exception", "\tat ", "    at ");
    }

    private static String[] words(String command) {
        String[] all = command.substring("wetside ".length()).split(" ");
        return Stream.of(all).map(w -> w.replace('_', ' ')).toArray(String[]::new);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "check --help",
                "readings --help",
                "run --help",
                "diagnose --help",
                "schema --help",
                "new --help"
            })
    void helpIsPrintedAndAllIsWell(String command) {
        Shell.Done done = Shell.run(command.split(" "));
        assertThat(done.exitCode()).isZero();
        assertThat(done.out()).startsWith("Usage: wetside");
        assertThat(done.out().lines())
                .allSatisfy(line -> assertThat(Lines.width(line)).isLessThanOrEqualTo(100));
        assertThat(done.err()).isEmpty();
    }

    @Test
    void withoutACommandThereIsHelp() {
        assertThat(Shell.run()).isEqualTo(Shell.run("--help"));
    }

    @Test
    void theVersionIsOneLine() {
        assertThat(Shell.run("--version").out()).startsWith("wetside ").hasLineCount(1);
    }

    @Test
    void aFaultOfOursEndsWithThreeAndNoTrace() {
        InputStream broken = new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the wire is cut");
            }
        };
        Shell.Done done = Shell.fed(broken, "diagnose", Shell.STAND, "--draws", "8");
        assertThat(done.exitCode()).isEqualTo(Wetside.INTERNAL);
        assertThat(done.err())
                .contains("Wetside itself failed", "the wire is cut")
                .doesNotContain("\tat ");
    }

    @Test
    void checkTellsWhatAFileDescribes() {
        Shell.Done done = Shell.run("check", Shell.STAND, "--parts");
        assertThat(done.exitCode()).isZero();
        assertThat(done.out())
                .contains(
                        "Fellmoor Filling Stand: nothing wrong with it",
                        "revision B, built from 2019-09: 14 components")
                .contains("tap: filling cock (drain cock)", "shows   gauge.needle", "cock.position (shut, open)");
        assertThat(done.out().lines())
                .allSatisfy(line -> assertThat(Lines.width(line)).isLessThanOrEqualTo(100));
    }

    @Test
    void theSchemaIsJson() {
        Shell.Done done = Shell.run("schema");
        assertThat(done.exitCode()).isZero();
        assertThat(done.out()).startsWith("{").contains("\"$schema\"");
    }
}
