package wetside.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One page in a Chromium: pressed, typed into and looked at as by a person; complains as a person would see it. */
final class Tab implements AutoCloseable {
    static final JsonMapper JSON = new JsonMapper();
    private static final long PATIENCE_MS = 20_000;
    private static final int SHIFT = 8;
    /** Codes of the keys that are no letter and no digit. */
    private static final Map<String, Integer> KEYS =
            Map.of("Tab", 9, "Enter", 13, "Escape", 27, "Space", 32, "ArrowUp", 38, "ArrowRight", 39, "ArrowDown", 40);

    private static final int TALLEST = 3000;
    private static final double[] A4 = {8.27, 11.69};
    /** What moves without having been pressed, summed as browsers do. */
    private static final String WATCH = """
            window.shifts = [];
            new PerformanceObserver(list => { for (const e of list.getEntries())
              shifts.push({by: e.value, pressed: e.hadRecentInput, what: e.sources.map(s => s.node && (s.node.outerHTML || s.node.textContent || '').slice(0, 90))}); })
              .observe({type: 'layout-shift', buffered: true});
            """;
    /** The first seen element of a selector that has some words in it. */
    private static final String FIND =
            "((css, words) => [...document.querySelectorAll(css)].find(e => e.getClientRects().length"
                    + " && e.textContent.toLowerCase().includes(words.toLowerCase())))(%s, %s)";

    final Screen screen;

    private final Wire wire;
    private final String session;
    private final String target;
    private final URI bench;
    private final List<String> complaints = new CopyOnWriteArrayList<>();
    private final List<String> requests = new CopyOnWriteArrayList<>();
    private final AtomicInteger loads = new AtomicInteger();

    Tab(Wire wire, String session, String target, URI bench, Screen screen) {
        this.wire = wire;
        this.session = session;
        this.target = target;
        this.bench = bench;
        this.screen = screen;
        wire.listen(session, this::heard);
        List.of("Page", "Runtime", "Network", "Log").forEach(d -> order(d + ".enable", Map.of()));
        order("Page.addScriptToEvaluateOnNewDocument", Map.of("source", WATCH));
        order(
                "Emulation.setDeviceMetricsOverride",
                Map.of(
                        "width",
                        screen.width,
                        "height",
                        screen.height,
                        "deviceScaleFactor",
                        screen.scale,
                        "mobile",
                        screen.touch));
        order("Emulation.setTouchEmulationEnabled", Map.of("enabled", screen.touch, "maxTouchPoints", 1));
        theme("light");
    }

    private void heard(String event, JsonNode what) {
        switch (event) {
            case "Page.loadEventFired" -> loads.incrementAndGet();
            case "Runtime.exceptionThrown" ->
                complaints.add("script: "
                        + what.at("/exceptionDetails/exception/description")
                                .asString(what.at("/exceptionDetails/text").asString("")));
            case "Runtime.consoleAPICalled" -> {
                if (List.of("error", "warning", "assert")
                        .contains(what.path("type").asString(""))) {
                    complaints.add("console: " + what.path("args"));
                }
            }
            case "Log.entryAdded" -> {
                if (List.of("error", "warning").contains(what.at("/entry/level").asString(""))) {
                    complaints.add(what.at("/entry/source").asString("") + ": "
                            + what.at("/entry/text").asString("") + " "
                            + what.at("/entry/url").asString(""));
                }
            }
            case "Network.requestWillBeSent" ->
                requests.add(what.at("/request/url").asString(""));
            default -> {}
        }
    }

    JsonNode order(String method, Map<String, ?> parameters) {
        return wire.ask(session, method, parameters);
    }

    static void pause(long ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** "light" or "dark". */
    void theme(String colours) {
        media("", colours);
    }

    void media(String medium, String colours) {
        order(
                "Emulation.setEmulatedMedia",
                Map.of("media", medium, "features", List.of(Map.of("name", "prefers-color-scheme", "value", colours))));
    }

    /** Loads an address of the bench and waits until it stands still. */
    void go(String path) {
        int before = loads.get();
        JsonNode answer =
                order("Page.navigate", Map.of("url", bench.resolve(path).toString()));
        if (answer.has("errorText")) {
            throw new AssertionError(path + ": " + answer.path("errorText").asString(""));
        }
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (loads.get() == before) {
            if (System.currentTimeMillis() > end) {
                throw new AssertionError(path + " did not load");
            }
            pause(5);
        }
        settle();
    }

    /** Until faces have come and two frames have been drawn. */
    void settle() {
        js(
                "document.fonts.ready.then(() => new Promise(f => requestAnimationFrame(() => requestAnimationFrame(() => f(1)))))");
    }

    /** What a script in the page finds; promises are waited for. */
    JsonNode js(String script) {
        JsonNode answer = order(
                "Runtime.evaluate",
                Map.of("expression", script, "returnByValue", true, "awaitPromise", true, "userGesture", false));
        if (answer.has("exceptionDetails")) {
            throw new IllegalStateException(
                    answer.at("/exceptionDetails/exception/description").asString(answer.toString()));
        }
        return answer.at("/result/value");
    }

    String text(String css) {
        return js("document.querySelector(" + quoted(css) + ")?.innerText ?? ''")
                .asString("");
    }

    String path() {
        return js("location.pathname + location.search + location.hash").asString("");
    }

    boolean is(String script) {
        try {
            return js("!!(" + script + ")").asBoolean();
        } catch (IllegalStateException e) {
            // between two pages nothing is true
            return false;
        }
    }

    /** Waits until a script says yes, on a page that is all there. */
    void until(String what, String script) {
        until(what, script, PATIENCE_MS);
    }

    void until(String what, String script, long ms) {
        long end = System.currentTimeMillis() + ms;
        while (!is("document.readyState === 'complete' && (" + script + ")")) {
            if (System.currentTimeMillis() > end) {
                throw new AssertionError("waited in vain for " + what + " on " + path() + ": " + text("main"));
            }
            pause(15);
        }
    }

    static String quoted(String text) {
        return JSON.writeValueAsString(text);
    }

    /** Presses, by finger or mouse, the first element of a selector; waits until it is there and nothing covers it. */
    void press(String css) {
        press(css, "");
    }

    void press(String css, String words) {
        JsonNode at = place(css, words);
        drag(at.path("x").asDouble(), at.path("y").asDouble(), 0);
    }

    /** Draws a line to the right from the middle of an element. */
    void stroke(String css) {
        JsonNode at = place(css, "");
        drag(at.path("x").asDouble(), at.path("y").asDouble(), 120);
    }

    private void drag(double x, double y, double far) {
        touch("touchStart", "mousePressed", x, y);
        for (int i = 1; i <= 4 && far > 0; i++) {
            touch("touchMove", "mouseMoved", x + far * i / 4, y);
            // as a hand does it: what is flung keeps the next tap from counting
            pause(40);
        }
        touch("touchEnd", "mouseReleased", x + far, y);
    }

    private void touch(String finger, String mouse, double x, double y) {
        if (screen.touch) {
            List<?> points = finger.equals("touchEnd") ? List.of() : List.of(Map.of("x", x, "y", y));
            order("Input.dispatchTouchEvent", Map.of("type", finger, "touchPoints", points));
        } else {
            order(
                    "Input.dispatchMouseEvent",
                    Map.of("type", mouse, "x", x, "y", y, "button", "left", "buttons", 1, "clickCount", 1));
        }
    }

    /** Middle of an element that can be pressed there. */
    private JsonNode place(String css, String words) {
        String script = """
                new Promise(done => {
                  const e = %s;
                  if (document.readyState !== 'complete') return done('is still loading');
                  if (!e) return done('is not there');
                  if (e.matches(':disabled')) return done('is disabled');
                  const at = () => { const r = e.getBoundingClientRect(); return {x: r.left + r.width / 2, y: r.top + r.height / 2}; };
                  const seen = p => { const t = document.elementFromPoint(p.x, p.y); return t && (e.contains(t) || t.closest('label')?.contains(e)); };
                  if (!seen(at())) e.scrollIntoView({block: 'center', behavior: 'instant'});
                  const first = at();
                  requestAnimationFrame(() => {
                    const p = at();
                    done(Math.abs(p.x - first.x) + Math.abs(p.y - first.y) > 1 ? 'moves' : seen(p) ? p : 'is covered');
                  });
                })""".formatted(FIND.formatted(quoted(css), quoted(words)));
        long end = System.currentTimeMillis() + PATIENCE_MS / 2;
        while (true) {
            JsonNode at = null;
            try {
                at = js(script);
            } catch (IllegalStateException e) {
                // the page is changing
            }
            if (at != null && at.has("x")) {
                return at;
            }
            if (System.currentTimeMillis() > end) {
                throw new AssertionError("'" + css + "' " + words + " cannot be pressed on " + path() + ": it "
                        + (at == null ? "goes" : at.asString("")));
            }
            pause(15);
        }
    }

    /** Presses a field and types into it, in place of what is there. */
    void fill(String css, String text) {
        press(css);
        js("document.activeElement.select?.()");
        type(text);
    }

    void type(String text) {
        text.chars().forEach(c -> key(String.valueOf((char) c)));
    }

    /** Chooses in a list, as a list tells it when it has been chosen in. */
    void choose(String css, String value) {
        js("(e => { e.value = " + quoted(value) + "; e.dispatchEvent(new Event('input', {bubbles: true}));"
                + " e.dispatchEvent(new Event('change', {bubbles: true})); })(document.querySelector(" + quoted(css)
                + "))");
        if (!is("document.querySelector(" + quoted(css) + ").value === " + quoted(value))) {
            throw new AssertionError("'" + css + "' offers no " + value);
        }
    }

    /** A key by its name: a character, Tab, Shift+Tab, Enter, ArrowDown ... */
    void key(String name) {
        boolean shift = name.startsWith("Shift+");
        String key = shift ? name.substring(6) : name;
        int code = KEYS.getOrDefault(
                key, Character.isLetterOrDigit(key.charAt(0)) ? (int) Character.toUpperCase(key.charAt(0)) : 0);
        Map<String, Object> event = new LinkedHashMap<>();
        event.put("key", key.equals("Space") ? " " : key);
        event.put("windowsVirtualKeyCode", code);
        event.put("modifiers", shift ? SHIFT : 0);
        if (key.length() > 1) {
            event.put("code", key);
        }
        String text = key.equals("Enter") ? "\r" : key.equals("Space") ? " " : key.length() == 1 ? key : "";
        if (!text.isEmpty()) {
            event.put("text", text);
        }
        event.put("type", text.isEmpty() ? "rawKeyDown" : "keyDown");
        order("Input.dispatchKeyEvent", event);
        event.remove("text");
        event.put("type", "keyUp");
        order("Input.dispatchKeyEvent", event);
    }

    /** What the console, the policy and the network had to say since last asked; requests that left this computer. */
    List<String> complaints() {
        List<String> all = new ArrayList<>(complaints);
        complaints.clear();
        requests.stream()
                .filter(r -> !r.startsWith(bench.toString()) && !r.startsWith("data:") && !r.startsWith("about:"))
                .forEach(r -> all.add("asked for " + r));
        requests.clear();
        return all;
    }

    void keep(Path file, boolean whole) {
        Map<String, Object> how = new LinkedHashMap<>();
        how.put("format", "png");
        how.put("optimizeForSpeed", true);
        if (whole) {
            int height = js("Math.max(innerHeight, document.documentElement.scrollHeight)")
                    .asInt();
            how.put("captureBeyondViewport", true);
            how.put(
                    "clip",
                    Map.of("x", 0, "y", 0, "width", screen.width, "height", Math.min(height, TALLEST), "scale", 1));
        }
        write(file, order("Page.captureScreenshot", how).path("data").asString(""));
    }

    private static void write(Path file, String base64) {
        try {
            Files.createDirectories(file.getParent());
            Files.write(file, Base64.getDecoder().decode(base64));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As it would come out of a printer. */
    void print(Path file) {
        write(
                file,
                order(
                                "Page.printToPDF",
                                Map.of(
                                        "printBackground",
                                        true,
                                        "preferCSSPageSize",
                                        true,
                                        "paperWidth",
                                        A4[0],
                                        "paperHeight",
                                        A4[1]))
                        .path("data")
                        .asString(""));
    }

    @Override
    public void close() {
        // a page that is left ends what it has going
        order("Page.navigate", Map.of("url", "about:blank"));
        wire.ask("", "Target.closeTarget", Map.of("targetId", target));
    }
}
