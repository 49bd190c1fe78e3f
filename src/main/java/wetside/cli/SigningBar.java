package wetside.cli;

import java.io.IOException;
import java.util.Collection;
import java.util.Optional;
import java.util.function.Supplier;
import wetside.casework.Begun;
import wetside.casework.Casework;
import wetside.casework.LibraryBuild;
import wetside.casework.LibraryKey;
import wetside.casework.LibraryStore;
import wetside.casework.ProgramCode;
import wetside.casework.Signing;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.run.Draws;

/** A bar on the error stream while signatures are computed; silent once somebody types. */
final class SigningBar implements Signing.Watcher {
    private final Console console;
    private final Signing signing;
    private final Progress progress;
    private boolean quiet;
    private boolean told;

    SigningBar(Console console, Casework casework, int draws, boolean allSimulated) {
        this.console = console;
        signing = new Signing(
                casework,
                draws,
                allSimulated,
                LibraryStore.usual(),
                LibraryKey.of(casework, ProgramCode.sum()),
                Runtime.getRuntime().availableProcessors(),
                this);
        progress = new Progress(console, "Running the twin", signing::done, signing.total());
    }

    Signing signing() {
        return signing;
    }

    /** A first look at the causes that happen most often, a bar in view. */
    Optional<Begun> begin(Collection<String> readings, Observations earlier) {
        LibraryBuild looking = signing.looking(readings);
        long runs = (long) Draws.BLOCK * (1 + looking.begins());
        return inView(looking, runs, () -> looking.begin(earlier));
    }

    /** A first look at all causes, a bar in view. */
    Library look(Collection<String> readings) {
        LibraryBuild looking = signing.looking(readings);
        return inView(looking, looking.total(Draws.BLOCK), looking::glance);
    }

    private <T> T inView(LibraryBuild looking, long runs, Supplier<T> look) {
        Progress bar = new Progress(console, "First look", looking::done, runs);
        if (console.isWatched()) {
            bar.start();
        }
        try {
            return look.get();
        } finally {
            bar.stop();
        }
    }

    /** The causes in play simulated more closely, a bar in view. */
    Library closer(Library library, Collection<Integer> causes) {
        if (causes.isEmpty()) {
            return library;
        }
        Progress bar = new Progress(console, "Likely causes", signing::done, causes.size());
        if (console.isWatched()) {
            bar.start();
        }
        try {
            return signing.closer(library, causes);
        } finally {
            bar.stop();
        }
    }

    /** No bar and no notes from here on. */
    synchronized void quiet() {
        quiet = true;
        progress.stop();
    }

    @Override
    public synchronized void begun() {
        if (!quiet) {
            progress.start();
        }
    }

    @Override
    public void ended() {
        progress.stop();
    }

    @Override
    public synchronized void waiting() {
        note("Another Wetside is computing this machine; waiting for it.");
    }

    @Override
    public synchronized void notKept(IOException why) {
        if (!told) {
            note("The signatures cannot be kept (" + OutputFile.reason(why) + "); next time they are computed again.");
        }
        told = true;
    }

    private void note(String text) {
        if (!quiet) {
            console.errors().println(text);
        }
    }
}
