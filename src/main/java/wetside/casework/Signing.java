package wetside.casework;

import java.io.IOException;
import java.util.Collection;
import java.util.List;
import java.util.function.Consumer;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;
import wetside.run.Draws;

/**
 * The signatures of a machine: from disk when they are there, otherwise computed and kept. Only one process computes; a
 * second waits and reads.
 */
public final class Signing {
    /** Draws of a cause in play that are simulated. */
    private static final int CLOSE = 64;

    private final Casework casework;
    private final int wanted;
    private final LibraryStore store;
    private final LibraryKey key;
    private final int threads;
    private final boolean allSimulated;
    private final Watcher watcher;
    private final LibraryBuild build;
    private Library close;
    /** As it was found last on disk, until somebody takes it. */
    private Library found;

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
     * @param wanted       draws of every cause
     * @param allSimulated whether none of them may be told from others
     * @param key          by which it is stored
     * @param threads      that may run the twin at once
     */
    public Signing(
            Casework casework,
            int wanted,
            boolean allSimulated,
            LibraryStore store,
            LibraryKey key,
            int threads,
            Watcher watcher) {
        this.casework = casework;
        this.wanted = wanted;
        this.store = store;
        this.key = key;
        this.threads = threads;
        this.allSimulated = allSimulated;
        this.watcher = watcher;
        build = new LibraryBuild(casework, threads, allSimulated);
    }

    public Casework casework() {
        return casework;
    }

    /** True when nothing has to be computed. */
    public boolean isReady() {
        Library stored = stored();
        found(stored);
        return build.isEnough(stored, wanted);
    }

    /** A build of a few draws of some readings only, and of what leads to them: enough for a first look within seconds. */
    public LibraryBuild looking(Collection<String> readings) {
        return new LibraryBuild(casework.reading(readings), threads, false);
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
        Library start = taken();
        if (build.isEnough(start, draws)) {
            return start;
        }
        if (drawn(start) > 0) {
            early.accept(start);
        }
        try (LibraryStore.Hold hold = store.hold(key, watcher::waiting)) {
            start = stored();
            if (build.isEnough(start, draws)) {
                return start;
            }
            watcher.begun();
            return build.upTo(
                    draws,
                    start,
                    library -> {
                        if (LibraryBuild.simulated(library.signatures()) >= Draws.BLOCK / 2) {
                            keep(key, library);
                        }
                        early.accept(library);
                    },
                    some);
        } finally {
            watcher.ended();
        }
    }

    /**
     * A library in which some causes are simulated where they were told from few draws. Kept apart from the library itself,
     * which so stays the same whatever has been asked of it before.
     */
    public Library closer(Library base, Collection<Integer> causes) {
        int draws = Math.min(CLOSE, drawn(base));
        Signatures from = base.signatures();
        List<Integer> few =
                causes.stream().filter(c -> from.simulated(c) < draws).sorted().toList();
        if (few.isEmpty() || from.draws(0) < wanted) {
            return base;
        }
        Signatures known = close().signatures();
        List<Integer> unknown = few.stream()
                .filter(c -> known.draws(c) != from.draws(c) || known.simulated(c) < draws)
                .toList();
        Library simulated = unknown.isEmpty() ? base : build.simulate(base, unknown, draws);
        Signatures kept = known;
        Signatures closer = from;
        for (int c : few) {
            Signatures source = unknown.contains(c) ? simulated.signatures() : known;
            kept = kept.with(c, source.rows(c), source.simulated(c));
            closer = closer.with(c, source.rows(c), source.simulated(c));
        }
        if (!unknown.isEmpty() && !build.isStopped()) {
            close = base.with(kept);
            keep(key.closer(), close);
        }
        return base.with(closer);
    }

    private synchronized Library close() {
        if (close == null) {
            close = store.load(key.closer(), casework.empty()).orElseGet(casework::empty);
        }
        return close;
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

    private synchronized void found(Library stored) {
        found = stored;
    }

    /** What was just found, or else what is on disk. */
    private synchronized Library taken() {
        Library library = found == null ? stored() : found;
        found = null;
        return library;
    }

    /** Pairs of causes, those that were ever run on this machine known to them, further ones kept. */
    public Pairs pairs() {
        return new Pairs(
                casework,
                store.pairs(
                        key,
                        casework.askings().stream().map(a -> a.question().id()).toList()),
                watcher::notKept);
    }

    private void keep(LibraryKey under, Library library) {
        try {
            store.save(under, library);
        } catch (IOException e) {
            watcher.notKept(e);
        }
    }

    /** Draws of every cause. */
    public static int drawn(Library library) {
        return library.signatures().causes() == 0 ? 0 : library.signatures().draws(0);
    }
}
