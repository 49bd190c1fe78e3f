package wetside.diagnosis;

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

    public Cause {
        if (!(weight >= 0) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException("cause " + id + " has prior weight " + weight);
        }
    }
}
