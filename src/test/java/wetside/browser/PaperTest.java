package wetside.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** What comes out of the printer when a page is printed from the browser; kept in {@code target/screens}. */
@ExtendWith(Rig.Given.class)
class PaperTest {
    private static final float DPI = 96;

    private final Rig rig;

    PaperTest(Rig rig) {
        this.rig = rig;
    }

    @Test
    void aJobWithoutItsButtons() throws IOException {
        assertThat(printed("job", "/jobs/" + rig.done, "true"))
                .contains(Rig.SERIAL, "H. Brandt", "hot leak check", "Finding")
                .doesNotContain("Fault finding", "Save reading", "Set right", "Move to", "What is next");
    }

    @Test
    void theReadingsSheetWithBoxesForThePen() throws IOException {
        assertThat(printed(
                        "readings",
                        "/machines/" + rig.machine + "/readings?who=technician",
                        "!document.getElementById('going')"))
                .contains(Rig.SERIAL, "Readings to expect", "Steam gauge at rest, cold")
                .doesNotContain("Fault finding", "Who reads", "Keep in job");
    }

    @Test
    void theAdviceOnWater() throws IOException {
        assertThat(printed("water-advice", "/machines/" + rig.machine + "/water/advice.html", "true"))
                .contains("Verdicts", "Alkalinity");
    }

    private String printed(String name, String path, String ready) throws IOException {
        try (Tab tab = rig.tab(Screen.DESK)) {
            tab.theme("dark");
            tab.go(path);
            tab.until(name + " to be ready", ready, 90_000);
            Path file = Path.of("target", "screens", name + "-paper.pdf");
            tab.print(file);
            try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
                BufferedImage page = new PDFRenderer(pdf).renderImageWithDPI(0, DPI);
                ImageIO.write(
                        page, "png", file.resolveSibling(name + "-paper.png").toFile());
                assertThat(page.getRGB(3, 3) & 0xffffff)
                        .as("paper is white, also for who reads light on dark")
                        .isEqualTo(0xffffff);
                return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            }
        }
    }
}
