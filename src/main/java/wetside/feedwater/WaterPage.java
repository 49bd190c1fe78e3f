package wetside.feedwater;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.analysis.Content;
import wetside.analysis.Measured;
import wetside.analysis.WaterSheet;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.page.Level;
import wetside.page.Sheet;
import wetside.units.Dimension;
import wetside.units.Display;
import wetside.units.Unit;
import wetside.water.Composition;

/** Advice on a water for its owner, to print. */
public final class WaterPage {
    private final WaterSheet sheet;
    private final Advice advice;
    private final LocalDate from;
    private final Display units;

    /**
     * @param from  null for no dates
     * @param units as its reader wants them; what was measured stays as it was written
     */
    public WaterPage(WaterSheet sheet, Advice advice, LocalDate from, Display units) {
        this.sheet = sheet;
        this.advice = advice;
        this.from = from;
        this.units = units;
    }

    public Sheet sheet() {
        List<Sheet.Section> sections = new ArrayList<>();
        sections.add(new Sheet.Section("Verdicts", verdicts()));
        sections.add(new Sheet.Section("What is in it", balance(), measured()));
        sections.add(new Sheet.Section("Scale by temperature", curve()));
        if (!advice.forecasts().isEmpty()) {
            List<Block> blocks = new ArrayList<>();
            List<String> lines = new ArrayList<>();
            lines.add(words(sheet.use().words() + "."));
            Descaling.dates(advice.forecasts(), from).forEach(l -> lines.add(words(l)));
            blocks.add(new Block.Prose(lines));
            blocks.add(new Block.Caution(Level.TECHNICIAN, "Descaling is work with acid", Descaling.CAUTIONS.get(0)));
            blocks.add(new Block.Prose(Descaling.CAUTIONS.subList(1, Descaling.CAUTIONS.size())));
            sections.add(new Sheet.Section("Scale to come", blocks));
        }
        return new Sheet(sheet.title(), "water advice", plate(), lead(), sections, note());
    }

    private Sheet.Plate plate() {
        Composition c = advice.waters().middle();
        List<Sheet.Cell> cells = new ArrayList<>();
        advice.machine()
                .installed()
                .ifPresent(i -> cells.add(
                        new Sheet.Cell("Machine", i.machine().identity().title())));
        cells.add(new Sheet.Cell("Hardness", hardness(c.hardness())));
        cells.add(new Sheet.Cell("Alkalinity", hardness(c.alkalinity() / 2)));
        cells.add(new Sheet.Cell(
                words("Conductivity, 25 °C"), Said.number(advice.conductivity().middle() * 1e4, 0) + " µS/cm"));
        return new Sheet.Plate(cells);
    }

    /** @param mol [mol/kg], charges of two each */
    private String hardness(double mol) {
        Unit unit = units.unit(Dimension.HARDNESS);
        double shown = unit.fromSi(mol * 1000);
        return Said.number(shown, shown < 100 ? 1 : 0) + " " + unit.symbol();
    }

    private String words(String ours) {
        return WaterWords.in(units, ours);
    }

    private String lead() {
        List<String> act = concerns(Verdict.Grade.ACT);
        List<String> watch = concerns(Verdict.Grade.WATCH);
        if (act.isEmpty() && watch.isEmpty()) {
            return "This water is fine in every respect looked at.";
        }
        String first = act.isEmpty() ? "Nothing is urgent. " : "To act on: " + String.join("; ", act) + ". ";
        return first + (watch.isEmpty() ? "" : "To keep an eye on: " + String.join("; ", watch) + ".");
    }

    private List<String> concerns(Verdict.Grade grade) {
        return advice.verdicts().stream()
                .filter(v -> v.grade() == grade)
                .map(Verdict::concern)
                .toList();
    }

    private Block verdicts() {
        List<Block.Row> rows = new ArrayList<>();
        for (Verdict v : advice.verdicts()) {
            rows.add(new Block.Row(
                    null,
                    v.grade() == Verdict.Grade.ACT,
                    List.of(
                            v.concern(),
                            v.grade().word(),
                            words(v.value() + ". " + Wording.capital(v.reason()) + "."))));
        }
        return new Block.Table(
                List.of(Block.Column.words("About"), Block.Column.words("Verdict"), Block.Column.words("Why")), rows);
    }

    private Block balance() {
        return new Block.Drawing(
                WaterDrawings.balance(advice),
                "Charges of the ions in this water, positive and negative side by side",
                "",
                0.95);
    }

    private Block measured() {
        List<Block.Fact> facts = new ArrayList<>();
        for (Map.Entry<Content, Measured> e : sheet.measured().entrySet()) {
            facts.add(new Block.Fact(e.getKey().words(), e.getValue().said()));
        }
        if (!sheet.assumed().isEmpty()) {
            facts.add(new Block.Fact("assumed", words(String.join("; ", sheet.assumed()))));
        }
        return new Block.Facts(facts);
    }

    private Block curve() {
        return new Block.Drawing(
                WaterDrawings.curve(
                        advice,
                        WaterDrawings.index(advice.waters(), advice.set()),
                        Optional.empty(),
                        units.unit(Dimension.TEMPERATURE)),
                "Calcite index over temperature with the machine's temperatures",
                words("Band: what was not measured, and above 90 °C ±0.2 for constants carried on past their"
                        + " measurements."),
                0.95);
    }

    private String note() {
        return "Computed from what was measured, by "
                + (advice.set().name().equals("STANDARD")
                        ? "the constants of Plummer and Busenberg (1982)"
                        : "the high-temperature constants")
                + "; ranges are 5 to 95 % of the waters the analysis may mean. "
                + (advice.forecasts().isEmpty() ? "" : Descaling.ASSUMED + " ")
                + "Local codes and the machine's maker come first.";
    }
}
