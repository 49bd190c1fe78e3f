package wetside.diagnosis;

import java.util.List;

/**
 * Something done to the machine that removes causes: adjust, clean, replace, explain. Causes that name a repair of the
 * same id share it: doing it once removes whichever of them is there.
 *
 * @param id the repair, unique in a library
 * @param words what is done, for people
 * @param effort what it takes, the trial afterwards included
 * @param works probability that it removes the cause when the cause is there
 * @param needless what it costs beside its effort when none of its causes was there: a second call, trust
 */
public record Repair(String id, String words, Effort effort, double works, double needless) {
    /** Between the ids of repairs that are done together. */
    private static final String AND = " + ";

    public Repair {
        if (!(works > 0 && works <= 1)) {
            throw new IllegalArgumentException("repair " + id + " works with probability " + works);
        }
        if (!(needless >= 0)) {
            throw new IllegalArgumentException("repair " + id + " costs " + needless + " when it is not needed");
        }
    }

    /** One that only costs its effort when it was not needed. */
    public Repair(String id, String words, Effort effort, double works) {
        this(id, words, effort, works, 0);
    }

    /** Both repairs, for a pair of causes. */
    public Repair and(Repair other) {
        return new Repair(
                id + AND + other.id,
                words + "; and " + other.words,
                effort.and(other.effort),
                works * other.works,
                needless + other.needless);
    }

    /** Ids of the repairs done together; its own when it is one. */
    public List<String> parts() {
        return parts(id);
    }

    /** Ids of the repairs a joint id stands for. */
    public static List<String> parts(String id) {
        return List.of(id.split(" \\+ "));
    }
}
