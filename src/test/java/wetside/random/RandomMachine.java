package wetside.random;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import wetside.kind.Kinds;
import wetside.machine.Declaration;
import wetside.machine.MachineFile;

/**
 * Makes up a machine file from a seed, the same for ever for one list of kinds: water from somewhere, perhaps a pump, boilers
 * with relief, groups, taps, wiring with earth; then spare parts, so that over some seeds every kind has its turn.
 */
public final class RandomMachine {
    /** Spare parts of kinds that the seed has in turn. */
    private static final int SPARES = 4;

    private final Draft draft;
    private final Rails rails;
    private final Water water;

    private RandomMachine(long seed) {
        draft = new Draft(new SplittableRandom(seed));
        draft.part("surroundings");
        rails = new Rails(draft);
        water = new Water(draft, rails);
    }

    /** The file's text. */
    public static String text(long seed) {
        RandomMachine m = new RandomMachine(seed);
        m.build(seed);
        return m.draft.text("made up from seed " + seed);
    }

    /** The same, read. */
    public static MachineFile file(long seed) {
        return MachineFile.read("seed-" + seed + ".yaml", text(seed), Kinds.declarations());
    }

    private void build(long seed) {
        String supply = water.supply();
        List<String> ways = water.split(supply, 2 + SPARES);
        Boilers boilers = new Boilers(draft, rails, water);
        boilers.brew(ways.get(0));
        boilers.steam(ways.get(1));
        Spares spares = new Spares(draft, rails, water, boilers);
        List<String> cold = new ArrayList<>(ways.subList(2, ways.size()));
        for (Declaration kind : turn(seed)) {
            if (!draft.has(kind.name())) {
                spares.hang(kind, cold);
            }
        }
        cold.forEach(way -> water.tapped(way, "water tap"));
    }

    private static List<Declaration> turn(long seed) {
        List<Declaration> all = new ArrayList<>(Kinds.declarations());
        List<Declaration> now = new ArrayList<>();
        for (int k = 0; k < SPARES; k++) {
            now.add(all.get((int) Math.floorMod(seed * SPARES + k, (long) all.size())));
        }
        return now;
    }

    /** How many seeds in a row give every kind its turn. */
    static int seedsForAll() {
        return (Kinds.declarations().size() + SPARES - 1) / SPARES;
    }
}
