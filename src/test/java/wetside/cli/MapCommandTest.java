package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MapCommandTest {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... args) {
        return Wetside.run(
                args,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(new byte[0]));
    }

    private String said() {
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void tellsWhatFollowsWhatByMedium() {
        assertThat(run("map", "single-boiler")).isZero();
        assertThat(said().replaceAll("\\s+", " "))
                .contains("water 1 water tank > 3 mesh at the end of the suction hose > 2 suction hose from the tank")
                .contains("rail N")
                .contains("earth");
    }

    @Test
    void drawsToTheScreenNothingElseIsPrinted() {
        assertThat(run("map", "thermoblock", "--svg", "-")).isZero();
        assertThat(said()).startsWith("<svg ").endsWith("</svg>\n");
    }

    @Test
    void writesPictureAndPageAndPaper(@TempDir Path folder) throws IOException {
        Path svg = folder.resolve("m.svg");
        Path html = folder.resolve("m.html");
        Path pdf = folder.resolve("m.pdf");
        assertThat(run(
                        "map",
                        "thermoblock",
                        "--svg",
                        svg.toString(),
                        "--html",
                        html.toString(),
                        "--pdf",
                        pdf.toString()))
                .isZero();
        assertThat(Files.readString(svg)).contains("thermoblock");
        assertThat(Files.readString(html)).contains("Current, sensing").contains("In words");
        assertThat(new String(Files.readAllBytes(pdf), 0, 5, StandardCharsets.ISO_8859_1))
                .isEqualTo("%PDF-");
    }

    @Test
    void coloursByARunStoppedAtATime() {
        assertThat(run(
                        "map",
                        "thermoblock",
                        "--colour",
                        "pressure",
                        "--scenario",
                        "switched on",
                        "--at",
                        "2 s",
                        "--svg",
                        "-"))
                .isZero();
        assertThat(said()).contains("By pressure at 2:02 min of the run").contains(" bar<");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--layers|wter|no layer 'wter'; there are",
                "--colour|heat|--colour is pressure or temperature, not 'heat'",
                "--at|2 s|say --colour too",
                "--revision|Q|no revision 'Q'",
            })
    void badInputIsToldInWords(String option, String value, String message) {
        assertThat(run("map", "thermoblock", option, value)).isEqualTo(Wetside.BAD_INPUT);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains(message);
    }

    @Test
    void aMomentThatDoesNotComeIsTold() {
        assertThat(run("map", "thermoblock", "--colour", "pressure", "--scenario", "switched on", "--at", "soon"))
                .isEqualTo(Wetside.BAD_INPUT);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("is no time and no mark of 'switched on'");
    }
}
