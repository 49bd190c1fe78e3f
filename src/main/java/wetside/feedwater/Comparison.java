package wetside.feedwater;

import java.util.ArrayList;
import java.util.List;
import wetside.analysis.Conditioning;
import wetside.analysis.Expense;
import wetside.analysis.WaterSheet;
import wetside.analysis.Waters;
import wetside.water.ConstantSet;

/** One water under several treatments, side by side. */
public record Comparison(WaterSheet sheet, List<Entry> entries) {
    /** A treatment, what the water is after it, and what a year of it costs. */
    public record Entry(Conditioning conditioning, Advice advice, Expense expense) {}

    /** As it comes, and by the sheet's treatments or the usual ones. */
    public static Comparison of(WaterSheet sheet, MachineFacts machine, ConstantSet set) {
        List<Conditioning> all = new ArrayList<>();
        all.add(Conditioning.NONE);
        all.addAll(
                sheet.treatments().isEmpty()
                        ? Conditioning.usual(sheet.waters().middle(), sheet.range())
                        : sheet.treatments());
        double litres = sheet.use().yearly() * 1000;
        List<Entry> entries = new ArrayList<>();
        for (Conditioning c : all) {
            Waters treated = sheet.waters().treated(c.treat());
            Advice advice = c == Conditioning.NONE
                    ? Advice.of(sheet, machine, set)
                    : Advice.treated(treated, sheet.range(), sheet.use(), machine, set);
            entries.add(new Entry(
                    c, advice, c.costs().of(sheet.waters().middle(), treated.middle(), litres, sheet.prices())));
        }
        return new Comparison(sheet, entries);
    }
}
