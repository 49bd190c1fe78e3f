package wetside.bench;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.casework.Installed;
import wetside.casework.LibraryKey;
import wetside.casework.LibraryStore;
import wetside.casework.ProgramCode;
import wetside.casework.Signing;
import wetside.diagnosis.Library;
import wetside.procedure.Procedures;
import wetside.run.Scenario;

/**
 * What machines without fault read where they stand. The twin takes a second or two for each machine it simulates within
 * tolerances: that goes on behind, one machine after the other, and says how far it is; where fault finding has simulated
 * them already, they are taken from there.
 */
final class Expectations {
    /** Machines simulated; the band's ends move by a few per cent of its width beyond that. */
    static final int DRAWS = 32;

    private final Procedures procedures;
    private final Kept<String, Sheet> sheets = new Kept<>(64);
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
        private final CountDownLatch over = new CountDownLatch(1);
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

        /** The same, waited for; empty when it takes longer than one can wait. */
        List<Expected> expected(Duration patience) {
            try {
                over.await(patience.toMillis(), TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
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

    /** @param key the same for machines of which everything computed is the same */
    Sheet of(String key, Supplier<Installed> installed) {
        return sheets.of(key, () -> {
            Sheet sheet = new Sheet();
            behind.execute(() -> fill(sheet, installed));
            return sheet;
        });
    }

    private void fill(Sheet sheet, Supplier<Installed> installed) {
        try {
            Casework casework = installed.get().casework(procedures);
            Library stored = LibraryStore.usual()
                    .load(LibraryKey.of(casework, ProgramCode.sum()), casework.empty())
                    .orElseGet(casework::empty);
            List<Expected> all = Signing.drawn(stored) >= DRAWS
                    ? Expected.healthy(casework, stored)
                    : Expected.healthy(casework, DRAWS, k -> sheet.done = k);
            sheet.routines = casework.routines();
            sheet.expected = List.copyOf(all);
        } catch (RuntimeException e) {
            sheet.trouble = "The twin could not run this machine: " + e.getMessage();
        } finally {
            sheet.over.countDown();
        }
    }
}
