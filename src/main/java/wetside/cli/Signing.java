package wetside.cli;

import java.io.IOException;
import java.util.Collection;
import java.util.Optional;
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
    private volatile boolean quiet;

    Signing(Console console, Casework casework, int wanted) {
        this.console = console;
        this.casework = casework;
        this.wanted = wanted;
        key = LibraryKey.of(casework, Build.version());
        build = new LibraryBuild(casework);
    }

    /** True when nothing has to be computed. */
    boolean isReady() {
        return stored().filter(l -> drawn(l) >= wanted).isPresent();
    }

    /** A few draws of some readings only, and of what leads to them: enough for a first look within seconds. */
    Library look(Collection<String> readings) {
        return new LibraryBuild(casework.reading(readings)).upTo(Draws.BLOCK, casework.empty(), library -> {});
    }

    /** Everything wanted; {@code early} is told of each library on the way, the first after a few seconds. */
    Library all(Consumer<Library> early) {
        Optional<Library> stored = stored();
        if (stored.isPresent() && drawn(stored.get()) >= wanted) {
            return stored.get();
        }
        Progress progress = new Progress(console, build, wanted);
        try (LibraryStore.Hold hold =
                store.hold(key, () -> note("another Wetside is computing this machine; waiting"))) {
            Library start = stored().orElse(casework.empty());
            if (drawn(start) >= wanted) {
                return start;
            }
            if (drawn(start) > 0) {
                early.accept(start);
            }
            if (!quiet) {
                progress.start();
            }
            return build.upTo(wanted, start, library -> {
                keep(library);
                early.accept(library);
            });
        } finally {
            progress.stop();
        }
    }

    /** No progress and no notes from here on: somebody is typing. */
    void quiet() {
        quiet = true;
    }

    void stop() {
        build.stop();
    }

    private Optional<Library> stored() {
        return store.load(key, casework.empty());
    }

    private void keep(Library library) {
        try {
            store.save(key, library);
        } catch (IOException e) {
            note("cannot keep the signatures (" + e.getMessage() + "); they will be computed again next time");
        }
    }

    private void note(String text) {
        if (!quiet) {
            console.errors().println(text);
        }
    }

    static int drawn(Library library) {
        return library.signatures().causes() == 0 ? 0 : library.signatures().draws(0);
    }
}
