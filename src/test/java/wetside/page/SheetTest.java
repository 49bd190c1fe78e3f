package wetside.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** Sheets read back: what was said is there, in fonts that travel with it, on numbered pages. */
class SheetTest {
    private static final String DRAWING =
            "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 300 120\" width=\"300\" height=\"120\""
                    + " font-family=\"'Encode Sans Semi Condensed','Encode Sans',sans-serif\">"
                    + "<rect x=\"10\" y=\"10\" width=\"120\" height=\"60\" fill=\"#D8E7F5\" stroke=\"#16201C\" stroke-width=\"2\"/>"
                    + "<path d=\"M130 40H280\" fill=\"none\" stroke=\"#1B5E9E\" stroke-width=\"2.5\"/>"
                    + "<text x=\"20\" y=\"45\" font-size=\"14\" font-weight=\"500\" fill=\"#16201C\">12 Boiler 1 kΩ</text></svg>";
    private static byte[] pdf;
    private static String html;

    @BeforeAll
    static void write() throws IOException {
        html = HtmlSheet.of(sample());
        pdf = PdfSheet.of(sample());
        Files.createDirectories(Path.of("target/sheets"));
        Files.writeString(Path.of("target/sheets/sample.html"), html);
        Files.write(Path.of("target/sheets/sample.pdf"), pdf);
    }

    static Sheet sample() {
        List<Block.Row> rows = new ArrayList<>();
        rows.add(new Block.Row(Level.OWNER, false, List.of("Pump gauge at rest", "2.0 bar ± 0.3", "✓")));
        rows.add(new Block.Row(Level.TECHNICIAN, true, List.of("Steam element", "37.8 Ω ± 2.1", "▼ low")));
        for (int i = 1; i <= 60; i++) {
            rows.add(new Block.Row(Level.QUALIFIED, false, List.of("Row " + i, i + " MΩ", "→ Łódź")));
        }
        return new Sheet(
                "All that a sheet can hold",
                "made on 25 November",
                Sheet.Plate.of("Machine", "Fellmoor Twin Lever", "Revision", "B", "Fed from", "mains, 2.0 bar"),
                "Here is what it is about, in one plain sentence.",
                List.of(
                        new Sheet.Section(
                                "Text <and> \"signs\" & more",
                                new Block.Prose("First the pump at −5 °C, then 12 × 3 µS/cm.", "Second paragraph."),
                                new Block.Heading("Smaller"),
                                new Block.Facts(List.of(
                                        new Block.Fact("what for", "Caps the pump side."),
                                        new Block.Fact("know it", "Brass, cap with a slot."))),
                                new Block.Caution(Level.OWNER, "Hot", "Hold the handle only."),
                                new Block.Caution(
                                        Level.TECHNICIAN,
                                        "Unplug, cool, vent first",
                                        "Open both taps until nothing comes."),
                                new Block.Caution(
                                        Level.QUALIFIED,
                                        "Live with the panel off",
                                        "Hand over to a qualified electrician; local code applies.")),
                        new Sheet.Section(
                                "Steps and drawing",
                                new Block.Drawings(List.of(
                                        new Block.Drawing(DRAWING, "a boiler with a pipe", "The boiler (12)", 0.5),
                                        new Block.Drawing(DRAWING, "the same", "Again", 0.5))),
                                new Block.Steps(List.of(
                                        new Block.Step(
                                                Level.OWNER,
                                                "Lift the lever",
                                                "1 min",
                                                List.of("All the way.", "Wait.")),
                                        new Block.Step(
                                                Level.TECHNICIAN,
                                                "Take the panel off",
                                                "5 min, screwdriver",
                                                List.of()),
                                        new Block.Step(Level.QUALIFIED, "Measure live", "", List.of()))),
                                new Block.Walk(List.of(
                                        new Block.Stop("1", "water tank", "at the rear", "Holds the water.", 0),
                                        new Block.Stop("", "", "", "Here the way parts.", 0),
                                        new Block.Stop("24", "pump gauge", "in front", "Shows the pressure.", 1)))),
                        new Sheet.Section(
                                "A long table",
                                true,
                                List.of(new Block.Table(
                                        List.of(
                                                Block.Column.words("Reading"),
                                                Block.Column.figures("Expected"),
                                                Block.Column.words("Verdict")),
                                        rows)))),
                "Small print.");
    }

    @Test
    void htmlIsWellFormedAndNeedsNoOtherFile() throws Exception {
        assertThat(html).doesNotContain("src=\"").doesNotContain("<link").doesNotContain("@import");
        assertThat(html).contains("prefers-color-scheme:dark").contains("data:font/woff2;base64,");
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    }

    @Test
    void textIsEscaped() {
        assertThat(html).contains("Text &lt;and&gt; \"signs\" &amp; more").doesNotContain("<and>");
    }

    @Test
    void drawingsFollowTheTheme() {
        assertThat(html).contains("stroke=\"var(--water,#1B5E9E)\"").contains("aria-label=\"a boiler with a pipe\"");
    }

    @Test
    void pdfSaysTheSame() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper text = new PDFTextStripper();
            text.setSortByPosition(true);
            String said = text.getText(document);
            assertThat(said)
                    .contains(
                            "All that a sheet can hold",
                            "37.8 Ω ± 2.1",
                            "▼ low",
                            "→ Łódź",
                            "−5 °C",
                            "Fellmoor Twin Lever")
                    .contains("Text <and> \"signs\" & more", "Unplug, cool, vent first", "qualified electrician");
            int pages = document.getNumberOfPages();
            assertThat(pages).isGreaterThan(2);
            for (int page = 1; page <= pages; page++) {
                text.setStartPage(page);
                text.setEndPage(page);
                assertThat(text.getText(document))
                        .contains(page + " of " + pages, "Fellmoor Twin Lever · B · mains, 2.0 bar");
                assertThat(page <= 2 || text.getText(document).contains("Expected"))
                        .isTrue();
            }
        }
    }

    @Test
    void pdfIsTaggedNamedAndHasBookmarks() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            assertThat(document.getDocumentCatalog().getLanguage()).startsWith("en");
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("All that a sheet can hold");
            List<String> bookmarks = new ArrayList<>();
            for (PDOutlineItem item :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                bookmarks.add(item.getTitle());
            }
            assertThat(bookmarks).containsExactly("Text <and> \"signs\" & more", "Steps and drawing", "A long table");
        }
    }

    @Test
    void everyFontTravelsWithThePdf() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> fonts = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    fonts.add(font.getName());
                }
            }
            assertThat(fonts).anyMatch(f -> f.contains("Encode")).anyMatch(f -> f.contains("Signs"));
        }
    }

    /** A sign without its character could be seen but neither searched nor read aloud. */
    @Test
    void everySignOnPaperIsTheCharacterThatWasMeant() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            StringBuilder lost = new StringBuilder();
            new PDFTextStripper() {
                @Override
                protected void writeString(String text, List<TextPosition> positions) {
                    for (TextPosition p : positions) {
                        if (p.getUnicode() == null || p.getUnicode().isEmpty() || p.getCharacterCodes()[0] == 0) {
                            lost.append(text).append('\n');
                        }
                    }
                }

                @Override
                protected void showGlyph(
                        org.apache.pdfbox.util.Matrix at, PDFont font, int code, org.apache.pdfbox.util.Vector moved)
                        throws IOException {
                    if (font.toUnicode(code) == null || code == 0) {
                        lost.append(font.getName()).append(' ').append(code).append('\n');
                    }
                    super.showGlyph(at, font, code, moved);
                }
            }.getText(document);
            assertThat(lost.toString()).isEmpty();
        }
    }

    @Test
    void aDrawingIsLinesNotPixels() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    assertThat(page.getResources().isImageXObject(name)).isFalse();
                }
            }
        }
    }

    @Test
    void whatIsNoDrawingIsRefused() {
        assertThatThrownBy(() -> new Block.Drawing("<script>", "", "", 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
