package wetside.casework;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Library;
import wetside.diagnosis.Overtaken;
import wetside.diagnosis.inference.PairRows;
import wetside.diagnosis.inference.PairSearch;
import wetside.diagnosis.inference.Posterior;
import wetside.machine.Machine;

/** Two causes at once, run on the twin when single ones do not explain what was found. */
public final class Pairs {
    /** Share of the faulty machines that have two causes: assumed. */
    public static final double SHARE = 0.1;
    /** Pairs run on the twin for one look. */
    public static final int MOST = 10;
    /** Times that what was run may make other pairs worth it. */
    private static final int ROUNDS = 2;
    /** Draws of each. */
    public static final int DRAWS = 8;

    private final Casework casework;
    private final boolean together;
    private final Map<String, Run> known = new ConcurrentHashMap<>();
    private final Map<String, int[]> donors = new ConcurrentHashMap<>();
    private final AtomicLong done = new AtomicLong();
    /** Null where nothing is kept. */
    private final PairStore store;

    private final Consumer<IOException> notKept;
    private boolean recalled;

    /** Rows of the first draws; what was not run has no value. */
    record Run(float[] rows, Set<String> readings) {}

    /** Ones that forget. */
    public Pairs(Casework casework) {
        this(casework, true);
    }

    /** @param together whether draws are run on all processors at once; not where these have other work */
    public Pairs(Casework casework, boolean together) {
        this(casework, together, null, why -> {});
    }

    /** @param notKept told when what was run could not be kept */
    Pairs(Casework casework, PairStore store, Consumer<IOException> notKept) {
        this(casework, true, store, notKept);
    }

    private Pairs(Casework casework, boolean together, PairStore store, Consumer<IOException> notKept) {
        this.casework = casework;
        this.together = together;
        this.store = store;
        this.notKept = notKept;
    }

    /** Runs so far. */
    public long done() {
        return done.get();
    }

    /** Pairs that may well explain what the leading single causes leave odd. */
    public List<PairSearch.Pair> worth(Posterior singles) {
        return worth(singles, Set.of());
    }

    private List<PairSearch.Pair> worth(Posterior singles, Set<String> ran) {
        return new PairSearch(singles, SHARE, runs(singles.library(), ran)).best(MOST);
    }

    /** Runs what is worth it, and what is worth it then: a run may say that a promising guess was none. */
    public List<PairSearch.Pair> tried(Posterior singles) {
        return tried(singles, () -> false, round -> {});
    }

    /**
     * The same until it is stopped; gives those that can be looked at then. What was run for anything else plays no part, so
     * that the same is found whatever was asked before.
     *
     * @param round told what is run next
     */
    public List<PairSearch.Pair> tried(
            Posterior singles, BooleanSupplier stopped, Consumer<List<PairSearch.Pair>> round) {
        long before = done.get();
        try {
            return rounds(singles, stopped, round);
        } finally {
            if (done.get() > before) {
                keep();
            }
        }
    }

    private List<PairSearch.Pair> rounds(
            Posterior singles, BooleanSupplier stopped, Consumer<List<PairSearch.Pair>> round) {
        Set<String> ran = new HashSet<>();
        List<PairSearch.Pair> worth = worth(singles);
        for (int i = 0; i < ROUNDS && worth.stream().anyMatch(p -> p.run() && !p.ran()); i++) {
            round.accept(worth);
            List<PairSearch.Pair> there = run(singles.library(), worth, stopped);
            if (there.size() < worth.size()) {
                return there;
            }
            worth.stream()
                    .filter(PairSearch.Pair::run)
                    .forEach(p -> ran.add(p.cause().id()));
            worth = worth(singles, ran);
        }
        round.accept(worth);
        return run(singles.library(), worth, stopped);
    }

    /** The library with these pairs beside the single causes. */
    public Library with(Posterior singles, List<PairSearch.Pair> pairs) {
        Library library = singles.library();
        PairRows of = PairRows.of(singles);
        List<Cause> causes = new ArrayList<>();
        float[][] rows = new float[pairs.size()][];
        for (int i = 0; i < rows.length; i++) {
            PairSearch.Pair pair = pairs.get(i);
            causes.add(pair.cause());
            if (pair.run()) {
                ran(library, pair, () -> false);
            }
            rows[i] = of.of(pair, pair.run() ? told(library, pair) : null);
        }
        return library.with(causes, rows);
    }

    private PairSearch.Runs runs(Library library, Set<String> ran) {
        return pair -> ran.contains(pair.cause().id()) && isKnown(pair) ? told(library, pair) : null;
    }

    /** A pair that was run, told for all draws of a library. */
    private float[] told(Library library, PairSearch.Pair pair) {
        String id = pair.cause().id();
        float[] rows = Earlier.behind(
                library, known.get(key(pair)).rows, casework.askings().size());
        Overtaken.fill(library, rows);
        int draws = library.signatures().draws(0);
        int[] nearest = donors.compute(
                id, (same, old) -> old != null && old.length == draws ? old : donors(pair.one(), pair.other(), draws));
        return PairRows.told(library, pair.one(), pair.other(), rows, nearest);
    }

    /** For every draw the one among those run that is nearest in how bad both causes are. */
    private int[] donors(int one, int other, int draws) {
        int[] donors = new int[draws];
        for (int k = 0; k < draws; k++) {
            double least = Double.POSITIVE_INFINITY;
            for (int j = 0; j < DRAWS; j++) {
                double off = Math.hypot(apart(one, j, k), apart(other, j, k));
                if (off < least) {
                    least = off;
                    donors[k] = j;
                }
            }
        }
        return donors;
    }

    private double apart(int cause, int one, int other) {
        String id = casework.cause(cause);
        return casework.draws().severity(id, one) - casework.draws().severity(id, other);
    }

    private boolean isKnown(PairSearch.Pair pair) {
        recall();
        Run run = known.get(key(pair));
        return run != null && run.readings.containsAll(pair.seen());
    }

    /** The one that is broken first stands first: where both move the same, that tells. */
    private String key(PairSearch.Pair pair) {
        return casework.cause(pair.one()) + "\n" + casework.cause(pair.other());
    }

    private synchronized void recall() {
        if (!recalled && store != null) {
            known.putAll(store.load());
        }
        recalled = true;
    }

    private synchronized void keep() {
        try {
            if (store != null) {
                store.save(known);
            }
        } catch (IOException e) {
            notKept.accept(e);
        }
    }

    /** Runs of the twin that these take and that have not been made. */
    public long missing(List<PairSearch.Pair> worth) {
        return (long) DRAWS * worth.stream().filter(p -> p.run() && !isKnown(p)).count();
    }

    /** Runs those worth it one after the other, until it is stopped; gives those that can be looked at then. */
    private List<PairSearch.Pair> run(Library library, List<PairSearch.Pair> worth, BooleanSupplier stopped) {
        return worth.stream().filter(p -> !p.run() || ran(library, p, stopped)).toList();
    }

    /** Runs what is missing of a pair; false when stopped on the way. */
    private boolean ran(Library library, PairSearch.Pair pair, BooleanSupplier stopped) {
        if (isKnown(pair)) {
            return true;
        }
        Run before = known.get(key(pair));
        Set<String> readings = new HashSet<>(pair.seen());
        readings.addAll(before == null ? Set.of() : before.readings);
        Set<String> felt = felt(library, pair, readings);
        Casework reading = casework.reading(felt);
        int width = casework.askings().size();
        float[] rows = new float[DRAWS * width];
        IntStream draws = IntStream.range(0, DRAWS);
        boolean whole = (together ? draws.parallel() : draws).allMatch(k -> {
            if (stopped.getAsBoolean()) {
                return false;
            }
            System.arraycopy(row(reading, pair, k), 0, rows, k * width, width);
            for (int q = 0; q < width; q++) {
                String id = casework.askings().get(q).question().id();
                boolean unfelt = readings.contains(id) && !felt.contains(id);
                rows[k * width + q] = unfelt ? library.signatures().value(0, k, q) : rows[k * width + q];
            }
            done.incrementAndGet();
            return true;
        });
        if (!whole) {
            return false;
        }
        known.put(key(pair), new Run(rows, Set.copyOf(readings)));
        return true;
    }

    /**
     * Readings that have to be run: those of routines in which one of the causes is felt. Where neither is the machine reads
     * as if nothing were wrong.
     */
    private Set<String> felt(Library library, PairSearch.Pair pair, Set<String> readings) {
        boolean known = IntStream.of(0, pair.one(), pair.other())
                .allMatch(c -> library.signatures().draws(c) >= DRAWS);
        Set<String> felt = new HashSet<>(readings);
        if (known) {
            felt.retainAll(Footprint.readings(casework, library, pair.one(), pair.other()));
        }
        return felt;
    }

    private float[] row(Casework reading, PairSearch.Pair pair, int k) {
        Candidate one = casework.candidates().get(pair.one());
        Candidate other = casework.candidates().get(pair.other());
        Machine drawn = casework.draws().machine(k);
        double severity = casework.draws().severity(other.cause().id(), k);
        try {
            return reading.row(other.in(drawn, severity), one, k);
        } catch (RuntimeException e) {
            throw new TwinFailed("pair " + pair.cause().id() + ", draw " + k, e);
        }
    }
}
