package wetside.casework;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;
import wetside.machine.Machine;
import wetside.run.Draws;

/**
 * Runs the twin for every cause and draw, block of draws by block, so that a first answer can be given after the first
 * block and every block sharpens it. Threads share nothing but the list of what is to be done.
 */
public final class LibraryBuild {
    /** Half a block first, for an early answer. */
    private static final int FIRST = Draws.BLOCK / 2;
    /** Between two tellings of what is there of the first block [ns]. */
    private static final long EVERY = 2_000_000_000L;

    private final Casework casework;
    private final int threads;
    private final AtomicLong done = new AtomicLong();
    private volatile boolean stopped;
    /** Rows of the block that was begun, by cause: what was run before a stop is not run again. */
    private float[][] begun = new float[0][];

    private int begunFirst;

    public LibraryBuild(Casework casework) {
        this(casework, Runtime.getRuntime().availableProcessors());
    }

    /** @param threads that run the twin at once */
    public LibraryBuild(Casework casework, int threads) {
        this.casework = casework;
        this.threads = threads;
    }

    /** Runs so far: one run is all procedures of one draw of one cause. */
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

    /**
     * Brings a library up to {@code wanted} draws of every cause.
     *
     * @param ready told after every complete block
     */
    public Library upTo(int wanted, Library start, Consumer<Library> ready) {
        return upTo(wanted, start, ready, some -> {});
    }

    /**
     * The same; {@code some} is told every now and then of the first block as far as it is there, the causes that happen
     * most often first: a cause that has not been run has no draws yet.
     */
    public Library upTo(int wanted, Library start, Consumer<Library> ready, Consumer<Library> some) {
        Library library = start;
        ExecutorService workers = Executors.newFixedThreadPool(threads, LibraryBuild::daemon);
        try {
            int have = library.signatures().draws(0);
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
        } finally {
            workers.shutdownNow();
        }
        return library;
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
        List<Machine> drawn = new ArrayList<>();
        for (int k = first; k < first + more; k++) {
            drawn.add(casework.draws().machine(k));
        }
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
}
