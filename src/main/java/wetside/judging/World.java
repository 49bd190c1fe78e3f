package wetside.judging;

import java.util.OptionalDouble;

/**
 * How the machines of the jobs differ from those the library was made of, and how people answer.
 *
 * @param wider      tolerances of the jobs' machines, as a multiple of the machine file's (the library's are 1.3 times those)
 * @param fineness   steps of the twin, as a share of the usual ones
 * @param offset     error of the twin that nobody modelled, as a multiple of the one that is allowed for
 * @param common     share of that error's variance that readings of the same quantity have in common
 * @param mistakes   how often answers in words are wrong, as a multiple of the share that is allowed for
 * @param slips      share of numbers misread or misheard: anything that any cause would read
 * @param missing    share of questions that get no answer
 * @param pairs      share of the faulty machines with two causes
 * @param healthy    share of machines with nothing wrong; empty for what is believed
 */
public record World(
        double wider,
        double fineness,
        double offset,
        double common,
        double mistakes,
        double slips,
        double missing,
        double pairs,
        OptionalDouble healthy) {
    /** Harder than the library in every way it could be wrong. */
    public static final World USUAL = new World(1.5, 0.25, 1.25, 0.5, 1, 0.02, 0.08, 0, OptionalDouble.empty());

    public World pairs(double share) {
        return new World(wider, fineness, offset, common, mistakes, slips, missing, share, healthy);
    }

    public World healthy(double share) {
        return new World(wider, fineness, offset, common, mistakes, slips, missing, pairs, OptionalDouble.of(share));
    }
}
