package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** An owner whose words speak of danger is not asked to try anything; somebody of the trade is. */
class DangerOnTheLineTest {
    @TempDir
    Path folder;

    private String given;

    @BeforeEach
    void aBurntSmell() throws IOException {
        given = Shell.standCase(
                        folder.resolve("case.yaml"),
                        "complaint: It went dark and smells burnt\nfound:\n  power lamp: dark\n")
                .toString();
    }

    @Test
    void theOwnerIsToldToSwitchOffAndTriesNothing() {
        String out = Shell.run("diagnose", given, "--draws", "16").out().replaceAll("\\s+", " ");
        assertThat(out)
                .contains("Tell the owner first: “Please switch it off", "Next: nothing is tried", "--who technician")
                .doesNotContain("Next: look", "owner may do this");
        var json = JsonMapper.builder()
                .build()
                .readTree(
                        Shell.run("diagnose", given, "--draws", "16", "--json").out());
        assertThat(json.get("stop").asString()).contains("pull the plug");
        assertThat(json.has("next")).isFalse();
    }

    @Test
    void aTechnicianGoesOn() {
        String out = Shell.run("diagnose", given, "--draws", "16", "--who", "technician")
                .out();
        assertThat(out).contains("Next: ").doesNotContain("Tell the owner", "nothing is tried");
    }
}
