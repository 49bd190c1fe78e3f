package wetside.diagnosis;

/**
 * One thing learnt.
 *
 * @param kind what sort of thing
 * @param about id of the question, or of the repair for {@link Kind#STILL_BAD}
 * @param value the number read, or the index of the option; 0 where there is none
 * @param by who reported it, empty for the one usual reporter, {@link #CALLER} for what somebody called about
 */
public record Observation(Kind kind, String about, double value, String by) implements Comparable<Observation> {
    /** Reports what there is a job for: of all that an owner noticed, and seen more than once. */
    public static final String CALLER = "caller";

    /** What was learnt. */
    public enum Kind {
        NUMBER,
        CHOICE,
        /** Asked, but nobody knows or it cannot be done: carries nothing, is not offered again. */
        UNKNOWN,
        /** A repair was done and the complaint is still there. */
        STILL_BAD
    }

    public Observation {
        if (kind == Kind.NUMBER && !Double.isFinite(value)) {
            throw new IllegalArgumentException("the reading of " + about + " is not a number");
        }
    }

    public static Observation number(String question, double value) {
        return new Observation(Kind.NUMBER, question, value, "");
    }

    public static Observation choice(String question, int option) {
        return new Observation(Kind.CHOICE, question, option, "");
    }

    public static Observation unknown(String question) {
        return new Observation(Kind.UNKNOWN, question, 0, "");
    }

    public static Observation stillBad(String repair) {
        return new Observation(Kind.STILL_BAD, repair, 0, "");
    }

    /** The same, reported by somebody else than the usual reporter. */
    public Observation by(String person) {
        return new Observation(kind, about, value, person);
    }

    /** The same as what somebody called about. */
    public Observation complaint() {
        return by(CALLER);
    }

    public boolean isComplaint() {
        return by.equals(CALLER);
    }

    /** Index of the option named. */
    public int option() {
        return (int) value;
    }

    @Override
    public int compareTo(Observation other) {
        int byAbout = about.compareTo(other.about);
        int byKind = byAbout != 0 ? byAbout : kind.compareTo(other.kind);
        int byReporter = byKind != 0 ? byKind : by.compareTo(other.by);
        return byReporter != 0 ? byReporter : Double.compare(value, other.value);
    }
}
