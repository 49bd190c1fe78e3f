package wetside.procedure;

import java.util.List;
import java.util.Optional;

/**
 * One thing that can be found out.
 *
 * @param id       unique, plain words: "pump gauge against the blind disc"
 * @param sort     how it is found out
 * @param who      least trained person who may do it
 * @param says     the step as a title, imperative
 * @param ask      the same as said to an owner on the phone
 * @param how      the steps in words, at most five
 * @param caution  what can hurt and how to keep safe, empty when nothing can
 * @param hazard   the worst that could hurt
 * @param minutes  of the person, panels not counted
 * @param tool     empty when none
 * @param inside   roles whose panels must be off; empty when the case stays shut
 * @param routine  name of the scenario it is read in
 * @param reading  what is read
 * @param answer   how it is answered
 */
public record Procedure(
        String id,
        Sort sort,
        Who who,
        String says,
        String ask,
        List<String> how,
        String caution,
        Hazard hazard,
        double minutes,
        String tool,
        List<String> inside,
        String routine,
        Taking reading,
        Answer answer) {
    /** How something is found out. */
    public enum Sort {
        ASK,
        LOOK,
        MEASURE
    }

    /** Who may do it. */
    public enum Who {
        OWNER,
        TECHNICIAN,
        QUALIFIED
    }

    /** The worst that could hurt. */
    public enum Hazard {
        NONE,
        HOT,
        INSIDE,
        LIVE
    }

    /**
     * How a value becomes an answer.
     *
     * @param words     words with the least value they stand for, in rising order; empty for a number
     * @param error     further standard deviation of reading it off, SI
     * @param relative  further standard deviation as a share
     * @param mistaken  how often the wrong word is given
     */
    public record Answer(List<Word> words, double error, double relative, double mistaken) {
        public boolean isNumber() {
            return words.isEmpty();
        }

        /** Index of the word for a value. */
        public int word(double value) {
            int i = 0;
            while (i + 1 < words.size() && value >= words.get(i + 1).from()) {
                i++;
            }
            return i;
        }
    }

    /** A word and the least value it stands for. */
    public record Word(String word, double from) {}

    /**
     * A number of the state at the end of the routine or over a part of it.
     *
     * @param channel     reading, empty for an ohm-meter
     * @param ohmsBetween where the two tips of an ohm-meter go
     * @param alone       true when the wires are pulled off the part measured
     * @param from        mark, the beginning when empty
     * @param to          mark, the end when empty
     * @param beyond      what it must be above [SI], or a share
     * @param of          mark whose value that is a share of, "" when it is none
     * @param quantity    the reading as the file calls it, the same at every station; empty for an ohm-meter
     */
    public record Taking(
            Optional<String> channel,
            List<String> ohmsBetween,
            boolean alone,
            Take take,
            String from,
            String to,
            double beyond,
            String of,
            String quantity) {}

    /** What is made of a reading between two marks. */
    public enum Take {
        /** The value at the second mark. */
        LAST,
        HIGHEST,
        LOWEST,
        /** Mean over time. */
        MEAN,
        /** Integral over time, e.g. grams from a flow. */
        TOTAL,
        /** Second mark's value less the first's. */
        CHANGE,
        /** Seconds from the first mark until it was first above {@code beyond}; the whole span when it never was. */
        UNTIL_ABOVE,
        /** Share of the time above {@code beyond}. */
        SHARE_ABOVE
    }
}
