package wetside.bench;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.analysis.Content;
import wetside.feedwater.Advice;
import wetside.feedwater.Verdict;
import wetside.feedwater.WaterWords;
import wetside.machine.Wording;
import wetside.shop.KeptWater;
import wetside.units.Display;

/**
 * The water page as its template shows it.
 *
 * @param address  of the page
 * @param subject  null where no machine was chosen
 * @param troubles what is wrong, by field; "" for the whole
 * @param waiting  while the twin warms the machine up
 * @param balance  trusted markup of our own, "" while there is no water
 * @param curve    likewise
 * @param cost     what a year of the treatment costs, by item
 * @param kept     the water of the machine that was kept last, null for none
 */
public record WaterView(
        String address,
        Subject subject,
        Plate plate,
        WaterEntry entry,
        Map<String, String> troubles,
        boolean waiting,
        String balance,
        String curve,
        List<Row> verdicts,
        Map<String, String> cost,
        List<String> notes,
        List<String> assumed,
        KeptWater kept,
        String person,
        Display units) {
    /** A quantity that may have been measured. */
    public record Field(String name, String words, String value, List<String> units, String unit, String trouble) {}

    /**
     * A verdict.
     *
     * @param number the number that says most of it, as it comes and treated
     * @param rail   null where no number says it
     */
    public record Row(String concern, Verdict.Grade grade, String number, RailBox rail, String value, String reason) {
        public String sign() {
            return grade == Verdict.Grade.GOOD ? "✓" : "▲";
        }
    }

    /** Those two drop tests, pen and strip give. */
    public List<Field> first() {
        return fields(List.of(Content.HARDNESS, Content.ALKALINITY, Content.CONDUCTIVITY, Content.PH));
    }

    /** Those a laboratory gives. */
    public List<Field> more() {
        List<Content> all = new ArrayList<>(List.of(Content.values()));
        all.removeAll(List.of(Content.HARDNESS, Content.ALKALINITY, Content.CONDUCTIVITY, Content.PH));
        return fields(all);
    }

    public boolean moreOpen() {
        return more().stream().anyMatch(f -> !f.value.isEmpty() || !f.trouble.isEmpty());
    }

    private List<Field> fields(List<Content> contents) {
        List<Field> fields = new ArrayList<>();
        for (Content c : contents) {
            String name = WaterEntry.field(c);
            fields.add(new Field(
                    name,
                    Wording.capital(c.words()).replace("PH", "pH"),
                    entry.text(name),
                    WaterEntry.units(c),
                    unit(c, entry.text(name).isEmpty() ? "" : entry.text(name + "-unit")),
                    trouble(name)));
        }
        return fields;
    }

    /** A sentence of ours with measures as this reader wants them. */
    public String words(String text) {
        return WaterWords.in(units, text);
    }

    /** As it was typed; before that as this reader wants hardness. */
    private String unit(Content c, String typed) {
        String wanted = units.hardness().replace("ppm", "mg/l");
        return typed.isEmpty() && WaterEntry.units(c).contains(wanted) ? wanted : typed;
    }

    /** The day on which the machine's water was kept. */
    public String keptOn() {
        return Spoken.day(LocalDate.parse(kept.at().substring(0, 10)));
    }

    public String trouble(String field) {
        return troubles.getOrDefault(field, "");
    }

    /** The uses of a day with their labels. */
    public Map<String, String> use() {
        Map<String, String> m = new LinkedHashMap<>();
        m.put("brewed", "Brewed, " + units.volume() + " a day");
        m.put("steamed", "Steam, kg a day");
        m.put("hot-water", "Hot water, " + units.volume() + " a day");
        m.put("days", "Days a year");
        return m;
    }

    /** Sliders with their labels, and which treatments they are of. */
    public List<Slider> sliders() {
        return List.of(
                slider("leak", "Hardness that passes", "for-softening"),
                slider("done", "Of the bicarbonate, taken out", "for-decarbonising"),
                slider("held", "Held back by the membrane", "for-reverse-osmosis for-recipe"),
                slider("bypass", "Goes round it untreated", "for-decarbonising for-reverse-osmosis"));
    }

    /** A share to drag. */
    public record Slider(String name, String words, String style, int least, int most, int value) {}

    private Slider slider(String name, String words, String style) {
        int[] s = WaterEntry.SLIDERS.get(name);
        return new Slider(name, words, style, s[0], s[1], entry.slider(name));
    }

    /** Verdicts of a water, and beside them those of the same treated. */
    static List<Row> rows(Advice before, Optional<Advice> treated) {
        List<Row> rows = new ArrayList<>();
        for (Verdict v : treated.orElse(before).verdicts()) {
            Optional<Verdict.Gauge> then = treated.isEmpty()
                    ? Optional.empty()
                    : before.verdicts().stream()
                            .filter(b -> b.concern().equals(v.concern()))
                            .findFirst()
                            .flatMap(Verdict::gauge);
            rows.add(new Row(
                    Wording.capital(v.concern()),
                    v.grade(),
                    v.gauge().map(g -> number(g, then)).orElse(""),
                    v.gauge().map(g -> rail(g, then)).orElse(null),
                    v.value(),
                    v.reason()));
        }
        return rows;
    }

    /** "alkalinity, °dH" was the name; the unit stands after the number. */
    private static String number(Verdict.Gauge g, Optional<Verdict.Gauge> then) {
        String now = WaterWords.figures(g.value());
        String was = then.map(t -> WaterWords.figures(t.value())).orElse(now);
        int comma = g.words().lastIndexOf(", ");
        String unit = comma < 0 ? "" : " " + g.words().substring(comma + 2);
        String name = comma < 0 ? g.words() : g.words().substring(0, comma);
        return name + ": " + (was.equals(now) ? now : was + " → " + now) + unit;
    }

    private static RailBox rail(Verdict.Gauge g, Optional<Verdict.Gauge> then) {
        double was = then.map(Verdict.Gauge::value).orElse(g.value());
        double least = Math.min(g.value(), was);
        double most = Math.max(g.value(), was);
        double from = Double.isFinite(g.from()) ? g.from() : Math.min(0, least) - (g.to() <= 0 ? 0.5 : 0);
        double to = Double.isFinite(g.to()) ? g.to() : 1.3 * Math.max(most, 2 * from);
        return RailBox.of(from, to, g.value(), then.map(Verdict.Gauge::value).orElse(null));
    }
}
