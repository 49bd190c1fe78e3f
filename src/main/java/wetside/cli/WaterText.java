package wetside.cli;

import java.time.LocalDate;
import java.util.Map;
import wetside.analysis.Content;
import wetside.analysis.Heated;
import wetside.analysis.Measured;
import wetside.analysis.Ranged;
import wetside.analysis.WaterSheet;
import wetside.feedwater.Advice;
import wetside.feedwater.Contents;
import wetside.feedwater.Descaling;
import wetside.feedwater.Hot;
import wetside.feedwater.Said;
import wetside.feedwater.Verdict;

/** A water as text: what is in it, what it does when heated, verdicts, and last when to descale. */
final class WaterText {
    private final Console console;
    private final WaterSheet sheet;
    private final Advice advice;
    private final LocalDate from;

    WaterText(Console console, WaterSheet sheet, Advice advice, LocalDate from) {
        this.console = console;
        this.sheet = sheet;
        this.advice = advice;
        this.from = from;
    }

    void print() {
        console.line(sheet.title());
        advice.machine().installed().ifPresent(i -> console.line("in " + FindingText.heading(i)));
        if (!sheet.remarks().isEmpty()) {
            console.text("", sheet.remarks());
        }
        measured();
        contents();
        heated();
        verdicts();
        descaling();
    }

    private void head(String words) {
        console.line("");
        console.line(words);
    }

    private void measured() {
        head("Measured");
        Table table = new Table("lll");
        for (Map.Entry<Content, Measured> e : sheet.measured().entrySet()) {
            Content c = e.getKey();
            Measured m = e.getValue();
            String unit = c.usualUnit();
            int digits = c == Content.CONDUCTIVITY ? 0 : 1;
            Ranged r = new Ranged(m.at(0.05), m.value(), m.at(0.95), "")
                    .times(1 / c.unit(unit).orElseThrow());
            table.row(c.words(), m.said(), Said.ranged(r, digits, unit));
        }
        table.print(console, "  ");
        if (!sheet.assumed().isEmpty()) {
            console.text("  Assumed: ", String.join("; ", sheet.assumed()) + ".");
        }
    }

    private void contents() {
        Ranged error = sheet.waters().of(c -> 100 * Math.abs(c.chargeError()));
        head("In it (5 to 95 % of the waters this may be)");
        Table table = new Table("lrlrl");
        table.row("", "mg/l", "", "meq/l", "hangs on");
        for (Contents.Row row : Contents.of(advice.waters())) {
            String range = Said.ranged(row.milligrams(), row.digits(), "");
            int cut = range.indexOf(" (");
            table.row(
                    row.name(),
                    cut < 0 ? range : range.substring(0, cut),
                    cut < 0 ? "" : range.substring(cut + 1),
                    Double.isNaN(row.charges()) ? "" : Said.number(row.charges(), 2),
                    row.milligrams().mainly());
        }
        table.print(console, "  ");
        console.line("  conductivity at 25 °C " + Said.microsiemens(advice.conductivity())
                + (error.middle() > 1 ? "; charges differ by " + Said.number(error.middle(), 0) + " %" : ""));
    }

    private void heated() {
        head("Heated, closed");
        Table table = new Table("lrrrrrr");
        table.row("", "°C", "pH", "calcite index", "can fall, mg/l", "anhydrite index", "µS/cm hot");
        for (int i = 0; i < advice.heated().size(); i++) {
            Heated h = advice.heated().get(i);
            Hot place = advice.machine().hot().get(i);
            table.row(
                    place.name(),
                    Said.number(h.kelvin() - 273.15, 0),
                    Said.number(h.ph().middle(), 2),
                    Said.signed(h.index()),
                    Said.ranged(h.potential(), 0, ""),
                    h.anhydrite().middle() < -5 || Double.isNaN(h.anhydrite().middle())
                            ? "none"
                            : Said.signed(h.anhydrite()),
                    Said.number(h.conductivity().middle() * 1e4, 0));
        }
        table.print(console, "  ");
        trade();
    }

    private void trade() {
        double brew = advice.machine().hot().get(0).kelvin();
        Ranged[] cold = advice.trade(298.15);
        Ranged[] hot = advice.trade(brew);
        console.text(
                "  ",
                "As the trade quotes it (simplified, from the pH of the cold water): Langelier " + Said.signed(cold[0])
                        + " at 25 °C, " + Said.signed(hot[0]) + " at " + Said.celsius(brew) + "; Ryznar "
                        + Said.number(cold[1].middle(), 1) + " and " + Said.number(hot[1].middle(), 1)
                        + ". Use the calcite index instead: above 90 °C it is good to ±0.2, these to half a unit.");
    }

    private void verdicts() {
        head("Verdicts");
        for (Verdict v : advice.verdicts()) {
            console.text("  " + Lines.padded(mark(v.grade()), 8), v.concern() + ": " + v.value());
            console.text("          ", v.reason());
        }
    }

    private static String mark(Verdict.Grade grade) {
        return switch (grade) {
            case GOOD -> "good";
            case WATCH -> "watch";
            case ACT -> "ACT";
        };
    }

    private void descaling() {
        if (advice.forecasts().isEmpty()) {
            console.line("");
            console.text(
                    "",
                    "With --machine NAME it says what happens to the level probe, where scale grows and when"
                            + " to descale.");
            return;
        }
        head("Scale to come");
        console.text("  ", sheet.use().words() + ".");
        Descaling.dates(advice.forecasts(), from).forEach(d -> console.text("  ", d));
        console.text("  ", Descaling.ASSUMED);
        head("Before anybody descales");
        Descaling.CAUTIONS.forEach(c -> console.text("  - ", c));
    }
}
