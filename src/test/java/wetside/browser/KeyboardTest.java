package wetside.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** The same job by keys alone. At every stop of the Tab key one can see where one is. */
@ExtendWith(Rig.Given.class)
class KeyboardTest {
    private static final int STOPS = 150;
    /** What is wrong with the place keys go to; "" for nothing. */
    private static final String FOCUS = """
            (() => {
              const e = document.activeElement;
              if (!e || e === document.body) return 'keys go nowhere';
              const shown = x => { const s = getComputedStyle(x); return s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2 || x instanceof SVGElement && parseFloat(s.strokeWidth) >= 3; };
              const near = [e, e.parentElement, e.parentElement.parentElement, e.nextElementSibling, ...(e.labels ?? []), e.querySelector('.around'), e.querySelector('circle')].filter(x => x && shown(x));
              if (!near.length) return 'nothing shows that keys go to ' + e.outerHTML.slice(0, 140);
              const r = near[0].getBoundingClientRect();
              if (r.bottom < 0 || r.top > innerHeight || r.right < 0 || r.left > innerWidth) return 'out of sight: ' + e.outerHTML.slice(0, 140);
              return '';
            })()""";

    private final Rig rig;
    private Tab tab;

    KeyboardTest(Rig rig) {
        this.rig = rig;
    }

    @BeforeEach
    void open() {
        tab = rig.tab(Screen.DESK);
    }

    @AfterEach
    void close() {
        tab.close();
    }

    /** Tab by Tab to an element. */
    private void to(String css, String words) {
        tab.until("the page", "document.readyState === 'complete'");
        String here = "document.activeElement?.matches(" + Tab.quoted(css)
                + ") && document.activeElement.textContent.includes(" + Tab.quoted(words) + ")";
        for (int i = 0; i < STOPS && !tab.is(here); i++) {
            tab.key("Tab");
            String wrong = tab.js(FOCUS).asString();
            // round the end of the page the browser's own bar has the keys
            if (!wrong.equals("keys go nowhere")) {
                assertThat(wrong).as("on " + tab.path()).isEmpty();
            }
        }
        assertThat(tab.is(here))
                .as("keys reach '%s' %s on %s", css, words, tab.path())
                .isTrue();
    }

    private void kept() {
        assertThat(tab.js(FOCUS).asString()).isEmpty();
    }

    private String asked() {
        return tab.js("document.querySelector('.pad').elements.asked.value").asString();
    }

    /** Presses a key that answers, and sees the next step come with the keys on its title. */
    private void answers(String key, String until) {
        tab.key(key);
        tab.until("what follows " + key, until);
        tab.until("keys to go to the next step", "document.activeElement.matches('.title')");
        kept();
    }

    private static String count(int answers) {
        return "document.querySelectorAll('#known>ul>li').length === " + answers;
    }

    private static String said(String answer) {
        return "[...document.querySelectorAll('#known>ul b')].some(b => b.textContent === '" + answer + "')";
    }

    private void choose(String question) {
        to(".add summary", "");
        tab.key("Enter");
        to("#seek", "");
        tab.type(question);
        to(".seen a", "");
        tab.key("Enter");
        tab.until("its step", "document.querySelector('.pad').elements.asked.value === " + Tab.quoted(question));
        kept();
    }

    @Test
    void aJobByKeysAlone() throws IOException {
        tab.go("/jobs");
        to("#who", "");
        tab.type(Rig.SERIAL);
        tab.until("the machine to be known", "document.querySelector('.knownmachine')");
        to("#complaint", "");
        tab.type("It drips between coffees.");
        tab.until("signs to keep", "document.querySelector('#intake-signs .chip')");
        to(".chip input", "");
        tab.key("Space");
        tab.until("a sign kept", "document.querySelector('.chip :checked')");
        to("button.main", "Start fault finding");
        tab.key("Enter");
        tab.until("fault finding", "location.pathname.endsWith('/fault') && document.getElementById('fault')");
        tab.until("all causes", "document.querySelector('#sharpness[data-ready=yes]')", 120_000);
        findTheFault();
        prove();
        sign();
        assertThat(tab.complaints()).isEmpty();
    }

    private void findTheFault() {
        String asked = asked();
        answers("s", "document.querySelector('.pad').elements.asked.value !== " + Tab.quoted(asked));
        answers("d", count(1));
        assertThat(tab.text("#known>ul b")).isEqualTo("Don’t know");
        answers("u", count(0));
        answers("r", count(1));
        choose("cup of one pull");
        tab.key("4");
        tab.key("4");
        assertThat(tab.js("document.activeElement.value").asString()).isEqualTo("44");
        kept();
        answers("Enter", said("44 g"));
        choose("drips from the group between shots");
        String drips = tab.js("[...document.querySelectorAll('.choice')].find(c => c.value === 'drips').dataset.key")
                .asString();
        answers(drips, said("Drips"));
        for (String dry : new String[] {"water at the rod", "water round the rim during a pull"}) {
            if (!tab.is("document.querySelector('.finding')")) {
                choose(dry);
                answers(
                        tab.js("[...document.querySelectorAll('.choice')].find(c => c.value === 'dry').dataset.key")
                                .asString(),
                        said("Dry"));
            }
        }
        to(".finding button", "Save the finding");
        tab.key("Enter");
        tab.until("the finding to be saved", "document.querySelector('.saved')");
        kept();
        to(".saved a", "To the job");
        tab.key("Enter");
        tab.until("the job", "document.querySelector('.timeline')");
    }

    private void prove() {
        int checks = tab.js("document.querySelectorAll('.proof>li').length").asInt();
        assertThat(checks).isGreaterThan(3);
        for (int i = 1; i <= checks; i++) {
            to("a.main", "Next check");
            tab.key("Enter");
            tab.until("a field to write into", "document.activeElement.matches('.proof input[name=read]')");
            kept();
            tab.type("dry");
            to(".proof button", "Passed");
            tab.key("Enter");
            tab.until("check " + i, "document.querySelectorAll('.proof>.passed').length === " + i);
        }
    }

    /** A name that is typed is a signature, on the job and on paper. */
    private void sign() throws IOException {
        to("a.main", "Sign");
        tab.key("Enter");
        tab.until("a field for the name", "document.activeElement.id === 'name'");
        kept();
        tab.type("H. Brandt");
        to("[data-sign] button.main", "Sign");
        tab.key("Enter");
        tab.until("the signature", "document.querySelector('.side').innerText.includes('typing the name: H. Brandt')");
        to(".states button", "done");
        tab.key("Enter");
        tab.until("the job to be done", "document.querySelector('.rail .here')?.innerText.toLowerCase() === 'done'");
        to("a.main", "Report for the owner");
        String address = tab.js("document.activeElement.getAttribute('href')").asString();
        for (String sheet : new String[] {address, address + "?for=file"}) {
            try (PDDocument pdf = Loader.loadPDF(rig.get(sheet))) {
                assertThat(new PDFTextStripper().getText(pdf).replaceAll("\\s+", " "))
                        .contains("Signed, by typing the name: H. Brandt, ");
            }
        }
    }

    @Test
    void unitsAreChosenInTheMiddleOfASheetOfReadings() {
        tab.go("/machines/" + rig.machine + "/readings");
        tab.until("the sheet", "!document.getElementById('going')", 90_000);
        String name = tab.js(
                        "[...document.querySelectorAll('.readings tr')]"
                                + ".find(r => / bar$/.test(r.querySelector('.reads').innerText)).querySelector('.box input').name")
                .asString();
        String css = "[name=\"" + name + "\"]";
        to(css, "");
        tab.type("1.13");
        assertThat(flag(css)).isNotEmpty();
        unit("psi");
        assertThat(value(css)).isEqualTo("16.39");
        assertThat(tab.text("details.units summary")).startsWith("psi");
        assertThat(flag(css)).isNotEmpty();
        unit("bar");
        assertThat(value(css)).isEqualTo("1.13");
        // Enter in a field is still the sheet's own button, whatever stands above it on the page
        to(css, "");
        tab.js("window.old = true");
        tab.key("Enter");
        tab.until("the sheet checked", "!window.old && document.querySelector('#sheet table')");
        assertThat(tab.text("details.units summary")).startsWith("bar");
        assertThat(value(css)).isEqualTo("1.13");
        assertThat(tab.complaints()).isEmpty();
    }

    private void unit(String unit) {
        tab.js("document.querySelector('.skip').focus(); window.old = true");
        to("details.units>summary", "");
        tab.key("Enter");
        to("details.units button", unit);
        tab.key("Enter");
        tab.until("the sheet in " + unit, "!window.old && document.querySelector('#sheet table')");
    }

    private String value(String css) {
        return tab.js("document.querySelector('" + css + "').value").asString();
    }

    private String flag(String css) {
        return tab.js("document.querySelector('" + css + "').closest('tr').querySelector('.flag').innerText")
                .asString();
    }

    @Test
    void aMachineAndItsDrawingsByKeysAlone() {
        tab.go("/machines/" + rig.machine);
        to(".map a[data-part]", "");
        String part = tab.js("document.activeElement.dataset.part").asString();
        tab.key("Enter");
        tab.until(
                "its card",
                "document.querySelector('.card') && document.querySelector('.map a.chosen').dataset.part === "
                        + Tab.quoted(part));
        kept();
        to("#layer-water", "");
        tab.key("Space");
        tab.until("water to be gone", "!document.getElementById('layer-water').checked");
        kept();
    }
}
