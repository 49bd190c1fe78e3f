package wetside.cli;

import java.io.IOException;
import java.util.Collection;
import java.util.function.Consumer;
import wetside.casework.Casework;
import wetside.casework.LibraryBuild;
import wetside.casework.LibraryKey;
import wetside.casework.LibraryStore;
import wetside.diagnosis.Library;
import wetside.run.Draws;

/**
 * The signatures of a machine: from disk when they are there, otherwise computed with a progress bar and kept. Only one
 * process computes; a second waits and reads.
 */
final class Signing {
    private final Console console;
    private final Casework casework;
    private final LibraryStore store = LibraryStore.usual();
    private final LibraryKey key;
    private final LibraryBuild build;
    private final int wanted;
    private final Progress progress;
    private volatile boolean quiet;
    private boolean told;

    Signing(Console console, Casework casework, int wanted) {
        this.console = console;
        this.casework = casework;
        this.wanted = wanted;
        key = LibraryKey.of(casework, Build.code());
        build = new LibraryBuild(casework);
        progress = new Progress(console, "Running the twin", build::done, build.total(wanted));
    }

    /** True when nothing has to be computed. */
    boolean isReady() {
        return drawn(stored()) >= wanted;
    }

    /** A few draws of some readings only, and of what leads to them: enough for a first look within seconds. */
    Library look(Collection<String> readings) {
        LibraryBuild first = new LibraryBuild(casework.reading(readings));
        Progress bar = new Progress(console, "First look", first::done, first.total(Draws.BLOCK));
        if (console.isWatched()) {
            bar.start();
        }
        try {
            return first.upTo(Draws.BLOCK, casework.empty(), library -> {});
        } finally {
            bar.stop();
        }
    }

    /** Everything wanted; {@code early} is told of each library on the way, the first after a few seconds. */
    Library all(Consumer<Library> early) {
        Library start = stored();
        if (drawn(start) >= wanted) {
            return start;
        }
        if (drawn(start) > 0) {
            early.accept(start);
        }
        try (LibraryStore.Hold hold =
                store.hold(key, () -> note("Another Wetside is computing this machine; waiting for it."))) {
            start = stored();
            if (drawn(start) >= wanted) {
                return start;
            }
            begin();
            return build.upTo(wanted, start, library -> {
                keep(library);
                early.accept(library);
            });
        } finally {
            progress.stop();
        }
    }

    private synchronized void begin() {
        if (!quiet) {
            progress.start();
        }
    }

    /** No bar and no notes from here on: somebody is typing. */
    synchronized void quiet() {
        quiet = true;
        progress.stop();
    }

    void stop() {
        build.stop();
    }

    private Library stored() {
        return store.load(key, casework.empty()).orElseGet(casework::empty);
    }

    private void keep(Library library) {
        try {
            store.save(key, library);
        } catch (IOException e) {
            if (!told) {
                note("The signatures cannot be kept (" + OutputFile.reason(e)
                        + "); next time they are computed again.");
            }
            told = true;
        }
    }

    private void note(String text) {
        if (!quiet) {
            console.errors().println(text);
        }
    }

    /** Draws of every cause. */
    static int drawn(Library library) {
        return library.signatures().causes() == 0 ? 0 : library.signatures().draws(0);
    }
}
