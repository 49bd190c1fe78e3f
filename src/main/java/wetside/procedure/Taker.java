package wetside.procedure;

import java.util.Arrays;
import wetside.blueprint.Reading;
import wetside.plant.Plant;
import wetside.procedure.Procedure.Taking;
import wetside.run.Run;

/** One reading kept over a routine, to be looked at between two marks. */
final class Taker implements Run.Watcher {
    private static final int FIRST = 48;

    private final Reading reading;
    private double[] times = new double[FIRST];
    private double[] values = new double[FIRST];
    private int n;

    Taker(Reading reading) {
        this.reading = reading;
    }

    @Override
    public void see(double time, Plant plant) {
        if (n == times.length) {
            times = Arrays.copyOf(times, 2 * n);
            values = Arrays.copyOf(values, 2 * n);
        }
        times[n] = time;
        values[n++] = plant.read(reading);
    }

    double take(Taking taking, Run run) {
        double start = taking.from().isEmpty() ? times[0] : run.mark(taking.from());
        double end = taking.to().isEmpty() ? times[n - 1] : run.mark(taking.to());
        if (Double.isNaN(start) || Double.isNaN(end)) {
            return Double.NaN;
        }
        // a mark means the state it was set in: what is moved at the same moment comes after it
        int i = at(start);
        int j = taking.to().isEmpty() ? n - 1 : at(end);
        double then = taking.of().isEmpty() ? 1 : values[at(run.mark(taking.of()))];
        return j < i ? Double.NaN : over(taking, i, j, taking.beyond() * then);
    }

    private int at(double time) {
        int i = 0;
        while (i < n - 1 && times[i] < time - 1e-6) {
            i++;
        }
        return i;
    }

    private double over(Taking taking, int i, int j, double beyond) {
        return switch (taking.take()) {
            case LAST -> values[j];
            case HIGHEST -> Arrays.stream(values, i, j + 1).max().orElseThrow();
            case LOWEST -> Arrays.stream(values, i, j + 1).min().orElseThrow();
            case MEAN -> integral(i, j, 0, false) / Math.max(1e-9, times[j] - times[i]);
            case TOTAL -> integral(i, j, 0, false);
            case CHANGE -> values[j] - values[i];
            case UNTIL_ABOVE -> until(i, j, beyond);
            case SHARE_ABOVE -> integral(i, j, beyond, true) / Math.max(1e-9, times[j] - times[i]);
        };
    }

    /** Each value holds back to the moment before it: it is what the step ended with. */
    private double integral(int i, int j, double beyond, boolean counted) {
        double sum = 0;
        for (int k = i + 1; k <= j; k++) {
            double v = counted ? (values[k] > beyond ? 1 : 0) : values[k];
            sum += v * (times[k] - times[k - 1]);
        }
        return sum;
    }

    private double until(int i, int j, double beyond) {
        for (int k = i; k <= j; k++) {
            if (values[k] > beyond) {
                if (k == i || values[k] == values[k - 1]) {
                    return times[k] - times[i];
                }
                double f = (beyond - values[k - 1]) / (values[k] - values[k - 1]);
                return times[k - 1] + f * (times[k] - times[k - 1]) - times[i];
            }
        }
        return times[j] - times[i];
    }
}
