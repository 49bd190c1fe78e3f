package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Low mains pressure and a dead lamp at once: a wrong answer or two causes. */
class TwoCausesTest {
    private static final String LAMP =
            "  power lamp: dark\n  voltage at the plug while heating: 230 V\n" + "  power drawn while heating: 0 W\n";

    @TempDir
    Path folder;

    private JsonNode diagnosed(String found) throws IOException {
        Path given = Shell.standCase(folder.resolve("case.yaml"), "installation: {fed from: mains}\nfound:\n" + found);
        Shell.Done done = Shell.run("diagnose", given.toString(), "--draws", "16", "--json");
        assertThat(done.exitCode()).as(done.err()).isEqualTo(Wetside.FINDINGS);
        return JsonMapper.builder().build().readTree(done.out());
    }

    @Test
    void twoAtOnceAreFoundWhereOneDoesNotExplain() throws IOException {
        JsonNode one = diagnosed("  power lamp: dark\n");
        assertThat(one.get("pairsTried").asInt()).isZero();
        JsonNode two = diagnosed("  pump gauge at rest, cold: 0.9 bar\n  pump gauge at rest, hot: 0.9 bar\n" + LAMP);
        assertThat(two.get("pairsTried").asInt()).isPositive();
        assertThat(two.get("explained").asBoolean()).isTrue();
        boolean known = false;
        for (int i = 0; i < 3; i++) {
            String cause = two.get("causes").get(i).get("cause").asString();
            known |= cause.equals("lamp: dead + mains: pressure too low");
        }
        assertThat(known).as(two.get("causes").toString()).isTrue();
    }

    @Test
    void whyNotNamesTheReadingAndWhatWouldPart() throws IOException {
        Path given = Shell.standCase(
                folder.resolve("lamp.yaml"),
                "installation: {fed from: mains}\nfound:\n  pump gauge at rest, cold: 0.9 bar\n");
        Shell.Done done = Shell.run("diagnose", given.toString(), "--draws", "16", "--why-not", "lamp: dead");
        assertThat(done.out())
                .contains("Why not", "− pump gauge at rest, cold: 0.90 bar (strong)")
                .contains("what would part the two");
        Shell.Done json = Shell.run("diagnose", given.toString(), "--draws", "16", "--why-not", "lamp: dead", "--json");
        JsonNode why =
                JsonMapper.builder().build().readTree(json.out()).get("whyNot").get(0);
        assertThat(why.get("wouldPart").toString()).contains("power lamp");
        assertThat(Shell.run("diagnose", Shell.STAND, "--why-not", "lamp").err())
                .contains("case file");
    }
}
