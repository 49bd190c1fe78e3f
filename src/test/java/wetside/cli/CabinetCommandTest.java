package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands cabinet and part: what they say of good input and of bad. */
class CabinetCommandTest {
    private static final String TWIN = "twin-boiler-lever";

    @TempDir
    Path folder;

    @Test
    void textSaysWhatEachPanelHides() {
        Shell.Done r = Shell.run("cabinet", TWIN);
        assertThat(r.exitCode()).isZero();
        assertThat(r.out())
                .contains("Case 330 mm wide, 480 mm deep, 400 mm high.")
                .contains("Behind the left side panel (4 min off and on;")
                .contains("right side panel off (4 min), then take the control board (66) off:");
    }

    @Test
    void onePartAndOneSide() {
        assertThat(Shell.run("cabinet", TWIN, "--part", "pump").out())
                .contains("10 rotary vane pump: rear panel off (5 min)");
        assertThat(Shell.run("cabinet", TWIN, "--from", "left").out())
                .contains("From the left, the nearest first:")
                .contains("over-pressure valve")
                .doesNotContain("brew relay");
    }

    @Test
    void drawingsAndSheetsAreWritten() throws IOException {
        Path svg = folder.resolve("c.svg");
        Path html = folder.resolve("c.html");
        Path pdf = folder.resolve("c.pdf");
        Shell.Done r = Shell.run(
                "cabinet",
                TWIN,
                "--from",
                "rear",
                "--part",
                "motor",
                "--svg",
                svg.toString(),
                "--html",
                html.toString(),
                "--pdf",
                pdf.toString());
        assertThat(r.exitCode()).as(r.err()).isZero();
        assertThat(Files.readString(svg)).startsWith("<svg ").contains("From the rear, rear panel off", "#1E5A48");
        assertThat(Files.readString(html)).contains("What each panel hides", "67\u00a0pump motor");
        assertThat(Files.readAllBytes(pdf)).startsWith("%PDF".getBytes());
    }

    @Test
    void badInputIsToldWithWhatWouldBeRight() throws IOException {
        assertThat(Shell.run("cabinet", TWIN, "--from", "above").err())
                .contains("--from is rear, right, left, top, front or bottom, not 'above'");
        assertThat(Shell.run("cabinet", TWIN, "--part", "moter").err()).contains("no part \"moter\"", "\"motor\"");
        assertThat(Shell.run("cabinet", TWIN, "--part", "cup").err()).contains("has no place in the case");
        assertThat(Shell.run("part", TWIN, "moter").err()).contains("no part \"moter\"", "\"motor\"");
        assertThat(Shell.run("part", TWIN, "motor", "--draws", "1").err()).contains("from 4 to 256, not 1");
        Path bare = Files.writeString(
                folder.resolve("bare.yaml"),
                "wetside machine: 1\ntitle: Fellmoor Bare\ncomponents:\n  room: {kind: surroundings}\n");
        Shell.Done r = Shell.run("cabinet", bare.toString());
        assertThat(r.exitCode()).isEqualTo(2);
        assertThat(r.err()).contains("gives no measures of the case");
    }

    @Test
    void theCardOfAPartThatHasNoPlace() {
        Shell.Done r = Shell.run(
                "part",
                TWIN,
                "cup",
                "--draws",
                "4",
                "--svg",
                folder.resolve("x.svg").toString());
        assertThat(r.exitCode()).isEqualTo(2);
        assertThat(r.err()).contains("\"cup\" has no place in the case");
        assertThat(Shell.run("part", TWIN, "gauge-tee", "--draws", "4", "--who", "owner")
                        .out())
                .contains("Not for an owner", "the case stays")
                .doesNotContain("Reach it", "wipe dry");
    }
}
