package wetside.casework;

import java.io.IOException;
import java.util.Collection;
import java.util.function.Consumer;
import wetside.diagnosis.Library;
import wetside.run.Draws;

/**
 * The signatures of a machine: from disk when they are there, otherwise computed and kept. Only one process computes; a
 * second waits and reads.
 */
public final class Signing {
    private final Casework casework;
    private final int wanted;
    private final LibraryStore store;
    private final LibraryKey key;
    private final int threads;
    private final Watcher watcher;
    private final LibraryBuild build;

    /** Told what goes on meanwhile, on the thread that computes. */
    public interface Watcher {
        /** Nobody looks. */
        Watcher NOBODY = new Watcher() {};

        /** Another process computes the same; this one waits for it. */
        default void waiting() {}

        /** The twin begins to run. */
        default void begun() {}

        /** Nothing runs any more. */
        default void ended() {}

        /** What was computed could not be kept. */
        default void notKept(IOException why) {}
    }

    /**
     * @param wanted  draws of every cause
     * @param key     by which it is stored
     * @param threads that may run the twin at once
     */
    public Signing(Casework casework, int wanted, LibraryStore store, LibraryKey key, int threads, Watcher watcher) {
        this.casework = casework;
        this.wanted = wanted;
        this.store = store;
        this.key = key;
        this.threads = threads;
        this.watcher = watcher;
        build = new LibraryBuild(casework, threads);
    }

    public Casework casework() {
        return casework;
    }

    /** True when nothing has to be computed. */
    public boolean isReady() {
        return drawn(stored()) >= wanted;
    }

    /** A build of a few draws of some readings only, and of what leads to them: enough for a first look within seconds. */
    public LibraryBuild looking(Collection<String> readings) {
        return new LibraryBuild(casework.reading(readings), threads);
    }

    /** What such a build finds. */
    public Library look(LibraryBuild looking) {
        return looking.upTo(Draws.BLOCK, casework.empty(), library -> {});
    }

    /** Everything wanted; {@code early} is told of each library on the way, the first after a few seconds. */
    public Library all(Consumer<Library> early) {
        return upTo(wanted, early);
    }

    /** The same with fewer draws. */
    public Library upTo(int draws, Consumer<Library> early) {
        return upTo(draws, early, some -> {});
    }

    /** The same; {@code some} is told of the first draws of some causes while the others are still run. */
    public Library upTo(int draws, Consumer<Library> early, Consumer<Library> some) {
        Library start = stored();
        if (drawn(start) >= draws) {
            return start;
        }
        if (drawn(start) > 0) {
            early.accept(start);
        }
        try (LibraryStore.Hold hold = store.hold(key, watcher::waiting)) {
            start = stored();
            if (drawn(start) >= draws) {
                return start;
            }
            watcher.begun();
            return build.upTo(
                    draws,
                    start,
                    library -> {
                        keep(library);
                        early.accept(library);
                    },
                    some);
        } finally {
            watcher.ended();
        }
    }

    /** Ends the work soon; what was run is kept for when it goes on. */
    public void stop() {
        build.stop();
    }

    /** Takes a stop back. */
    public void goOn() {
        build.goOn();
    }

    public int wanted() {
        return wanted;
    }

    /** Runs of the twin so far. */
    public long done() {
        return build.done();
    }

    /** Runs of the twin in all. */
    public long total() {
        return build.total(wanted);
    }

    /** What is on disk now; without draws when nothing is. */
    public Library stored() {
        return store.load(key, casework.empty()).orElseGet(casework::empty);
    }

    private void keep(Library library) {
        try {
            store.save(key, library);
        } catch (IOException e) {
            watcher.notKept(e);
        }
    }

    /** Draws of every cause. */
    public static int drawn(Library library) {
        return library.signatures().causes() == 0 ? 0 : library.signatures().draws(0);
    }
}
