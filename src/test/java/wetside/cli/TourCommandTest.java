package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The walk on the command line, as a page and on paper. */
class TourCommandTest {
    @TempDir
    Path folder;

    @Test
    void textSaysWhereOneStandsAndWho() {
        Shell.Done said = Shell.run("tour", "twin-boiler-lever", "--follow", "steam");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out()).contains("Follow the steam", "□ Behind panels", "28  Steam boiler: top panel off");
    }

    @Test
    void whatCannotBeFollowedIsSaid() {
        Shell.Done said = Shell.run("tour", "twin-boiler-lever", "--follow", "coffee");
        assertThat(said.exitCode()).isEqualTo(Wetside.BAD_INPUT);
        assertThat(said.err()).contains("water, steam, drain, current or all, not 'coffee'");
    }

    @Test
    void pageAndPaperHoldEveryStop() throws IOException {
        Path html = folder.resolve("tour.html");
        Path pdf = folder.resolve("tour.pdf");
        Shell.Done said = Shell.run(
                "tour", "twin-boiler-lever", "--follow", "all", "--html", html.toString(), "--pdf", pdf.toString());
        assertThat(said.exitCode()).as(said.err()).isZero();
        String page = Files.readString(html);
        assertThat(page).contains("Follow the water", "Follow the current", "Upper thermosiphon pipe");
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            PDFTextStripper text = new PDFTextStripper();
            String paper = text.getText(document);
            assertThat(paper).contains("Follow what is let off", "Upper thermosiphon pipe", "tank");
            assertThat(document.getDocumentCatalog().getDocumentOutline().children())
                    .extracting(PDOutlineItem::getTitle)
                    .containsExactly(
                            "Follow the water",
                            "Map of pipes",
                            "Follow the steam",
                            "Follow what is let off",
                            "Follow the current",
                            "Map of wires");
            for (int n = 1; n <= document.getNumberOfPages(); n++) {
                text.setStartPage(n);
                text.setEndPage(n);
                assertThat(text.getText(document)).as("sheet %d", n).containsAnyOf("Map of", "(", "Numbers are");
            }
        }
    }
}
