package wetside.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.extension.ExtendWith;
import tools.jackson.databind.JsonNode;
import wetside.bench.Declared;

/**
 * Every page there is, at a desk, on a tablet, on a phone and at 200 %, light and dark: can be used by everybody, fits, stands
 * still, says nothing on the console, asks for nothing outside. Its pictures are kept in {@code target/screens}.
 */
@ExtendWith(Rig.Given.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryPageTest {
    private static final Path SCREENS = Path.of("target", "screens");
    private static final List<String> THEMES = List.of("light", "dark");
    /** Of a view; a page that stands still has none, a late picture in a line of text one or two hundredths. */
    private static final double SHIFT = 0.02;

    private static final String AXE = resource("/axe.min.js");
    /** What is folded has to be as good as what is not; what opens over the page is remembered. */
    private static final String UNFOLD = """
            window.floating = [...document.querySelectorAll('details')].filter(d => {
              d.open = true;
              return [...d.children].some(c => getComputedStyle(c).position === 'absolute');
            }); 1""";

    /** What opens over a page, one by one; what was the very same on a page before has been looked at. */
    private static final String ONE_BY_ONE = """
            (async seen => {
              const wrong = [], fresh = [];
              for (const d of floating.filter(d => d.checkVisibility())) {
                const what = d.outerHTML.replace(/(<input type="hidden"[^>]*value)="[^"]*"/g, '$1');
                if (seen.includes(what)) continue;
                fresh.push(what);
                d.open = true;
                wrong.push(...await %s);
                d.open = false;
              }
              return {wrong, fresh};
            })(%s)""";

    private static final String LOOK = """
            axe.run(%s, {runOnly: %s, resultTypes: ['violations']})
              .then(r => r.violations.flatMap(v => v.nodes.slice(0, 3).map(n => v.id + ': ' + n.target.join(' ') + ': ' + n.failureSummary.replaceAll(/\\s+/g, ' ').slice(0, 220))))""";
    private static final String ALL = "{type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}";
    /** All that another theme can change. */
    private static final String COLOURS = "{type: 'rule', values: ['color-contrast', 'link-in-text-block']}";
    /** What stands beyond the right edge though nothing scrolls there. */
    private static final String WIDER = """
            document.documentElement.scrollWidth <= %1$d ? [] : [...document.body.querySelectorAll('*')].filter(e => {
              const r = e.getBoundingClientRect();
              if (r.right <= %1$d + 0.5 || r.width === 0) return false;
              for (let p = e.parentElement; p; p = p.parentElement) if (getComputedStyle(p).overflowX !== 'visible') return false;
              return true;
            }).slice(0, 4).map(e => 'wider than the page: ' + e.outerHTML.slice(0, 100)).concat('page is ' + document.documentElement.scrollWidth + ' wide')""";
    /**
     * Pressable and under 44 px. Let off, as WCAG 2.5.8 does: links in a sentence, and parts in a drawing, which the list
     * beside it offers too.
     */
    private static final String SMALL = """
            [...document.querySelectorAll('a[href], button, input:not([type=hidden]), select, textarea, summary')].filter(e => {
              const style = getComputedStyle(e);
              if (!e.checkVisibility({visibilityProperty: true}) || e.closest('svg, .hidden') || e.matches('.hidden, .skip:not(:focus), :disabled')) return false;
              if (style.display === 'inline' && e.parentElement.textContent.trim().length > e.textContent.trim().length + 3) return false;
              const boxes = [e, ...(e.labels ?? [])].map(b => b.getBoundingClientRect()).filter(b => b.width && b.height);
              const width = Math.max(...boxes.map(b => b.right)) - Math.min(...boxes.map(b => b.left));
              const height = Math.max(...boxes.map(b => b.bottom)) - Math.min(...boxes.map(b => b.top));
              return boxes.length && Math.min(width, height) < 43.5;
            }).map(e => { const r = e.getBoundingClientRect(); return 'small: ' + Math.round(r.width) + '×' + Math.round(r.height) + ' ' + e.outerHTML.slice(0, 110); })""";

    private final Rig rig;
    private final Map<Screen, Tab> tabs = new EnumMap<>(Screen.class);
    private final Map<Screen, Set<String>> opened = new EnumMap<>(Screen.class);
    /** One screen is looked at while another loads, settles or is computed. */
    private final ExecutorService eyes = Executors.newFixedThreadPool(2);

    EveryPageTest(Rig rig) {
        this.rig = rig;
    }

    @BeforeAll
    void open() {
        for (Screen screen : Screen.values()) {
            tabs.put(screen, rig.tab(screen));
            opened.put(screen, new HashSet<>());
        }
    }

    @AfterAll
    void close() {
        eyes.shutdown();
        tabs.values().forEach(Tab::close);
    }

    @Test
    void noPageIsForgotten() {
        Set<String> known = Address.all(rig).keySet();
        assertThat(Declared.looks(rig.bench)).hasSizeGreaterThan(30);
        assertThat(known)
                .as("what a bench answers, in Address.all")
                .containsExactlyInAnyOrderElementsOf(Declared.looks(rig.bench));
    }

    @TestFactory
    Stream<DynamicTest> everyPage() {
        List<Address> all = new ArrayList<>();
        Address.all(rig).values().forEach(all::addAll);
        all.add(new Address("no-such-page", "/no/such/page", "true"));
        Pattern wanted = Pattern.compile(System.getProperty("browser.pages", ".*"));
        return all.stream()
                .filter(a -> wanted.matcher(a.name()).matches())
                .map(a -> DynamicTest.dynamicTest(a.name(), () -> look(a)));
    }

    private void look(Address page) throws InterruptedException, ExecutionException {
        List<Future<List<String>>> all = new ArrayList<>();
        for (Screen screen : List.of(Screen.DESK, Screen.PHONE, Screen.TABLET, Screen.ZOOMED)) {
            all.add(eyes.submit(() -> look(page, tabs.get(screen))));
        }
        List<String> wrong = new ArrayList<>();
        for (Future<List<String>> one : all) {
            wrong.addAll(one.get());
        }
        assertThat(wrong).as(page.path()).isEmpty();
    }

    private List<String> look(Address page, Tab tab) {
        tab.theme("light");
        tab.go(page.path());
        tab.until(page.name() + " to be ready", page.ready(), 90_000);
        tab.settle();
        List<String> here = new ArrayList<>(stillness(tab));
        if (tab.screen != Screen.ZOOMED) {
            here.addAll(pictured(tab, page));
        }
        tab.js(UNFOLD);
        tab.settle();
        here.addAll(strings(tab.js(WIDER.formatted(tab.screen.width))));
        if (tab.screen.touch) {
            here.addAll(strings(tab.js(SMALL)));
        }
        if (tab.screen == Screen.DESK || tab.screen == Screen.PHONE) {
            here.addAll(usable(tab));
        }
        here.addAll(tab.complaints());
        // the page that is not there is told so, and so is the console
        here.removeIf(w -> w.startsWith("network: Failed to load resource") && w.endsWith(page.path()));
        return here.stream().map(w -> tab.screen + ": " + w).toList();
    }

    private static List<String> stillness(Tab tab) {
        if (tab.is("!document.querySelector('link[rel=stylesheet]')")) {
            // a sheet to print carries its faces inside, and they are unpacked after its first line is laid out
            return List.of();
        }
        JsonNode shifts = tab.js("shifts");
        double sum = 0;
        for (JsonNode shift : shifts) {
            sum += shift.path("by").asDouble();
        }
        return sum < SHIFT ? List.of() : List.of("moves by " + sum + ": " + shifts);
    }

    private static List<String> pictured(Tab tab, Address page) {
        List<String> wrong = new ArrayList<>(strings(tab.js(WIDER.formatted(tab.screen.width))));
        for (String theme : THEMES) {
            tab.theme(theme);
            tab.settle();
            String name = page.name() + "-" + tab.screen.name().toLowerCase(Locale.ROOT) + "-" + theme + ".png";
            tab.keep(SCREENS.resolve(name), true);
        }
        return wrong;
    }

    private List<String> usable(Tab tab) {
        List<String> wrong = new ArrayList<>();
        tab.js(AXE + "; floating.forEach(d => d.open = false)");
        strings(tab.js(LOOK.formatted("document", ALL))).forEach(w -> wrong.add("dark: " + w));
        tab.theme("light");
        strings(tab.js(LOOK.formatted("document", COLOURS))).forEach(w -> wrong.add("light: " + w));
        Set<String> seen = opened.get(tab.screen);
        JsonNode found = tab.js(ONE_BY_ONE.formatted(LOOK.formatted("d", ALL), Tab.JSON.writeValueAsString(seen)));
        strings(found.path("wrong")).forEach(w -> wrong.add("opened: " + w));
        seen.addAll(strings(found.path("fresh")));
        return wrong;
    }

    private static List<String> strings(JsonNode array) {
        List<String> all = new ArrayList<>();
        array.forEach(n -> all.add(n.asString()));
        return all;
    }

    private static String resource(String name) {
        try (InputStream in = EveryPageTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
