package wetside.diagnosis;

import java.util.List;

/** How a question is answered. */
public sealed interface Answering {

    /**
     * A number read from an instrument.
     *
     * @param unit the unit the draws and the readings share, for printing
     * @param sd standard deviation of the instrument [unit]
     * @param relative further standard deviation as a share of the reading
     * @param discrepancy how far the twin itself may be off, as a share of the reading (3 to 5 % unless measured)
     */
    record Number(String unit, double sd, double relative, double discrepancy) implements Answering {
        public Number {
            if (!(sd >= 0) || !(relative >= 0) || !(discrepancy >= 0) || sd + relative + discrepancy == 0) {
                throw new IllegalArgumentException("a reading needs an error: " + sd + ", " + relative);
            }
        }

        /** Variance of a reading around the twin's value, at a reading of this size. */
        public double variance(double reading) {
            return sd * sd + (relative * relative + discrepancy * discrepancy) * reading * reading;
        }

        /** Variance between two readings of the same thing: how far the twin is off is in both. */
        public double again(double reading) {
            return Math.max(2 * (sd * sd + relative * relative * reading * reading), 0.1 * variance(reading));
        }
    }

    /**
     * One of some named options.
     *
     * @param options at least two; a draw stores the index
     * @param errorRate probability that the reporter names another option than the true one
     * @param discrepancy probability that the twin itself has another option than the machine
     */
    record Choice(List<String> options, double errorRate, double discrepancy) implements Answering {
        public Choice {
            options = List.copyOf(options);
            if (options.size() < 2 || !(errorRate >= 0 && errorRate < 1)) {
                throw new IllegalArgumentException("a choice needs two options and an error rate: " + options);
            }
            if (!(discrepancy >= 0 && discrepancy < 1)) {
                throw new IllegalArgumentException("a twin is not wrong with probability " + discrepancy);
            }
        }

        /** With a twin that is always right. */
        public Choice(List<String> options, double errorRate) {
            this(options, errorRate, 0);
        }

        /** The same by somebody who has seen it more than once. */
        public Choice sure() {
            return new Choice(options, 0, discrepancy);
        }

        /** Probability that another option is named than the twin has; two mistakes may meet again at what it has. */
        public double doubt() {
            double back = errorRate * discrepancy / (options.size() - 1);
            return 1 - (1 - errorRate) * (1 - discrepancy) - back;
        }

        /** Probability that {@code answer} is given when the twin has {@code truth}. */
        public double chance(int answer, int truth) {
            return answer == truth ? 1 - doubt() : doubt() / (options.size() - 1);
        }
    }
}
