package wetside.bench;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wetside.casework.Begun;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.LibraryKey;
import wetside.casework.LibraryStore;
import wetside.casework.Pairs;
import wetside.casework.ProgramCode;
import wetside.casework.Session;
import wetside.casework.Signing;
import wetside.casework.Standing;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.inference.Inference;
import wetside.procedure.Procedures;
import wetside.run.Draws;

/** What stands behind the answers about one machine in one place: signatures as far as they are, and what follows. */
final class Ground {
    private static final Logger LOG = LoggerFactory.getLogger(Ground.class);
    /** Draws of each cause after which a first answer can be trusted to begin with. */
    private static final int FIRST = Draws.BLOCK / 2;

    final Casework casework;
    final Installed installed;
    /** When somebody asked last; 0 when nobody ever did. */
    long asked;
    /** Somebody computes it now. */
    boolean taken;

    private final int wanted;
    private final Signing signing;
    private final Pairs pairs;
    private final Map<Object, Session> sessions = recent(48);
    private final Map<Object, PairTrial> trials = recent(24);
    private final Map<Object, Inference> narrowed = recent(8);
    private final Map<Object, Inference> weighted = recent(8);
    /** What whoever asked last began with, and will again. */
    private volatile Knowledge last;
    /** Cases in which two causes at once are thought of. */
    private final Set<String> pairing = ConcurrentHashMap.newKeySet();

    private volatile Library library;
    /** The library itself, without causes simulated more closely. */
    private volatile Library whole;
    /** Causes that answers left in play, those already simulated closely, and whether there are more. */
    private final Set<Integer> inPlay = new HashSet<>();

    private Set<Integer> close = Set.of();
    private volatile boolean moreInPlay;
    private volatile Begun begun;
    private volatile boolean broken;
    private volatile boolean paused;
    private long from;
    private long fromAt;

    Ground(Installed installed, int wanted, int threads) {
        this.installed = installed;
        this.wanted = wanted;
        casework = installed.casework(Procedures.bundled());
        LibraryKey key = LibraryKey.of(casework, ProgramCode.sum());
        signing = new Signing(casework, wanted, false, LibraryStore.usual(), key, threads, Signing.Watcher.NOBODY);
        pairs = signing.pairs();
        Library stored = signing.stored();
        if (Signing.drawn(stored) > 0) {
            library = stored;
            whole = signing.isReady() ? stored : null;
        }
    }

    private static <K, V> Map<K, V> recent(int most) {
        return new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    int drawn() {
        Library now = library;
        return now == null ? 0 : Signing.drawn(now);
    }

    /** Whether there is anything left to compute for whoever asks. */
    boolean isDull() {
        return !broken && !paused && (drawn() < wanted || moreInPlay);
    }

    boolean isBroken() {
        return broken;
    }

    /** How far the signatures are. */
    synchronized Sharpness sharpness() {
        Begun some = begun;
        int all = casework.candidates().size();
        int drawn = drawn();
        long goal = (long) (drawn == 0 ? FIRST : wanted) * all;
        long done = Math.min(goal, Math.max(signing.done(), (long) drawn * all));
        double minutes = taken && done > from && fromAt > 0
                ? (System.nanoTime() - fromAt) / 60e9 * (goal - done) / (done - from)
                : Double.NaN;
        int causes = drawn > 0 ? all : some == null ? 0 : some.causes();
        String standing = library == null ? "" : Standing.of(library).words();
        return new Sharpness(drawn, wanted, standing, causes, all, done, goal, minutes, paused, broken);
    }

    /** What follows, computed once for as long as nothing changes; null before all causes have draws. */
    synchronized Session session(Knowledge known) {
        last = known.nothing();
        if (library == null) {
            return null;
        }
        Session session = sessions.get(known.key());
        if (session == null) {
            Library shipped = narrowed(known.earlier()).library();
            session = new Session(
                    new Session.Shared(casework, inference(known), shipped, pairs),
                    known.today(),
                    known.earlier(),
                    known.who());
            PairTrial trial = trials.get(known.whoever());
            if (trial != null && trial.isOver() && !trial.there().isEmpty()) {
                session.tryPairs(trial.there());
            }
            sessions.put(known.key(), session);
            inPlay.addAll(session.inPlay());
            moreInPlay = whole != null && !close.containsAll(inPlay);
        }
        return session;
    }

    private Inference inference(Knowledge known) {
        return weighted.computeIfAbsent(
                List.of(known.earlier().entered(), known.rates().key()), key -> {
                    Inference shipped = narrowed(known.earlier());
                    return shipped.weighted(known.rates().on(shipped.library()));
                });
    }

    private Inference narrowed(Observations earlier) {
        return narrowed.computeIfAbsent(earlier.entered(), e -> Session.inference(library, earlier));
    }

    /** What follows from the causes that have been run, while others still are; null before and after that. */
    Session begun(Knowledge known) {
        Begun some = begun;
        if (library != null || some == null) {
            return null;
        }
        Library shipped = some.inference().library();
        Inference rated = some.inference().weighted(known.rates().on(shipped));
        return new Session(
                new Session.Shared(some.casework(), rated, shipped, new Pairs(some.casework())),
                known.today(),
                Observations.none(),
                known.who());
    }

    /** Draws further: first draws of all causes, then all, then causes in play more closely; returns when that is there or stopped. */
    void further(int most) {
        try {
            int have = drawn();
            synchronized (this) {
                from = Math.max(
                        signing.done(), (long) have * casework.candidates().size());
                fromAt = System.nanoTime();
            }
            if (have >= wanted) {
                closer();
                return;
            }
            int next = Math.min(most, have < FIRST ? FIRST : wanted);
            Library fresh = signing.upTo(next, l -> {}, this::partly);
            whole = next == wanted && Signing.drawn(fresh) >= wanted ? fresh : null;
            if (Signing.drawn(fresh) > drawn()) {
                arrived(fresh);
            }
        } catch (RuntimeException e) {
            LOG.error("signatures of {}", casework.machine().identity().title(), e);
            broken = true;
        }
    }

    /** Simulates the causes that answers have left in play. */
    private void closer() {
        Set<Integer> causes;
        synchronized (this) {
            causes = Set.copyOf(inPlay);
            close = causes;
            moreInPlay = false;
        }
        Library base = whole;
        if (base != null) {
            Library fresh = signing.closer(base, causes);
            if (fresh != base) {
                arrived(fresh);
            }
        }
    }

    private void partly(Library some) {
        Begun.of(casework, some).ifPresent(b -> begun = b);
    }

    private void arrived(Library fresh) {
        synchronized (this) {
            library = fresh;
            begun = null;
            narrowed.clear();
            weighted.clear();
            sessions.clear();
            trials.values().removeIf(PairTrial::isOver);
        }
        // whoever comes first does not wait for what all begin with
        Knowledge asked = last;
        if (asked != null) {
            session(asked).advice();
        }
    }

    /** Stops for now, to make room; what was run is kept. */
    void stop() {
        signing.stop();
    }

    /** May be run again. */
    void goOn() {
        signing.goOn();
    }

    /** Somebody goes on with what is there. */
    void pause() {
        paused = true;
        stop();
    }

    void resume() {
        paused = false;
        goOn();
    }

    /** Whether two causes at once are thought of in a case. */
    boolean isPairing(String caseId) {
        return pairing.contains(caseId);
    }

    void pair(String caseId, boolean think) {
        if (think) {
            pairing.add(caseId);
        } else {
            pairing.remove(caseId);
            synchronized (this) {
                trials.values().forEach(PairTrial::stop);
                trials.clear();
                sessions.clear();
            }
        }
    }

    /** The pairs run for what is known, or being run; null when there are none. */
    synchronized PairTrial trial(Knowledge known) {
        return trials.get(known.whoever());
    }

    /** Has the pairs worth it run, once; what follows is worked out anew when they are there. */
    synchronized PairTrial tryPairs(Knowledge known, Executor behind) {
        PairTrial there = trials.get(known.whoever());
        if (there != null) {
            return there;
        }
        Session single = session(known).knowing(known.today());
        PairTrial trial = new PairTrial(single);
        trials.put(known.whoever(), trial);
        if (trial.total() == 0) {
            run(trial);
        } else {
            behind.execute(() -> run(trial));
        }
        return trial;
    }

    private void run(PairTrial trial) {
        try {
            trial.run();
        } catch (RuntimeException e) {
            LOG.error("pairs of causes of {}", casework.machine().identity().title(), e);
        }
        synchronized (this) {
            trial.end();
            sessions.clear();
        }
    }
}
