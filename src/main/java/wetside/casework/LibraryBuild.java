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
    private final AtomicLong done = new AtomicLong();
    private volatile boolean stopped;

    public LibraryBuild(Casework casework) {
        this.casework = casework;
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
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), LibraryBuild::daemon);
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
        return thread;
    }

    private Library block(Library library, int first, int more, ExecutorService workers) {
        List<Machine> drawn = new ArrayList<>();
        for (int k = first; k < first + more; k++) {
            drawn.add(casework.draws().machine(k));
        }
        List<Future<float[]>> rows = new ArrayList<>();
        for (Candidate candidate : casework.candidates()) {
            rows.add(workers.submit(() -> rows(candidate, drawn, first)));
        }
        Signatures signatures = library.signatures();
        for (int c = 0; c < rows.size(); c++) {
            float[] fresh = get(rows.get(c));
            if (fresh.length == 0) {
                return library;
            }
            signatures = signatures.with(c, fresh);
        }
        return library.with(signatures);
    }

    private float[] rows(Candidate candidate, List<Machine> drawn, int first) {
        int width = casework.askings().size();
        float[] rows = new float[width * drawn.size()];
        for (int i = 0; i < drawn.size(); i++) {
            if (stopped) {
                return new float[0];
            }
            System.arraycopy(casework.row(drawn.get(i), candidate, first + i), 0, rows, i * width, width);
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
