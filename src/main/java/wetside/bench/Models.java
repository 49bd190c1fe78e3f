package wetside.bench;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.BadFile;
import wetside.machine.Installation;
import wetside.machine.Installation.Fact;
import wetside.machine.Installation.Feed;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;
import wetside.run.NoSuchThing;
import wetside.shop.RegisteredMachine;
import wetside.units.Display;

/**
 * What is computed of the machines on the register, kept while it is asked for. What a machine should read takes the twin a
 * second or two: it runs behind, and a page that cannot wait for it shows the readings without.
 */
final class Models {
    /** Machines kept ready: every making of every file, and the places under the workshop's hands. */
    private static final int KEPT = 64;
    /** Draws of a machine without fault; the band's ends move by a few per cent of its width beyond that. */
    private static final int DRAWS = 32;

    private final Procedures procedures = Procedures.bundled();
    private final Map<RegisteredMachine, CompletableFuture<Casework>> makings = new Kept<>();
    private final Map<RegisteredMachine, CompletableFuture<Map<String, Expected>>> places = new Kept<>();
    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "expected readings");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });

    /** What was asked for last. */
    private static final class Kept<V> extends LinkedHashMap<RegisteredMachine, V> {
        private static final long serialVersionUID = 1;

        Kept() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<RegisteredMachine, V> eldest) {
            return size() > KEPT;
        }
    }

    /**
     * The machine's causes and questions, wherever it stands.
     *
     * @throws wetside.machine.BadFile when its file is gone or broken
     */
    Casework casework(RegisteredMachine m) {
        RegisteredMachine key = new RegisteredMachine(
                0, "", m.file(), m.revision(), m.supply(), 0, m.fedFrom(), null, null, null, null, null, "", "", 0);
        CompletableFuture<Casework> made = new CompletableFuture<>();
        CompletableFuture<Casework> there;
        synchronized (makings) {
            there = makings.putIfAbsent(key, made);
        }
        if (there != null && !there.isCompletedExceptionally()) {
            return there.join();
        }
        try {
            made.complete(installed(key).casework(procedures));
            return made.join();
        } catch (RuntimeException e) {
            synchronized (makings) {
                makings.remove(key);
            }
            made.completeExceptionally(e);
            throw e;
        }
    }

    /** What a sound machine of these reads, by procedure; empty when that takes longer than one can wait. */
    Map<String, Expected> expected(RegisteredMachine m, Duration patience) {
        RegisteredMachine key = new RegisteredMachine(
                0,
                "",
                m.file(),
                m.revision(),
                m.supply(),
                0,
                m.fedFrom(),
                m.supplyPressure(),
                m.waterConductivity(),
                m.voltage(),
                m.altitude(),
                m.ambient(),
                "",
                "",
                0);
        CompletableFuture<Map<String, Expected>> there;
        synchronized (places) {
            there = places.computeIfAbsent(key, k -> CompletableFuture.supplyAsync(() -> healthy(k), behind));
        }
        try {
            return there.get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException e) {
            return Map.of();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Map.of();
        } catch (ExecutionException e) {
            throw new IllegalStateException("the twin failed: " + e.getCause(), e.getCause());
        }
    }

    private Map<String, Expected> healthy(RegisteredMachine m) {
        Map<String, Expected> all = new LinkedHashMap<>();
        Expected.healthy(installed(m).casework(procedures), DRAWS)
                .forEach(e -> all.put(e.asking().question().id(), e));
        return all;
    }

    /** "Fellmoor Twin Lever, revision B"; the file's name where the file is gone. */
    String title(RegisteredMachine m) {
        try {
            Machine.Identity identity = casework(m).machine().identity();
            return identity.title() + ", " + identity.making();
        } catch (BadFile | NoSuchThing | IllegalArgumentException e) {
            return m.file() + ", revision " + m.revision();
        }
    }

    static Installed installed(RegisteredMachine m) {
        MachineFile file = MachineFile.find(m.file(), Kinds.declarations());
        Installation place = Installation.UNKNOWN.with("mains".equals(m.fedFrom()) ? Feed.MAINS : Feed.TANK);
        place = with(place, Fact.SUPPLY_PRESSURE, m.supplyPressure());
        place = with(place, Fact.CONDUCTIVITY, m.waterConductivity());
        place = with(place, Fact.VOLTAGE, m.voltage());
        place = with(place, Fact.ALTITUDE, m.altitude());
        place = with(place, Fact.AMBIENT, m.ambient());
        String supply = m.supply().isEmpty() ? file.supplyAt(place.voltage()) : m.supply();
        return Installed.of(file.machine(m.revision(), supply), place);
    }

    private static Installation with(Installation place, Fact fact, Double si) {
        return si == null ? place : place.with(fact, fact.parse(Display.METRIC.print(si, fact.dimension())));
    }
}
