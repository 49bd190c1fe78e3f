package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wetside.analysis.Blend;
import wetside.analysis.Conditioning;
import wetside.analysis.Expense;
import wetside.analysis.WaterSheet;
import wetside.analysis.Waters;
import wetside.drawing.HeatCurve;
import wetside.feedwater.Advice;
import wetside.feedwater.MachineFacts;
import wetside.feedwater.Said;
import wetside.feedwater.WaterDrawings;
import wetside.feedwater.WaterPage;
import wetside.machine.BadFile;
import wetside.machine.Problem;
import wetside.machine.Wording;
import wetside.page.HtmlSheet;
import wetside.page.PdfSheet;
import wetside.page.Picture;
import wetside.page.Sheet;
import wetside.shop.KeptWater;
import wetside.units.Dimension;
import wetside.units.Display;
import wetside.units.Unit;
import wetside.water.Composition;
import wetside.water.ConstantSet;

/** A water: what was measured, what it does in a machine, and what a treatment would change. */
public final class WaterPages implements Routes {
    private static final String FREE = "/water";
    private static final ConstantSet SET = ConstantSet.STANDARD;
    private static final Map<String, String> EXAMPLE = Map.of(
            "title", "Example tap",
            "hardness", "9",
            "hardness-unit", "drops of 1 °dH",
            "alkalinity", "8",
            "alkalinity-unit", "drops of 1 °dH",
            "conductivity", "390",
            "conductivity-unit", "µS/cm",
            "ph", "7.6",
            "treatment", "decarbonising",
            "bypass", "40");

    private final Workshop workshop;
    private final Pages pages;
    private final Subjects subjects;
    private final WaterFacts facts;
    /** While a slider moves, the water as it comes stays what it is. */
    private final Kept<String, Raw> raws = new Kept<>(16);

    WaterPages(Workshop workshop, Pages pages, Subjects subjects) {
        this.workshop = workshop;
        this.pages = pages;
        this.subjects = subjects;
        this.facts = new WaterFacts(subjects);
    }

    /** A water as it comes and, where a treatment was chosen, after it. */
    private record Case(
            WaterSheet sheet,
            Advice before,
            HeatCurve.Curve index,
            Optional<Conditioning> how,
            Optional<Advice> treated) {}

    private record Raw(WaterSheet sheet, Advice advice, HeatCurve.Curve index) {}

    @Override
    public void routes(RoutesConfig routes) {
        List<String> addresses = new ArrayList<>(List.of(FREE));
        Subjects.ADDRESSES.forEach(a -> addresses.add(a + "/water"));
        for (String a : addresses) {
            routes.get(a, c -> show(c, entered(c).in(Frame.units(c))));
            routes.post(a, this::change);
            for (String kind : List.of("html", "pdf")) {
                routes.get(a + "/advice." + kind, c -> advice(c, kept(subject(c)), kind));
                routes.post(a + "/advice." + kind, c -> advice(c, WaterEntry.of(c), kind));
            }
        }
    }

    private Subject subject(Context context) {
        return context.pathParamMap().isEmpty() ? null : subjects.of(context);
    }

    private Optional<KeptWater> last(Subject s) {
        return s == null || s.onRegister() == null
                ? Optional.empty()
                : workshop.waters().of(s.onRegister().id());
    }

    private WaterEntry kept(Subject s) {
        return last(s).map(k -> WaterEntry.decoded(k.entered())).orElseThrow(NotFoundResponse::new);
    }

    /** What the page begins with: the example if wished, the machine's water, or what is known of it. */
    private WaterEntry entered(Context context) {
        if (context.queryParam("example") != null) {
            return WaterEntry.of(EXAMPLE);
        }
        Subject s = subject(context);
        if (last(s).isPresent()) {
            return kept(s);
        }
        Map<String, String> known = new LinkedHashMap<>();
        if (s != null && s.onRegister() != null && s.onRegister().waterConductivity() != null) {
            known.put(
                    "conductivity",
                    String.format(Locale.ROOT, "%.0f", 1e4 * s.onRegister().waterConductivity()));
            known.put("conductivity-unit", "µS/cm");
        }
        return WaterEntry.of(known);
    }

    private void change(Context context) {
        Units.take(context);
        WaterEntry entry = WaterEntry.of(context).in(Frame.units(context));
        Subject s = subject(context);
        boolean keep = context.formParam("keep") != null && s != null && s.onRegister() != null;
        if (!keep) {
            show(context, entry);
            return;
        }
        String text = entry.sheet();
        Optional<Case> made = made(s, entry, new LinkedHashMap<>());
        if (made.isEmpty()) {
            show(context, entry);
            return;
        }
        double conductivity = made.get()
                .treated()
                .map(Advice::conductivity)
                .orElse(made.get().before().conductivity())
                .middle();
        workshop.waters().keep(s.onRegister().id(), text, entry.encoded(), conductivity, new Form(context).person());
        context.redirect(s.address() + "/water", HttpStatus.SEE_OTHER);
    }

    /** Empty where there is no water in it; what is wrong is told by field. */
    private Optional<Case> made(Subject s, WaterEntry entry, Map<String, String> troubles) {
        if (entry.isEmpty() || entry.isPenOnly()) {
            return Optional.empty();
        }
        try {
            MachineFacts machine = facts.of(s).orElse(MachineFacts.NONE);
            Raw raw = raw(entry.measured(), machine);
            WaterSheet sheet = raw.sheet();
            Optional<Conditioning> how = entry.conditioning(sheet);
            return Optional.of(new Case(
                    sheet,
                    raw.advice(),
                    raw.index(),
                    how,
                    how.map(h -> Advice.treated(
                            sheet.waters().treated(h.treat()), sheet.range(), sheet.use(), machine, SET))));
        } catch (BadFile e) {
            for (Problem p : e.problems()) {
                troubles.merge(
                        entry.fieldOf(p),
                        Wording.capital(p.what()) + (p.maybe().isEmpty() ? "" : " (" + p.maybe() + ")"),
                        (a, b) -> a + ". " + b);
            }
            return Optional.empty();
        }
    }

    private Raw raw(String text, MachineFacts machine) {
        return raws.of(System.identityHashCode(machine) + text, () -> {
            WaterSheet sheet = WaterSheet.of("water", text);
            Advice advice = Advice.of(sheet, machine, SET);
            return new Raw(sheet, advice, WaterDrawings.index(advice.waters(), SET));
        });
    }

    private void show(Context context, WaterEntry entry) {
        Subject s = subject(context);
        Display units = Frame.units(context);
        Map<String, String> troubles = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        // Asked first: facts that come while the rest is computed are for the next look.
        boolean waiting = facts.of(s).isEmpty();
        if (context.formParam("nearest") != null) {
            made(s, entry, new LinkedHashMap<>()).ifPresent(c -> nearest(c, entry, notes));
        }
        Optional<Case> made = made(s, entry, troubles);
        made.flatMap(Case::how)
                .map(Conditioning::note)
                .filter(n -> !n.isEmpty())
                .ifPresent(notes::add);
        pages.show(
                context,
                "water",
                entry.isEmpty() ? "Water" : entry.title(),
                "Water",
                new WaterView(
                        s == null ? FREE : s.address() + "/water",
                        s,
                        plate(s, entry, made, units),
                        entry,
                        troubles,
                        waiting,
                        made.map(c -> Picture.onPage(
                                        WaterDrawings.balance(c.treated().orElse(c.before()))))
                                .orElse(""),
                        made.map(c -> Picture.onPage(WaterDrawings.curve(
                                        c.before(), c.index(), c.treated(), units.unit(Dimension.TEMPERATURE))))
                                .orElse(""),
                        made.map(c -> WaterView.rows(c.before(), c.treated())).orElse(List.of()),
                        made.map(WaterPages::cost).orElse(Map.of()),
                        notes,
                        made.map(c -> c.sheet().assumed()).orElse(List.of()),
                        last(s).orElse(null),
                        Form.person(context),
                        units),
                "water");
    }

    /** Sets the bypass so that the blend comes as near to the brewing range as it can. */
    private static void nearest(Case c, WaterEntry entry, List<String> notes) {
        Composition raw = c.sheet().waters().middle();
        double done = entry.slider("done") / 100.0;
        double held = entry.slider("held") / 100.0;
        Blend blend = switch (entry.treatment()) {
            case "decarbonising" ->
                Blend.nearest(
                        raw,
                        c.sheet().range(),
                        x -> Conditioning.decarbonising("", done, x).treat());
            case "reverse-osmosis" ->
                Blend.nearest(
                        raw,
                        c.sheet().range(),
                        x -> Conditioning.reverseOsmosis("", held, x, "").treat());
            default -> null;
        };
        if (blend == null) {
            notes.add("Only a cartridge or a membrane has a share that goes round it");
            return;
        }
        entry.set("bypass", Long.toString(Math.round(100 * blend.share())));
        notes.add(Wording.capital(blend.said()));
    }

    private static Map<String, String> cost(Case c) {
        Map<String, String> cost = new LinkedHashMap<>();
        if (c.how().isPresent()) {
            Composition raw = c.sheet().waters().middle();
            double litres = c.sheet().use().yearly() * 1000;
            Expense expense = c.how()
                    .get()
                    .costs()
                    .of(raw, c.how().get().treat().apply(raw), litres, c.sheet().prices());
            expense.items()
                    .forEach((what, v) -> cost.put(what, String.format(Locale.ROOT, v < 10 ? "%.2f" : "%.0f", v)));
        }
        return cost;
    }

    private static Plate plate(Subject s, WaterEntry entry, Optional<Case> made, Display units) {
        List<Plate.Cell> cells = new ArrayList<>();
        cells.add(new Plate.Cell(
                "Water sheet",
                entry.isEmpty()
                        ? "nothing entered yet"
                        : made.isEmpty() && entry.text("title").isEmpty() ? "not complete yet" : entry.title()));
        made.ifPresent(c -> {
            Waters was = c.before().waters();
            Optional<Waters> is = c.treated().map(Advice::waters);
            Unit unit = units.unit(Dimension.HARDNESS);
            cells.add(cell(
                    "Hardness",
                    unit,
                    was.middle().hardness() * 2,
                    is.map(w -> w.middle().hardness() * 2)));
            cells.add(cell(
                    "Alkalinity",
                    unit,
                    was.middle().alkalinity(),
                    is.map(w -> w.middle().alkalinity())));
            String pen = Said.number(1e4 * c.before().conductivity().middle(), 0);
            cells.add(new Plate.Cell(
                    "Conductivity at " + units.prose("25 °C") + ", µS/cm",
                    c.treated()
                            .map(t -> pen + " → "
                                    + Said.number(1e4 * t.conductivity().middle(), 0))
                            .orElse(pen)));
        });
        cells.add(new Plate.Cell("For machine", s == null ? "none chosen" : s.title() + ", " + s.which()));
        return new Plate(cells);
    }

    /** @param was charges [eq/kg] */
    private static Plate.Cell cell(String label, Unit unit, double was, Optional<Double> is) {
        String first = degrees(was, unit);
        return new Plate.Cell(
                label + ", " + unit.symbol(),
                is.map(v -> first + " → " + degrees(v, unit)).orElse(first));
    }

    private static String degrees(double equivalents, Unit unit) {
        double shown = unit.fromSi(equivalents / 2 * 1000);
        return Said.number(shown, shown < 100 ? 1 : 0);
    }

    /** For the owner, to print. */
    private void advice(Context context, WaterEntry entry, String kind) {
        Subject s = subject(context);
        Map<String, String> troubles = new LinkedHashMap<>();
        Optional<Case> made = made(s, entry, troubles);
        if (made.isEmpty()) {
            throw new BadForm(
                    troubles.isEmpty()
                            ? "Nothing was measured yet: the least is hardness and alkalinity"
                            : String.join(". ", troubles.values()));
        }
        Case c = made.get();
        WaterSheet titled = c.how().map(h -> titled(c.sheet(), h.how())).orElse(c.sheet());
        Sheet sheet = new WaterPage(titled, c.treated().orElse(c.before()), null, Frame.units(context)).sheet();
        if (kind.equals("pdf")) {
            context.header("Content-Disposition", "inline; filename=\"water-advice.pdf\"");
            context.contentType("application/pdf").result(PdfSheet.of(sheet));
        } else {
            // The sheet brings its own style along; scripts it has none.
            context.header(
                    "Content-Security-Policy",
                    "default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:");
            context.contentType("text/html; charset=utf-8").result(HtmlSheet.of(sheet));
        }
    }

    private static WaterSheet titled(WaterSheet w, String how) {
        return new WaterSheet(
                w.source(),
                w.title() + ", " + how,
                w.remarks(),
                w.measured(),
                w.waters(),
                w.assumed(),
                w.range(),
                w.use(),
                w.prices(),
                w.treatments());
    }
}
