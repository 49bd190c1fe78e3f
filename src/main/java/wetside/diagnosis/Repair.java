package wetside.diagnosis;

/**
 * Something done to the machine that removes causes: adjust, clean, replace, explain. Causes that name a repair of the
 * same id share it: doing it once removes whichever of them is there.
 *
 * @param id the repair, unique in a library
 * @param words what is done, for people
 * @param effort what it takes, the trial afterwards included
 * @param works probability that it removes the cause when the cause is there
 */
public record Repair(String id, String words, Effort effort, double works) {
    public Repair {
        if (!(works > 0 && works <= 1)) {
            throw new IllegalArgumentException("repair " + id + " works with probability " + works);
        }
    }
}
