package wetside.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;

/** A job from the telephone to the signed report, by mouse at a desk and by finger on a tablet. */
@ExtendWith(Rig.Given.class)
class JourneyTest {
    private static final String COMPLAINT = "It drips all day between coffees and the cup comes out short.";
    private static final String WORK = "All piston seals replaced, piston greased, lever held by its tool.";
    /** What the owner of a machine with a worn lower piston seal tells, as in examples/spring-short-cup.yaml. */
    private static final Map<String, String> SEEN = new LinkedHashMap<>();

    static {
        SEEN.put("drips from the group between shots", "drips");
        SEEN.put("cup of one pull", "44");
        SEEN.put("water at the rod", "dry");
        SEEN.put("pull of the lever", "firm");
        SEEN.put("water round the rim during a pull", "dry");
    }

    /** Times from an answer to the frame that shows what follows, and what moves meanwhile that should not. */
    private static final String CLOCK = """
            window.times = []; let asked = 0;
            document.addEventListener('submit', () => { asked = performance.now(); shifts.length = 0; }, true);
            new MutationObserver(() => { if (!asked) return; const from = asked; asked = 0;
              requestAnimationFrame(() => setTimeout(() => times.push(performance.now() - from))); }).observe(document.getElementById('fault'), {childList: true}); 1""";

    private final Rig rig;

    JourneyTest(Rig rig) {
        this.rig = rig;
    }

    @ParameterizedTest
    @EnumSource(
            value = Screen.class,
            names = {"DESK", "TABLET"})
    void fromTheTelephoneToTheSignedReport(Screen screen) throws IOException {
        try (Tab tab = rig.tab(screen)) {
            takeIn(tab);
            findTheFault(tab);
            noteTheRepair(tab);
            prove(tab);
            sign(tab);
            String address = tab.js("document.querySelector('a.main[href$=\"report.pdf\"]').getAttribute('href')")
                    .asString();
            assertThat(report(address))
                    .contains("L 19 0095", COMPLAINT, "the cup stays short", "56", "H. Brandt")
                    .doesNotContain("null");
            assertThat(report(address + "?for=file")).contains(WORK, "56 g", "passed", "seal worn");
            assertThat(tab.complaints()).isEmpty();
        }
    }

    private void takeIn(Tab tab) {
        tab.go("/jobs");
        tab.fill("#who", Rig.SERIAL);
        tab.until(
                "the machine to be known", "document.querySelector('.knownmachine')?.innerText.includes('H. Brandt')");
        tab.fill("#complaint", COMPLAINT);
        tab.until("signs to keep", "document.querySelector('#intake-signs .chip')");
        tab.fill("#by", "Mira");
        tab.press("button", "Start fault finding");
        tab.until("fault finding", "location.pathname.endsWith('/fault') && document.getElementById('fault')");
        tab.until("all causes", "document.querySelector('#sharpness[data-ready=yes]')", 120_000);
        tab.js(CLOCK);
    }

    private void findTheFault(Tab tab) throws IOException {
        assertThat(tab.text("#known blockquote")).contains(COMPLAINT);
        dontKnow(tab);
        skip(tab);
        Map.Entry<String, String> first = SEEN.entrySet().iterator().next();
        if (!tab.text("#known").toLowerCase().contains(first.getKey())) {
            answer(tab, first.getKey(), first.getValue());
            tab.press("button", "Undo the last answer");
            tab.until("the answer to be gone", "!document.querySelector('#known ul').innerText.includes('Drips')");
        }
        for (Map.Entry<String, String> seen : SEEN.entrySet()) {
            if (!tab.is("document.querySelector('.finding')")) {
                answer(tab, seen.getKey(), seen.getValue());
            }
        }
        assertThat(tab.text(".finding h2")).containsIgnoringCase("lower piston seal");
        measured(tab);
        tab.press(".finding button", "Save the finding");
        tab.until("the finding to be saved", "document.querySelector('.saved')");
        tab.press(".saved a", "To the job");
        tab.until("the job", "document.querySelector('.timeline')");
        assertThat(tab.text(".timeline")).containsIgnoringCase("lower piston seal worn");
    }

    private static String asked(Tab tab) {
        return tab.js("document.querySelector('.pad').elements.asked.value").asString("");
    }

    private static void dontKnow(Tab tab) {
        String asked = asked(tab);
        tab.press("button", "Don’t know");
        tab.until("the next step", "document.querySelector('#known>ul .unknown')");
        assertThat(asked(tab)).isNotEqualTo(asked);
    }

    private static void skip(Tab tab) {
        String asked = asked(tab);
        tab.press("a", "Another step");
        tab.until("another step", "document.querySelector('.pad').elements.asked.value !== " + Tab.quoted(asked));
    }

    /** Answers what is asked or, if that is something else, adds what was seen; the page stands still under the answer. */
    private static void answer(Tab tab, String question, String said) {
        String answered = "[...document.querySelectorAll('#known>ul .asked')].map(e => e.textContent.toLowerCase())"
                + ".some(q => q.startsWith(" + Tab.quoted(question) + "))";
        if (!asked(tab).equals(question)) {
            tab.press(".add summary");
            tab.fill("#seek", question);
            tab.press(".seen a", question);
            tab.until("its step", "document.querySelector('.pad').elements.asked.value === " + Tab.quoted(question));
        }
        if (said.matches("\\d+")) {
            tab.fill("#reading", said);
            tab.until("what it would leave", "document.querySelector('#would').textContent.includes('would leave')");
            tab.press("button", "Save reading");
        } else {
            tab.press(".choice", said);
        }
        tab.until("the answer among what is known", answered);
        tab.settle();
        double moved = 0;
        for (JsonNode shift : tab.js("shifts")) {
            moved += shift.path("by").asDouble();
        }
        assertThat(moved).as(tab.js("shifts").toString()).isLessThan(0.02);
    }

    /** How long answers took is for docs/performance.md; no test fails of it. */
    private static void measured(Tab tab) throws IOException {
        List<Double> times = new ArrayList<>();
        tab.js("times").forEach(t -> times.add(t.asDouble()));
        assertThat(times).hasSizeGreaterThan(4);
        Path file = Path.of("target", "screens", "answers-" + tab.screen.name().toLowerCase() + ".txt");
        Files.createDirectories(file.getParent());
        Files.writeString(
                file,
                times.stream()
                        .sorted()
                        .map(t -> String.format("%.0f ms", t))
                        .collect(Collectors.joining(
                                "\n", "from an answer to the frame that shows what follows\n", "\n")));
    }

    private static void noteTheRepair(Tab tab) {
        tab.press(".adds summary", "Work, words");
        tab.fill("#words", WORK);
        tab.fill("#by-entry", "Ines");
        tab.press("details[open] button", "Save");
        tab.until("the work on record", recorded("All piston seals"));
        tab.press(".adds summary", "Reading");
        tab.choose("#asked", "cup of one pull");
        tab.fill("#said", "56 g");
        tab.press("details[open] button", "Save reading");
        tab.until("the reading as left", recorded("as left"));
    }

    private static String recorded(String words) {
        return "[...document.querySelectorAll('.timeline li')].some(l => l.innerText.includes('" + words + "'))";
    }

    private static void prove(Tab tab) {
        int checks = tab.js("document.querySelectorAll('.proof>li').length").asInt();
        assertThat(checks).isGreaterThan(3);
        for (int i = 1; i <= checks; i++) {
            tab.press("a.main", "Next check");
            tab.fill(".proof details[open] input[name=read]", "as it should be");
            tab.press(".proof details[open] button", "Passed");
            tab.until("check " + i, "document.querySelectorAll('.proof>.passed').length === " + i);
        }
    }

    private static void sign(Tab tab) {
        tab.press("a.main", "Sign");
        tab.fill("#name", "H. Brandt");
        tab.stroke("svg.draw");
        tab.press("button", "Sign");
        tab.until(
                "the signature",
                "document.querySelector('svg.signature[aria-label*=Brandt] path')?.getTotalLength() > 50");
        tab.press(".states button", "done");
        tab.until("the job to be done", "document.querySelector('.rail .here')?.innerText.toLowerCase() === 'done'");
    }

    private String report(String address) throws IOException {
        try (var pdf = Loader.loadPDF(rig.get(address))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }
}
