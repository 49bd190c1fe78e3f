package wetside.cli;

import java.util.Locale;
import java.util.function.LongSupplier;

/** A bar on the error stream while the twin runs: how far, how long still; one plain line when nobody watches. */
final class Progress {
    private static final int WIDTH = 30;
    private static final long AFTER = 300;

    private final Console console;
    private final String what;
    private final LongSupplier done;
    private final long all;
    private Thread thread;

    /** @param what is going on */
    Progress(Console console, String what, LongSupplier done, long all) {
        this.console = console;
        this.what = what;
        this.done = done;
        this.all = all;
    }

    synchronized void start() {
        if (!console.isWatched()) {
            console.errors().println(what + ": " + all + " runs");
            return;
        }
        thread = new Thread(this::show, "progress");
        thread.setDaemon(true);
        thread.start();
    }

    private void show() {
        long begun = System.nanoTime();
        long first = done.getAsLong();
        while (true) {
            try {
                Thread.sleep(AFTER);
            } catch (InterruptedException e) {
                return;
            }
            console.errors().print("\r" + bar(what, done.getAsLong(), all, first, (System.nanoTime() - begun) / 1e9));
            console.errors().flush();
        }
    }

    static String bar(String what, long done, long all, long first, double seconds) {
        double share = Math.min(1, (double) done / Math.max(1, all));
        int full = (int) Math.round(share * WIDTH);
        String bar = "█".repeat(full) + "░".repeat(WIDTH - full);
        String text = String.format(Locale.ROOT, "%s  %s  %d of %d runs", what, bar, done, all);
        if (done > first) {
            text += String.format(Locale.ROOT, ", %s left", left(seconds * (all - done) / (done - first)));
        }
        return Lines.padded(text, 88);
    }

    private static String left(double seconds) {
        return seconds < 100
                ? String.format(Locale.ROOT, "%.0f s", seconds)
                : String.format(Locale.ROOT, "%.0f min", seconds / 60);
    }

    /** Takes the bar away, so that the next line begins at the margin. */
    synchronized void stop() {
        if (thread == null) {
            return;
        }
        thread.interrupt();
        try {
            thread.join(1000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        thread = null;
        console.errors().print("\r" + " ".repeat(88) + "\r");
        console.errors().flush();
    }
}
