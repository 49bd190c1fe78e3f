package wetside.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.LibraryBuild;
import wetside.casework.LibraryKey;
import wetside.casework.LibraryStore;
import wetside.casework.ProgramCode;
import wetside.casework.Session;
import wetside.casework.Signing;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Inference;
import wetside.procedure.Procedures;
import wetside.run.Draws;

/**
 * Signatures of every machine somebody finds faults on, shared by all jobs on the same machine in the same kind of place.
 * Two threads compute them, a block of draws at a time, always for whichever is least sharp; pages never wait for it.
 */
final class Libraries implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Libraries.class);
    private static final int USUAL = 64;
    private static final int KEPT = 12;
    private static final int MOST_RATED = 8;
    /** Machines computed at a time: a small one need not wait for the first block of a large one. */
    private static final int AT_ONCE = 2;
    /** Half of the computer stays free for the pages. */
    private static final int THREADS = Math.max(1, Runtime.getRuntime().availableProcessors() / 2 / AT_ONCE);

    private final Map<String, Ground> grounds = new HashMap<>();
    /** Draws of each cause: fewer by a system property, for tests and slow computers. */
    private final int wanted = Integer.getInteger("wetside.bench.draws", USUAL);

    private boolean closed;

    Libraries() {
        for (int i = 0; i < AT_ONCE; i++) {
            Thread worker = new Thread(this::work, "signatures");
            worker.setDaemon(true);
            worker.start();
        }
    }

    /** What stands behind the answers about one machine in one place. */
    final class Ground {
        final Casework casework;
        final Installed installed;
        private final Signing signing;
        private final Map<Object, Session> sessions = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Object, Session> eldest) {
                return size() > 48;
            }
        };
        private final Map<Object, Inference> rated = new HashMap<>();
        private volatile Inference inference;
        private Inference look;
        private LibraryBuild looking;
        private volatile boolean broken;
        private boolean taken;
        private long begun;
        private long begunAt;
        private long asked;
        private Set<String> read = Set.of();
        /** Whoever asked last asks again. */
        private volatile ShopRates lastRates;

        private Ground(Installed installed) {
            this.installed = installed;
            casework = installed.casework(Procedures.bundled());
            signing = new Signing(
                    casework,
                    wanted,
                    LibraryStore.usual(),
                    LibraryKey.of(casework, ProgramCode.sum()),
                    THREADS,
                    Signing.Watcher.NOBODY);
            Library stored = signing.stored();
            if (Signing.drawn(stored) > 0) {
                inference = Session.inference(stored);
            }
        }

        /** How far the signatures are. */
        synchronized Sharpness sharpness() {
            long total = looking == null ? signing.total() : looking.total(Draws.BLOCK);
            long done = looking == null ? signing.done() : looking.done();
            int drawn = drawn();
            done = Math.max(done, (long) drawn * casework.candidates().size());
            double minutes = done > begun && begunAt > 0
                    ? (System.nanoTime() - begunAt) / 60e9 * (total - done) / (done - begun)
                    : Double.NaN;
            return new Sharpness(drawn, wanted, done, total, minutes, looking != null, broken);
        }

        private int drawn() {
            return inference == null ? 0 : Signing.drawn(inference.library());
        }

        /** What follows from answers, computed once for as long as nothing changes; null while there is nothing to go by. */
        synchronized Session session(Observations observations, Who who, ShopRates rates) {
            if (inference == null) {
                return null;
            }
            Inference rated = rated(rates);
            return sessions.computeIfAbsent(
                    List.of(observations.entered(), who, rates.key()),
                    key -> new Session(casework, rated, inference.library(), observations, who));
        }

        /** Worked out once for as long as neither the signatures nor the jobs change. */
        private Inference rated(ShopRates rates) {
            if (rated.size() > MOST_RATED) {
                rated.clear();
            }
            return rated.computeIfAbsent(
                    rates.key(), key -> inference.weighted(rates.on(inference.library())));
        }

        private void arrived(Library library) {
            Inference fresh = Session.inference(library);
            synchronized (this) {
                looking = null;
                inference = fresh;
                sessions.clear();
                rated.clear();
            }
            // whoever comes first does not wait for what all begin with
            session(Observations.none(), Who.OWNER, lastRates).advice();
        }

        private void further() {
            int have;
            synchronized (this) {
                have = drawn();
            }
            try {
                if (have == 0 && !read.isEmpty() && looking == null) {
                    LibraryBuild first = signing.looking(read);
                    begin(first);
                    Library seen = signing.look(first);
                    synchronized (this) {
                        look = Session.inference(seen);
                    }
                    begin(null);
                }
                begin(null);
                arrived(signing.upTo(have < Draws.BLOCK ? have + Draws.BLOCK / 2 : have + Draws.BLOCK, l -> {}));
                synchronized (this) {
                    look = null;
                }
            } catch (RuntimeException e) {
                LOG.error("signatures of {}", casework.machine().identity().title(), e);
                broken = true;
            }
        }

        /** The causes after a first look, from draws of what was read only; null when there is none or it is overtaken. */
        synchronized Session look(Observations observations, Who who, ShopRates rates) {
            return look == null || inference != null
                    ? null
                    : new Session(
                            casework, look.weighted(rates.on(look.library())), look.library(), observations, who);
        }

        private synchronized void begin(LibraryBuild first) {
            looking = first;
            begunAt = System.nanoTime();
            begun = first == null
                    ? Math.max(
                            signing.done(),
                            (long) drawn() * casework.candidates().size())
                    : 0;
        }
    }

    /**
     * How sharp signatures are.
     *
     * @param drawn   draws of every cause there are
     * @param minutes still to go, NaN when nobody can say
     * @param looking a first look, at what was read only
     * @param broken  the twin failed; there will be no more
     */
    record Sharpness(int drawn, int wanted, long done, long total, double minutes, boolean looking, boolean broken) {}

    /** The signatures of a machine as installed; begins to compute what there is not. */
    Ground of(String key, Supplier<Installed> installed, Set<String> read, ShopRates rates) {
        synchronized (grounds) {
            Ground ground = grounds.computeIfAbsent(key, k -> new Ground(installed.get()));
            ground.asked = System.nanoTime();
            ground.read = read;
            ground.lastRates = rates;
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

    private void work() {
        try {
            while (true) {
                Ground next = null;
                synchronized (grounds) {
                    while (!closed && (next = dullest()) == null) {
                        grounds.wait();
                    }
                    if (closed) {
                        return;
                    }
                    next.taken = true;
                }
                next.further();
                synchronized (grounds) {
                    next.taken = false;
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Ground dullest() {
        List<Ground> all = new ArrayList<>(grounds.values());
        return all.stream()
                .filter(g -> !g.taken && !g.broken && g.drawn() < wanted)
                .min(Comparator.comparingInt(Ground::drawn)
                        .thenComparing(Comparator.comparingLong((Ground g) -> -g.asked)))
                .orElse(null);
    }

    @Override
    public void close() {
        synchronized (grounds) {
            closed = true;
            grounds.values().forEach(g -> g.signing.stop());
            grounds.notifyAll();
        }
    }
}
