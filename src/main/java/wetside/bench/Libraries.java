package wetside.bench;

import java.lang.management.ManagementFactory;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wetside.casework.Installed;
import wetside.diagnosis.plan.Rehearsal;
import wetside.machine.MachineFile;
import wetside.run.Draws;
import wetside.shop.RegisteredMachine;

/**
 * Signatures of every machine somebody finds faults on, shared by all jobs on the same machine in the same kind of place.
 * Two threads compute them, always for whichever is least sharp, then once more those causes that answers leave in play; pages never wait for it. While
 * nobody waits, a third makes a beginning for machines that have not been asked about.
 */
final class Libraries implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Libraries.class);
    private static final int USUAL = 128;
    private static final int KEPT = 12;
    /** Machines a beginning is made for: not so many that those on disk push each other out. */
    static final int WARMED = 16;
    /** Machines computed at a time: a small one need not wait for the first block of a large one. */
    private static final int AT_ONCE = 2;

    private static final int PROCESSORS = Runtime.getRuntime().availableProcessors();
    /** One processor stays free for the pages, where there are more. */
    private static final int THREADS = Math.max(1, (PROCESSORS - 1) / AT_ONCE);
    /** How often it is looked whether somebody waits [ms]. */
    private static final long LOOK = 1000;

    private final Map<String, Ground> grounds = new HashMap<>();
    private final ExecutorService pairs = Executors.newSingleThreadExecutor(work -> daemon(work, "pairs"));
    /** Draws of each cause: fewer by a system property, for tests and slow computers. */
    private final int wanted = Integer.getInteger("wetside.bench.draws", USUAL);

    private final BooleanSupplier busy;

    private boolean closed;
    private Ground warming;

    Libraries() {
        this(Libraries::isBusy);
    }

    /** @param busy whether the computer has something else to do */
    Libraries(BooleanSupplier busy) {
        this.busy = busy;
        for (int i = 0; i < AT_ONCE; i++) {
            daemon(this::work, "signatures").start();
        }
        daemon(Rehearsal::run, "rehearsal").start();
    }

    private static Thread daemon(Runnable work, String name) {
        Thread thread = new Thread(work, name);
        thread.setDaemon(true);
        return thread;
    }

    /** A machine in its place, not looked at before it is needed. */
    record Place(String key, Supplier<Installed> installed) {
        static Place of(RegisteredMachine machine) {
            String key = List.of(
                            machine.file(),
                            machine.revision(),
                            machine.supply(),
                            machine.fedFrom(),
                            said(machine.supplyPressure()),
                            said(machine.waterConductivity()),
                            said(machine.voltage()),
                            said(machine.altitude()),
                            said(machine.ambient()))
                    .toString();
            return new Place(key, () -> installed(machine));
        }

        private static String said(Double value) {
            return value == null ? "" : value.toString();
        }

        private static Installed installed(RegisteredMachine machine) {
            MachineFile file = MachineFiles.find(machine.file());
            if (!file.revisionNames().contains(machine.revision())) {
                throw new BadForm("The file of this machine has no revision '" + machine.revision() + "'; it has "
                        + String.join(", ", file.revisionNames()) + ". Set its entry on the register right");
            }
            return Models.installed(machine);
        }
    }

    /** The signatures of a machine as installed; begins to compute what there is not. */
    Ground of(Place place) {
        Ground ground = ground(place);
        synchronized (grounds) {
            grounds.putIfAbsent(place.key(), ground);
            ground.asked = System.nanoTime();
            if (warming != null && ground.isDull()) {
                warming.stop();
            }
            if (grounds.size() > KEPT) {
                grounds.values().stream()
                        .filter(g -> g != ground && !g.taken)
                        .min(Comparator.comparingLong(g -> g.asked))
                        .ifPresent(grounds.values()::remove);
            }
            grounds.notifyAll();
            return ground;
        }
    }

    /** Made outside the lock: nobody waits for another's machine file. */
    private Ground ground(Place place) {
        synchronized (grounds) {
            Ground there = grounds.get(place.key());
            if (there != null) {
                return there;
            }
        }
        Ground made = new Ground(place.installed().get(), wanted, THREADS);
        synchronized (grounds) {
            Ground there = grounds.putIfAbsent(place.key(), made);
            return there == null ? made : there;
        }
    }

    /** Goes on with one that was stopped. */
    void resume(Ground ground) {
        ground.resume();
        synchronized (grounds) {
            grounds.notifyAll();
        }
    }

    /** Where pairs of causes are run. */
    Executor behind() {
        return pairs;
    }

    private void work() {
        try {
            while (true) {
                Ground next = null;
                synchronized (grounds) {
                    while (!closed && (next = dullest()) == null) {
                        grounds.wait(LOOK);
                    }
                    if (closed) {
                        return;
                    }
                    next.taken = true;
                    next.goOn();
                }
                next.further(wanted);
                release(next);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void release(Ground ground) {
        synchronized (grounds) {
            ground.taken = false;
            grounds.notifyAll();
        }
    }

    private Ground dullest() {
        return grounds.values().stream()
                .filter(g -> g.asked != 0 && !g.taken && g.isDull())
                .min(Comparator.comparingInt(Ground::drawn)
                        .thenComparing(Comparator.comparingLong((Ground g) -> -g.asked)))
                .orElse(null);
    }

    /** Makes a beginning for these, in this order, whenever nobody waits and the computer has nothing else to do. */
    void warm(List<Place> places) {
        Thread warm = daemon(() -> places.forEach(this::warm), "signatures before anybody asks");
        warm.setPriority(Thread.MIN_PRIORITY);
        warm.start();
        daemon(this::stepAside, "signatures step aside").start();
    }

    private void warm(Place place) {
        try {
            Ground ground = idle(place);
            while (ground != null && ground.drawn() < Draws.BLOCK && !ground.isBroken()) {
                ground.further(Draws.BLOCK);
                release(ground);
                ground = idle(place);
            }
            synchronized (grounds) {
                warming = null;
                if (ground != null) {
                    ground.taken = false;
                    grounds.values().removeIf(g -> g.asked == 0);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException e) {
            // a machine whose file is gone or broken; its page says so
            LOG.debug("no signatures beforehand of {}", place.key(), e);
        }
    }

    /** Waits until nobody else needs the computer; null when the bench is closed or somebody has asked for this one. */
    private Ground idle(Place place) throws InterruptedException {
        synchronized (grounds) {
            while (!closed && (isAwaited() || busy.getAsBoolean())) {
                grounds.wait(LOOK);
            }
        }
        Ground ground = ground(place);
        synchronized (grounds) {
            if (closed || ground.taken || ground.asked != 0) {
                return null;
            }
            ground.taken = true;
            ground.goOn();
            warming = ground;
            return ground;
        }
    }

    private boolean isAwaited() {
        return dullest() != null || grounds.values().stream().anyMatch(g -> g.taken && g.asked != 0);
    }

    private static boolean isBusy() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage() > PROCESSORS + 0.5;
    }

    /** The twin notices within one run that somebody waits. */
    private void stepAside() {
        synchronized (grounds) {
            try {
                while (!closed) {
                    if (warming != null && (isAwaited() || busy.getAsBoolean())) {
                        warming.stop();
                    }
                    grounds.wait(LOOK);
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    @Override
    public void close() {
        synchronized (grounds) {
            closed = true;
            grounds.values().forEach(Ground::stop);
            pairs.shutdownNow();
            grounds.notifyAll();
        }
    }
}
