package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.IntConsumer;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.procedure.Procedures;
import wetside.run.Scenario;

/**
 * What machines without fault read where they stand. The twin takes a second or two for each machine it simulates within
 * tolerances: that goes on behind, one machine after the other, and says how far it is.
 */
final class Expectations {
    /** Machines simulated within tolerances. */
    static final int DRAWS = 32;

    private final Procedures procedures;
    private final Kept<String, Sheet> sheets = new Kept<>(32);
    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "readings to expect");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });

    Expectations(Procedures procedures) {
        this.procedures = procedures;
    }

    /** Readings as they become known. */
    static final class Sheet {
        private volatile int done;
        private volatile List<Expected> expected = List.of();
        private volatile Map<String, Scenario> routines = Map.of();
        private volatile String trouble = "";

        int done() {
            return done;
        }

        boolean isReady() {
            return !expected.isEmpty();
        }

        /** Empty until they are known. */
        List<Expected> expected() {
            return expected;
        }

        /** States of the machine in the order of doing. */
        Map<String, Scenario> routines() {
            return routines;
        }

        /** Why they never will be known, "" otherwise. */
        String trouble() {
            return trouble;
        }
    }

    Sheet of(Subject s) {
        return sheets.of(s.key(), () -> {
            Sheet sheet = new Sheet();
            behind.execute(() -> fill(sheet, s));
            return sheet;
        });
    }

    private void fill(Sheet sheet, Subject s) {
        try {
            Casework casework = s.installed().casework(procedures);
            IntConsumer progress = k -> sheet.done = k;
            List<Expected> all = Expected.healthy(casework, DRAWS, progress);
            sheet.routines = casework.routines();
            sheet.expected = new ArrayList<>(all);
        } catch (RuntimeException e) {
            sheet.trouble = "The twin could not run this machine: " + e.getMessage();
        }
    }
}
