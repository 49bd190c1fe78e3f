package wetside.cli;

import java.util.Locale;
import wetside.casework.LibraryBuild;

/** A bar on the error stream while the twin runs: how far, how long still; silent when nobody looks. */
final class Progress {
    private static final int WIDTH = 30;
    private static final long AFTER = 300;

    private final Console console;
    private final LibraryBuild build;
    private final int wanted;
    private Thread thread;
    private volatile boolean running;

    Progress(Console console, LibraryBuild build, int wanted) {
        this.console = console;
        this.build = build;
        this.wanted = wanted;
    }

    void start() {
        if (!console.isTerminal()) {
            console.errors().println("running the twin: " + build.total(wanted) + " runs");
            return;
        }
        running = true;
        thread = new Thread(this::show, "progress");
        thread.setDaemon(true);
        thread.start();
    }

    private void show() {
        long begun = System.currentTimeMillis();
        long first = build.done();
        while (running) {
            try {
                Thread.sleep(AFTER);
            } catch (InterruptedException e) {
                return;
            }
            long done = build.done();
            long all = build.total(wanted);
            double share = (double) done / all;
            double spent = (System.currentTimeMillis() - begun) / 1000.0;
            double left = done > first ? spent * (all - done) / (done - first) : Double.NaN;
            int full = (int) Math.round(share * WIDTH);
            console.errors()
                    .printf(
                            Locale.ROOT,
                            "\rrunning the twin  %s%s  %d of %d runs  %s ",
                            "█".repeat(full),
                            "░".repeat(WIDTH - full),
                            done,
                            all,
                            Double.isNaN(left) ? "" : String.format(Locale.ROOT, "%.0f s left", left));
            console.errors().flush();
        }
    }

    void stop() {
        if (thread == null) {
            return;
        }
        running = false;
        thread.interrupt();
        try {
            thread.join(1000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        console.errors().print("\r" + " ".repeat(79) + "\r");
        console.errors().flush();
        thread = null;
    }
}
