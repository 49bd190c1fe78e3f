package wetside.diagnosis;

import java.util.regex.Pattern;

/**
 * One explanation of the complaint: a fault of a part, a wrong setting, a wrong installation, or "works as it should".
 *
 * @param id unique in a library
 * @param words the cause in words
 * @param weight prior weight, any scale, normalised over the library
 * @param component the part it sits in, empty when it is none
 * @param repair what removes it
 */
public record Cause(String id, String words, double weight, String component, Repair repair) {
    /** The id of the cause that covers what the library does not know. */
    public static final String SOMETHING_ELSE = "something-else";

    private static final String AND = " + ";

    public Cause {
        if (!(weight >= 0) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException("cause " + id + " has prior weight " + weight);
        }
    }

    /** The same, more or less likely beforehand. */
    public Cause weighing(double weight) {
        return new Cause(id, words, weight, component, repair);
    }

    /** This and another at once, mended by both repairs. */
    public Cause and(Cause other, double weight) {
        return new Cause(
                pair(id, other.id), words + ", and " + other.words, weight, component, repair.and(other.repair));
    }

    /** Id of two causes at once, in whatever order they are named. */
    public static String pair(String one, String other) {
        return one.compareTo(other) < 0 ? one + AND + other : other + AND + one;
    }

    /** The ids of which a pair's is made; of one cause its own. */
    public static String[] each(String id) {
        return id.split(Pattern.quote(AND));
    }
}
