package wetside.analysis;

import java.util.LinkedHashMap;
import java.util.Map;

/** What a treatment costs in a year, by what is bought; prices are assumptions. */
public record Expense(Map<String, Double> items) {
    static final Expense NONE = new Expense(Map.of());

    public double total() {
        return items.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    Expense and(String what, double money) {
        Map<String, Double> more = new LinkedHashMap<>(items);
        more.put(what, money);
        return new Expense(more);
    }
}
