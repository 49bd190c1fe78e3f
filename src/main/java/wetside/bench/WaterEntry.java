package wetside.bench;

import io.javalin.http.Context;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wetside.analysis.Conditioning;
import wetside.analysis.Content;
import wetside.analysis.WaterSheet;
import wetside.machine.Problem;
import wetside.units.Dimension;
import wetside.units.Display;
import wetside.units.Unit;

/** The form of the water page as it was filled in, and the water sheet it makes. */
public final class WaterEntry {
    /** Ways to treat a water, by their word in the form. */
    public static final Map<String, String> TREATMENTS = treatments();

    /** Sliders: name, then least, most and where it stands first, in per cent. */
    static final Map<String, int[]> SLIDERS = sliders();

    static final List<String> USE = List.of("brewed", "steamed", "hot-water", "days");

    private static final Map<String, String> USE_LINES = Map.of(
            "brewed",
            "brewed: %s VOLUME",
            "steamed",
            "steamed: %s kg",
            "hot-water",
            "hot water: %s VOLUME",
            "days",
            "days: %s");
    private static final Pattern PLAIN =
            Pattern.compile("((?:below |< ?)?[+-]?[0-9.]+)\\s*(?:(?:±|\\+/-|\\+-)\\s*([0-9.]+)\\s*(%?))?");
    /** What the litres of a day were typed in. */
    static final String USE_UNIT = "use-unit";

    private static final String DROPS = "drops of ";
    private static final int LONGEST = 60;

    private final Map<String, String> fields = new LinkedHashMap<>();
    private final Map<Integer, String> lines = new LinkedHashMap<>();

    private WaterEntry(java.util.function.Function<String, String> said) {
        for (String name : names()) {
            String value = said.apply(name);
            String clean =
                    value == null ? "" : value.replaceAll("\\p{Cntrl}", " ").strip();
            fields.put(name, clean.substring(0, Math.min(clean.length(), 2 * LONGEST)));
        }
    }

    static WaterEntry of(Context context) {
        return new WaterEntry(context::formParam);
    }

    static WaterEntry of(Map<String, String> said) {
        return new WaterEntry(said::get);
    }

    /** From what {@link #encoded} gave. */
    static WaterEntry decoded(String text) {
        Map<String, String> said = new LinkedHashMap<>();
        for (String pair : text.split("&")) {
            int is = pair.indexOf('=');
            if (is > 0) {
                said.put(pair.substring(0, is), URLDecoder.decode(pair.substring(is + 1), StandardCharsets.UTF_8));
            }
        }
        return of(said);
    }

    String encoded() {
        return fields.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .map(e -> e.getKey() + "=" + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private static Map<String, String> treatments() {
        Map<String, String> m = new LinkedHashMap<>();
        m.put("none", "As it comes");
        m.put("softening", "Softener");
        m.put("decarbonising", "Decarbonising cartridge");
        m.put("reverse-osmosis", "Reverse osmosis");
        m.put("recipe", "Reverse osmosis, then minerals");
        m.put("boiling", "Boiled and poured off");
        return m;
    }

    private static Map<String, int[]> sliders() {
        Map<String, int[]> m = new LinkedHashMap<>();
        m.put("leak", new int[] {0, 50, 2});
        m.put("done", new int[] {0, 100, 90});
        m.put("held", new int[] {50, 99, 96});
        m.put("bypass", new int[] {0, 100, 20});
        return m;
    }

    private static List<String> names() {
        List<String> all = new ArrayList<>(List.of("title", "treatment", USE_UNIT));
        all.addAll(SLIDERS.keySet());
        all.addAll(USE);
        for (Content c : Content.values()) {
            all.add(field(c));
            all.add(field(c) + "-unit");
        }
        return all;
    }

    static String field(Content c) {
        return c.name().toLowerCase(Locale.ROOT);
    }

    public String text(String name) {
        return fields.getOrDefault(name, "");
    }

    private String volume() {
        return text(USE_UNIT).isEmpty() ? Display.METRIC.volume() : text(USE_UNIT);
    }

    /** The same with what is drawn in a day in the unit this reader wants. */
    WaterEntry in(Display units) {
        Unit typed = Dimension.VOLUME.unit(volume()).orElseThrow();
        Unit wanted = Dimension.VOLUME.unit(units.volume()).orElseThrow();
        for (String use : List.of("brewed", "hot-water")) {
            String said = text(use).replace(',', '.');
            if (!typed.equals(wanted) && said.matches("\\d+(\\.\\d+)?")) {
                set(use, Spoken.figures(wanted.fromSi(typed.toSi(Double.parseDouble(said)))));
            }
        }
        set(USE_UNIT, units.volume());
        return this;
    }

    public String title() {
        return text("title").isEmpty() ? "This water" : text("title");
    }

    void set(String name, String value) {
        fields.put(name, value);
    }

    /** A slider in per cent; where it was dragged out of its range or is none, where it stands first. */
    public int slider(String name) {
        int[] s = SLIDERS.get(name);
        String said = text(name);
        int v = said.matches("\\d{1,3}") ? Integer.parseInt(said) : s[2];
        return v < s[0] || v > s[1] ? s[2] : v;
    }

    public String treatment() {
        return TREATMENTS.containsKey(text("treatment")) ? text("treatment") : "none";
    }

    boolean isEmpty() {
        for (Content c : Content.values()) {
            if (!text(field(c)).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** What a pen says alone makes no water, but is no mistake either: it is where most begin. */
    boolean isPenOnly() {
        return !text(field(Content.CONDUCTIVITY)).isEmpty()
                && List.of(Content.values()).stream()
                        .allMatch(
                                c -> c == Content.CONDUCTIVITY || text(field(c)).isEmpty());
    }

    /** Units to choose from for a content, drops among them where there are drop tests. */
    static List<String> units(Content c) {
        List<String> all = new ArrayList<>(c.units());
        if (c == Content.HARDNESS || c == Content.ALKALINITY) {
            all.add(1, DROPS + "1 °dH");
            all.add(2, DROPS + "1 °fH");
            all.add(3, DROPS + "10 mg/l CaCO3");
        }
        return all;
    }

    /** A content as a sheet writes it. */
    private String measure(Content c) {
        String value = text(field(c)).replaceAll("(?<=\\d),(?=\\d)", ".").replace('−', '-');
        String unit = text(field(c) + "-unit");
        Matcher m = PLAIN.matcher(value);
        if (!m.matches() || !units(c).contains(unit)) {
            return value;
        }
        if (unit.startsWith(DROPS)) {
            return value + " " + unit;
        }
        String spread =
                m.group(2) == null ? "" : " ± " + m.group(2) + (m.group(3).isEmpty() ? " " + unit : " %");
        return m.group(1) + " " + unit + spread;
    }

    /** The water sheet of the water as it comes. */
    String measured() {
        List<String> yaml = new ArrayList<>(List.of("wetside water: 1", "title: " + quoted(title())));
        lines.clear();
        yaml.add(isEmpty() ? "measured: {}" : "measured:");
        for (Content c : Content.values()) {
            if (!text(field(c)).isEmpty()) {
                yaml.add("  " + c.words() + ": " + quoted(measure(c)));
                lines.put(yaml.size(), field(c));
            }
        }
        if (USE.stream().anyMatch(u -> !text(u).isEmpty())) {
            yaml.add("use:");
            for (String u : USE) {
                String said = text(u).replace(',', '.');
                String amount = said.isEmpty() ? u.equals("days") ? "330" : "0" : said;
                String[] parts = USE_LINES.get(u).split(": ");
                yaml.add("  " + parts[0] + ": "
                        + quoted(String.format(parts[1], amount).replace("VOLUME", volume())));
                lines.put(yaml.size(), u);
            }
        }
        return String.join("\n", yaml) + "\n";
    }

    /** The water sheet with its treatment. */
    String sheet() {
        String treated = treated();
        return measured() + (treated.isEmpty() ? "" : "treatments:\n  chosen: {" + treated + "}\n");
    }

    /** What is done to it. */
    Optional<Conditioning> conditioning(WaterSheet w) {
        double held = slider("held") / 100.0;
        double bypass = slider("bypass") / 100.0;
        return switch (treatment()) {
            case "softening" -> Optional.of(Conditioning.softening("chosen", slider("leak") / 100.0));
            case "decarbonising" -> Optional.of(Conditioning.decarbonising("chosen", slider("done") / 100.0, bypass));
            case "reverse-osmosis" -> Optional.of(Conditioning.reverseOsmosis("chosen", held, bypass, ""));
            case "recipe" ->
                Optional.of(Conditioning.recipe("chosen", held, w.waters().middle(), w.range()));
            case "boiling" -> Optional.of(Conditioning.boiling("chosen"));
            default -> Optional.empty();
        };
    }

    private String treated() {
        return switch (treatment()) {
            case "softening" -> "softening: " + slider("leak") + " %";
            case "decarbonising" -> "decarbonising: " + slider("done") + " %, bypass: " + slider("bypass") + " %";
            case "reverse-osmosis" -> "reverse osmosis: " + slider("held") + " %, bypass: " + slider("bypass") + " %";
            case "recipe" -> "reverse osmosis: " + slider("held") + " %, recipe: yes";
            case "boiling" -> "boiling: yes";
            default -> "";
        };
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** The field a problem of {@link #measured} belongs to; "" for the whole. */
    String fieldOf(Problem p) {
        if (p.what().contains("is missing: the least")) {
            return p.what().startsWith("alkalinity") ? "alkalinity" : "hardness";
        }
        return lines.getOrDefault(p.spot().line(), "");
    }
}
