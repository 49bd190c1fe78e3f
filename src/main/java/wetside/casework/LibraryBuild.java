package wetside.casework;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Signatures;
import wetside.machine.Machine;
import wetside.run.Draws;

/**
 * Runs the twin for every cause and draw. Few draws are all simulated, block by block, so that a first answer can be given
 * after the first block; of many, some are simulated for each cause and the others told from them ({@link CauseRows}),
 * unless all are to be simulated. Threads share nothing but the list of what is to be done.
 */
public final class LibraryBuild {
    /** Half a block first, for an early answer. */
    private static final int FIRST = Draws.BLOCK / 2;
    /** Up to so many draws nothing is told from others. */
    static final int FEW = 2 * Draws.BLOCK;
    /** Share of what breaks that a first look is about: two causes of five. */
    private static final double OFTEN = 0.75;
    /** Between two tellings of what is there of the first block [ns]. */
    private static final long EVERY = 2_000_000_000L;

    private final Casework casework;
    private final int threads;
    private final boolean allSimulated;
    private final AtomicLong done = new AtomicLong();
    private volatile boolean stopped;
    /** Rows of the block that was begun, by cause: what was run before a stop is not run again. */
    private float[][] begun = new float[0][];

    private int begunFirst;
    /** The same of causes that are told. */
    private List<CauseRows> telling = List.of();

    private float[] tellingWhole;
    private int tellingFrom;

    public LibraryBuild(Casework casework) {
        this(casework, Runtime.getRuntime().availableProcessors(), false);
    }

    /**
     * One that runs the twin on several threads.
     *
     * @param threads      that run the twin at once
     * @param allSimulated whether no draw may be told from others
     */
    public LibraryBuild(Casework casework, int threads, boolean allSimulated) {
        this.casework = casework;
        this.threads = threads;
        this.allSimulated = allSimulated;
    }

    /** Draws there are so far, of all causes together. */
    public long done() {
        return done.get();
    }

    public long total(int drawsWanted) {
        return (long) drawsWanted * casework.candidates().size();
    }

    /** Ends the work soon; what was run is kept for when it goes on. */
    public void stop() {
        stopped = true;
    }

    /** Takes a stop back. */
    public void goOn() {
        stopped = false;
    }

    boolean isStopped() {
        return stopped;
    }

    /** Whether a library has what this would build. */
    boolean isEnough(Library library, int wanted) {
        Signatures s = library.signatures();
        return s.causes() > 0
                && s.draws(0) >= wanted
                && simulated(s) >= (allSimulated || wanted <= FEW ? wanted : CauseRows.LEAST);
    }

    /** Draws simulated of every cause at least. */
    static int simulated(Signatures s) {
        int least = Integer.MAX_VALUE;
        for (int c = 0; c < s.causes(); c++) {
            least = Math.min(least, s.simulated(c));
        }
        return least;
    }

    /**
     * Brings a library up to {@code wanted} draws of every cause.
     *
     * @param ready told of every library on the way and of the last
     */
    public Library upTo(int wanted, Library start, Consumer<Library> ready) {
        return upTo(wanted, start, ready, some -> {});
    }

    /**
     * The same; {@code some} is told every now and then of the first block as far as it is there, the causes that happen
     * most often first: a cause that has not been run has no draws yet.
     */
    public Library upTo(int wanted, Library start, Consumer<Library> ready, Consumer<Library> some) {
        ExecutorService workers = Executors.newFixedThreadPool(threads, LibraryBuild::daemon);
        try {
            return allSimulated || wanted <= FEW
                    ? simulated(wanted, start, ready, some, workers)
                    : told(wanted, start, ready, workers);
        } finally {
            workers.shutdownNow();
        }
    }

    /** Block by block, none told from others; what was, is begun anew. */
    private Library simulated(
            int wanted, Library start, Consumer<Library> ready, Consumer<Library> some, ExecutorService workers) {
        int least = simulated(start.signatures());
        // fewer than a block of told ones are not the first of it
        int have = least < Draws.BLOCK && least < start.signatures().draws(0) ? 0 : least;
        Library library = start.signatures().draws(0) == have ? start : start.with(first(start.signatures(), have));
        while (have < wanted && !stopped) {
            int more = have < Draws.BLOCK ? FIRST : Draws.BLOCK;
            Library before = library;
            library = block(before, have, more, workers, have == 0 ? some : l -> {});
            if (library == before) {
                break;
            }
            have += more;
            ready.accept(library);
        }
        return library;
    }

    /**
     * A first block of draws told from the severest of each cause, and from a middling one where that is felt: enough for a
     * first look at few readings.
     */
    public Library glance() {
        return glance(oftenFirst());
    }

    /**
     * The same of the causes that happen most often, which are two fifths of all and three quarters of what breaks; what has not been
     * run counts as something else. Empty where those are too few to say anything.
     *
     * @param earlier what this machine read when nothing was wrong with it
     */
    public Optional<Begun> begin(Observations earlier) {
        return Begun.of(casework, glance(often()), earlier);
    }

    /** How many causes {@link #begin} runs. */
    public int begins() {
        return often().size();
    }

    private List<Integer> often() {
        List<Integer> all = oftenFirst();
        double wanted = OFTEN * weight(all);
        int n = 0;
        for (double weight = 0; n < all.size() && weight < wanted; n++) {
            weight += weight(all.subList(n, n + 1));
        }
        return all.subList(0, n);
    }

    private double weight(List<Integer> causes) {
        return causes.stream()
                .mapToDouble(c -> casework.candidates().get(c).cause().weight())
                .sum();
    }

    private Library glance(List<Integer> causes) {
        Library empty = casework.empty();
        Signatures s = empty.signatures();
        List<Machine> drawn = drawn(0, Draws.BLOCK);
        float[] whole = new float[Draws.BLOCK * s.questions()];
        ExecutorService workers = Executors.newFixedThreadPool(threads, LibraryBuild::daemon);
        try {
            run(drawn, whole, 0, Draws.BLOCK, workers);
            List<CauseRows> rows = begun(s, causes, drawn, whole);
            all(
                    rows.stream()
                            .map(r -> task(() -> {
                                r.glance();
                                done.addAndGet(r.draws());
                            }))
                            .toList(),
                    workers);
            return empty.with(early(s, rows, whole));
        } finally {
            workers.shutdownNow();
        }
    }

    /**
     * Simulates draws of some causes that so far were told from others.
     *
     * @param causes positions of them
     * @param draws  of each that shall be simulated
     */
    public Library simulate(Library library, Collection<Integer> causes, int draws) {
        Signatures s = library.signatures();
        ExecutorService workers = Executors.newFixedThreadPool(threads, LibraryBuild::daemon);
        try {
            List<CauseRows> rows = begun(s, causes, drawn(0, s.draws(0)), s.rows(0));
            done.set(0);
            all(
                    rows.stream()
                            .map(r -> task(() -> {
                                r.tell(draws);
                                done.incrementAndGet();
                            }))
                            .toList(),
                    workers);
            return stopped ? library : library.with(joined(s, rows));
        } finally {
            workers.shutdownNow();
        }
    }

    private static Thread daemon(Runnable work) {
        Thread thread = new Thread(work, "twin");
        thread.setDaemon(true);
        // whoever waits for an answer goes first
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }

    /** The library itself when it was stopped before the block was whole. */
    private Library block(Library library, int first, int more, ExecutorService workers, Consumer<Library> some) {
        List<Machine> drawn = drawn(first, first + more);
        Casework[] spared = spared(library, first);
        if (begun.length == 0 || begunFirst != first) {
            begun = new float[spared.length][];
            begunFirst = first;
            done.set((long) first * spared.length);
        }
        if (begun[0] == null) {
            begun[0] = rows(casework, 0, drawn, first, new float[0]);
        }
        float[] whole = begun[0];
        Map<Integer, Future<float[]>> rows = new LinkedHashMap<>();
        for (int c : oftenFirst()) {
            if (whole != null && begun[c] == null) {
                rows.put(c, workers.submit(() -> rows(spared[c], c, drawn, first, whole)));
            }
        }
        long told = System.nanoTime();
        for (Map.Entry<Integer, Future<float[]>> row : rows.entrySet()) {
            begun[row.getKey()] = get(row.getValue());
            if (!stopped && System.nanoTime() - told > EVERY) {
                some.accept(library.with(soFar(library)));
                told = System.nanoTime();
            }
        }
        if (Arrays.stream(begun).anyMatch(Objects::isNull)) {
            if (first == 0) {
                some.accept(library.with(soFar(library)));
            }
            return library;
        }
        Library sharper = library.with(soFar(library));
        begun = new float[0][];
        return sharper;
    }

    /** Positions of the causes but the first, what happens most often first. */
    private List<Integer> oftenFirst() {
        return IntStream.range(1, casework.candidates().size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        c -> -casework.candidates().get(c).cause().weight()))
                .toList();
    }

    private Signatures soFar(Library library) {
        Signatures signatures = library.signatures();
        for (int c = 0; c < begun.length; c++) {
            if (begun[c] != null) {
                signatures = signatures.with(c, begun[c]);
            }
        }
        return signatures;
    }

    /** For every cause what has still to be simulated: everything at first, later only where it is felt. */
    private Casework[] spared(Library library, int have) {
        Casework[] spared = new Casework[casework.candidates().size()];
        for (int c = 0; c < spared.length; c++) {
            spared[c] = c == 0 || have < Footprint.ENOUGH
                    ? casework
                    : casework.reading(Footprint.readings(casework, library, c));
        }
        return spared;
    }

    /** What is not simulated reads as on the whole machine of the same draw; null when stopped on the way. */
    private float[] rows(Casework spared, int cause, List<Machine> drawn, int first, float[] whole) {
        int width = casework.askings().size();
        float[] rows = new float[width * drawn.size()];
        for (int i = 0; i < drawn.size(); i++) {
            if (stopped) {
                done.addAndGet(-i);
                return null;
            }
            float[] row = spared.row(drawn.get(i), casework.candidates().get(cause), first + i);
            for (int q = 0; q < width; q++) {
                rows[i * width + q] = whole.length == 0 || spared.simulates(q) ? row[q] : whole[i * width + q];
            }
            done.incrementAndGet();
        }
        return rows;
    }

    private static float[] get(Future<float[]> row) {
        try {
            return row.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return null;
        } catch (ExecutionException e) {
            throw new IllegalStateException("the twin failed: " + e.getCause(), e.getCause());
        }
    }

    private List<Machine> drawn(int first, int end) {
        List<Machine> drawn = new ArrayList<>();
        for (int k = first; k < end; k++) {
            drawn.add(casework.draws().machine(k));
        }
        return drawn;
    }

    /**
     * First the severest and a middling draw of every cause, from which a block is told for an early answer, then what it
     * takes to tell all draws wanted.
     */
    private Library told(int wanted, Library start, Consumer<Library> ready, ExecutorService workers) {
        Signatures s = start.signatures();
        if (telling.isEmpty() || telling.get(0).draws() != wanted) {
            begin(s, wanted, workers);
        }
        if (stopped) {
            return start;
        }
        if (s.draws(0) == 0) {
            all(telling.stream().map(r -> task(r::scout)).toList(), workers);
            if (!stopped) {
                ready.accept(start.with(early(s, telling, tellingWhole)));
            }
        }
        if (!stopped && tellingFrom < wanted) {
            run(telling.get(0).drawn(), tellingWhole, tellingFrom, wanted, workers);
            tellingFrom = stopped ? tellingFrom : wanted;
        }
        all(
                telling.stream()
                        .filter(r -> !r.isTold())
                        .map(r -> task(() -> tell(r)))
                        .toList(),
                workers);
        if (stopped) {
            return start;
        }
        Library library = start.with(joined(s.with(0, tellingWhole, wanted), telling));
        telling = List.of();
        ready.accept(library);
        return library;
    }

    private void begin(Signatures s, int wanted, ExecutorService workers) {
        done.set(0);
        List<Machine> drawn = drawn(0, wanted);
        tellingWhole = Arrays.copyOf(s.rows(0), wanted * s.questions());
        tellingFrom = Math.max(Draws.BLOCK, s.draws(0));
        run(drawn, tellingWhole, s.draws(0), tellingFrom, workers);
        telling = stopped ? List.of() : begun(s, oftenFirst(), drawn, tellingWhole);
    }

    private List<CauseRows> begun(Signatures s, Collection<Integer> causes, List<Machine> drawn, float[] whole) {
        return causes.stream()
                .map(c -> new CauseRows(
                        casework,
                        c,
                        drawn,
                        whole,
                        s.rows(c),
                        s.draws(c) < Draws.BLOCK ? 0 : s.simulated(c),
                        () -> stopped))
                .toList();
    }

    private void tell(CauseRows rows) {
        rows.tell(0);
        done.addAndGet(rows.isTold() ? rows.draws() : 0);
    }

    private static Signatures early(Signatures s, List<CauseRows> rows, float[] whole) {
        Signatures early = s.with(0, Arrays.copyOf(whole, Draws.BLOCK * s.questions()), Draws.BLOCK);
        for (CauseRows r : rows) {
            early = early.with(r.cause(), r.early(), 0);
        }
        return early;
    }

    private static Signatures joined(Signatures s, List<CauseRows> rows) {
        Signatures joined = s;
        for (CauseRows r : rows) {
            joined = joined.with(r.cause(), r.rows(), r.simulated());
        }
        return joined;
    }

    /** Runs draws of the machine when nothing is wrong. */
    private void run(List<Machine> drawn, float[] whole, int first, int end, ExecutorService workers) {
        int width = casework.askings().size();
        List<Callable<Void>> runs = new ArrayList<>();
        for (int k = first; k < end; k++) {
            int draw = k;
            runs.add(task(() -> {
                if (!stopped) {
                    float[] row =
                            casework.row(drawn.get(draw), casework.candidates().get(0), draw);
                    System.arraycopy(row, 0, whole, draw * width, width);
                    done.incrementAndGet();
                }
            }));
        }
        all(runs, workers);
    }

    private static Callable<Void> task(Runnable work) {
        return () -> {
            work.run();
            return null;
        };
    }

    private static Signatures first(Signatures s, int draws) {
        float[][] rows = new float[s.causes()][];
        for (int c = 0; c < rows.length; c++) {
            rows[c] = Arrays.copyOf(s.rows(c), draws * s.questions());
        }
        return Signatures.of(s.questions(), rows);
    }

    private static <T> List<T> all(List<Callable<T>> work, ExecutorService workers) {
        List<Future<T>> futures = new ArrayList<>();
        work.forEach(w -> futures.add(workers.submit(w)));
        List<T> results = new ArrayList<>();
        try {
            for (Future<T> f : futures) {
                results.add(f.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("the twin failed: " + e.getCause(), e.getCause());
        }
        return results;
    }
}
