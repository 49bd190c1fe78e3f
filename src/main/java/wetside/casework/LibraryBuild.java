package wetside.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
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

    private final Casework casework;
    private final int threads;
    private final AtomicLong done = new AtomicLong();
    private volatile boolean stopped;

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

    public void stop() {
        stopped = true;
    }

    /**
     * Brings a library up to {@code wanted} draws of every cause.
     *
     * @param ready told after every complete block
     */
    public Library upTo(int wanted, Library start, Consumer<Library> ready) {
        Library library = start;
        ExecutorService workers = Executors.newFixedThreadPool(threads, LibraryBuild::daemon);
        try {
            int have = library.signatures().draws(0);
            done.set((long) have * casework.candidates().size());
            while (have < wanted && !stopped) {
                int more = have < Draws.BLOCK ? FIRST : Draws.BLOCK;
                library = block(library, have, more, workers);
                if (stopped) {
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

    private Library block(Library library, int first, int more, ExecutorService workers) {
        List<Machine> drawn = new ArrayList<>();
        for (int k = first; k < first + more; k++) {
            drawn.add(casework.draws().machine(k));
        }
        Casework[] spared = spared(library, first);
        float[] whole = rows(casework, 0, drawn, first, new float[0]);
        List<Future<float[]>> rows = new ArrayList<>();
        for (int c = 1; c < spared.length; c++) {
            int cause = c;
            rows.add(workers.submit(() -> rows(spared[cause], cause, drawn, first, whole)));
        }
        Signatures signatures = library.signatures().with(0, whole);
        for (int c = 1; c < spared.length; c++) {
            float[] fresh = get(rows.get(c - 1));
            if (stopped) {
                return library;
            }
            signatures = signatures.with(c, fresh);
        }
        return library.with(signatures);
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

    /** What is not simulated reads as on the whole machine of the same draw. */
    private float[] rows(Casework spared, int cause, List<Machine> drawn, int first, float[] whole) {
        int width = casework.askings().size();
        float[] rows = new float[width * drawn.size()];
        for (int i = 0; i < drawn.size() && !stopped; i++) {
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
            return new float[0];
        } catch (ExecutionException e) {
            throw new IllegalStateException("the twin failed: " + e.getCause(), e.getCause());
        }
    }
}
