package wetside.casework;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntConsumer;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.machine.Machine;
import wetside.units.Display;

/**
 * What one procedure should find: quantiles over draws widened by the instrument, or shares of words.
 *
 * @param low    5 % quantile in the asking's unit, NaN for words
 * @param middle median
 * @param high   95 % quantile
 * @param shares share of draws for every word, empty for numbers
 */
public record Expected(Asking asking, double low, double middle, double high, Map<String, Double> shares) {
    private static final double NINETY = 1.645;

    /** Over machines that work. */
    public static List<Expected> healthy(Casework casework, int draws) {
        return healthy(casework, draws, done -> {});
    }

    /** The same; {@code progress} hears how many machines have been simulated. */
    public static List<Expected> healthy(Casework casework, int draws, IntConsumer progress) {
        Candidate healthy = casework.candidates().get(0);
        float[][] rows = new float[draws][];
        for (int k = 0; k < draws; k++) {
            Machine drawn = casework.draws().machine(k);
            rows[k] = casework.row(drawn, healthy, k);
            progress.accept(k + 1);
        }
        List<Expected> all = new ArrayList<>();
        for (int q = 0; q < casework.askings().size(); q++) {
            double[] values = new double[draws];
            for (int k = 0; k < draws; k++) {
                values[k] = rows[k][q];
            }
            all.add(of(casework.askings().get(q), values));
        }
        return all;
    }

    /** The same from a library that has draws of them already. */
    public static List<Expected> healthy(Casework casework, Library library) {
        List<Expected> all = new ArrayList<>();
        for (Asking asking : casework.askings()) {
            int q = library.question(asking.question().id());
            double[] values = new double[library.signatures().draws(0)];
            for (int k = 0; k < values.length; k++) {
                values[k] = library.signatures().value(0, k, q);
            }
            all.add(of(asking, values));
        }
        return all;
    }

    /** From the values of all draws. */
    public static Expected of(Asking asking, double[] values) {
        double[] v =
                Arrays.stream(values).filter(x -> !Double.isNaN(x)).sorted().toArray();
        if (asking.question().answering() instanceof Answering.Choice choice) {
            Map<String, Double> shares = new LinkedHashMap<>();
            for (int i = 0; i < choice.options().size(); i++) {
                int option = i;
                double n = Arrays.stream(v).filter(x -> x == option).count();
                if (n > 0) {
                    shares.put(choice.options().get(i), n / v.length);
                }
            }
            return new Expected(asking, Double.NaN, Double.NaN, Double.NaN, shares);
        }
        if (v.length == 0) {
            return new Expected(asking, Double.NaN, Double.NaN, Double.NaN, Map.of());
        }
        Answering.Number n = (Answering.Number) asking.question().answering();
        double middle = quantile(v, 0.5);
        double instrument = NINETY * Math.hypot(n.sd(), n.relative() * middle);
        double low = middle - Math.hypot(middle - quantile(v, 0.05), instrument);
        double high = middle + Math.hypot(quantile(v, 0.95) - middle, instrument);
        return new Expected(asking, v[0] >= 0 ? Math.max(0, low) : low, middle, high, Map.of());
    }

    private static double quantile(double[] sorted, double p) {
        double at = p * (sorted.length - 1);
        int i = (int) at;
        return i + 1 < sorted.length ? sorted[i] + (at - i) * (sorted[i + 1] - sorted[i]) : sorted[i];
    }

    public boolean isNumber() {
        return asking.question().answering() instanceof Answering.Number;
    }

    /** As printed: "8.2 to 8.9 bar", "steady", "dark 60 %, flashing 40 %". */
    public String words() {
        if (!isNumber()) {
            List<String> parts = new ArrayList<>();
            shares.forEach((word, share) -> {
                if (share > 0.995) {
                    parts.add(word);
                } else if (share >= 0.02) {
                    parts.add(String.format(Locale.ROOT, "%s %.0f %%", word, 100 * share));
                }
            });
            return String.join(", ", parts);
        }
        if (Double.isNaN(middle)) {
            return "–";
        }
        return Display.METRIC.range(asking.si(low), asking.si(high), asking.dimension());
    }
}
