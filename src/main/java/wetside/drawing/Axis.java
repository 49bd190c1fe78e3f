package wetside.drawing;

import java.util.List;
import java.util.Locale;

/**
 * An axis that counts in round numbers, or one step for each of some words.
 *
 * @param low   its lower end
 * @param high  its upper end
 * @param step  from one tick to the next
 * @param words at 0, 1, 2 ...; empty for numbers
 */
record Axis(double low, double high, double step, List<String> words) {

    /** From {@code least} to {@code most} in about {@code steps} steps, beginning and ending at a tick. */
    static Axis over(double least, double most, int steps) {
        double step = round(Math.max(most - least, 1e-6 * Math.max(1, Math.abs(most))) / steps);
        double low = Math.floor(least / step + 1e-9) * step;
        double high = Math.ceil(most / step - 1e-9) * step;
        return new Axis(low, Math.max(low + step, high), step, List.of());
    }

    /** From nothing to exactly {@code most}, wherever the last tick falls. */
    static Axis upTo(double most, int steps) {
        return new Axis(0, most, round(most / steps), List.of());
    }

    /** One tick for each word, half a step of room at the ends. */
    static Axis of(List<String> words) {
        return new Axis(-0.5, words.size() - 0.5, 1, List.copyOf(words));
    }

    /** Where a value lies: 0 at the lower end, 1 at the upper. */
    double share(double value) {
        return (value - low) / (high - low);
    }

    double[] ticks() {
        double first = words.isEmpty() ? low : 0;
        int n = (int) Math.floor((high - first) / step + 1e-9) + 1;
        double[] ticks = new double[n];
        for (int i = 0; i < n; i++) {
            ticks[i] = first + i * step;
        }
        return ticks;
    }

    String label(double tick) {
        if (!words.isEmpty()) {
            return words.get((int) Math.round(tick));
        }
        int digits = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        String number = String.format(Locale.ROOT, "%." + digits + "f", Math.abs(tick) < step / 1e6 ? 0.0 : tick);
        return number.replace('-', '−');
    }

    /** 1, 2 or 5 times a power of ten, at least {@code least}. */
    private static double round(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double f : new double[] {1, 2, 5}) {
            if (f * power >= least * 0.999) {
                return f * power;
            }
        }
        return 10 * power;
    }
}
