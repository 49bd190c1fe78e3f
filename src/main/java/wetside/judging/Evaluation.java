package wetside.judging;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import wetside.casework.Casework;
import wetside.casework.Pairs;
import wetside.casework.Session;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Situation;
import wetside.procedure.Procedures;

/** Plays jobs one after the other, each by every policy, until there are enough or somebody stops it. */
public final class Evaluation {
    private final Jobs jobs;
    private final Posterior nothingKnown;
    private final Pairs pairs;
    private final Situation beginning;
    private final List<String> chart;
    private final List<Policy> policies;
    private final long seed;
    private final AtomicLong done = new AtomicLong();
    private volatile boolean stopped;

    /**
     * @param library  of the machine, as the diagnosis has it
     * @param who      works on all jobs
     * @param policies that play
     */
    public Evaluation(
            Casework casework,
            Library library,
            Procedures procedures,
            Who who,
            World world,
            List<Policy> policies,
            long seed) {
        Session session = new Session(casework, library, who);
        nothingKnown = session.posterior().given(Observations.none());
        pairs = session.pairs();
        beginning = session.beginning();
        jobs = new Jobs(casework, nothingKnown.library(), procedures, world, seed);
        chart = new Decision(nothingKnown, beginning).chart();
        this.policies = List.copyOf(policies);
        this.seed = seed;
    }

    /** Jobs played so far. */
    public long done() {
        return done.get();
    }

    /** Ends after the jobs at hand. */
    public void stop() {
        stopped = true;
    }

    /** Plays so many jobs; fewer when stopped, or when {@code enough} says so. */
    public Verdict play(int cases, BooleanSupplier enough) {
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        Map<Integer, Future<Verdict.Played>> running = new TreeMap<>();
        for (int i = 0; i < cases; i++) {
            int number = i;
            running.put(i, workers.submit(() -> stopped || enough.getAsBoolean() ? null : played(number)));
        }
        List<Verdict.Played> played = new ArrayList<>();
        try {
            for (Future<Verdict.Played> one : running.values()) {
                Verdict.Played p = one.get();
                if (p != null) {
                    played.add(p);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a job could not be played: " + e.getCause(), e.getCause());
        } finally {
            workers.shutdownNow();
        }
        return new Verdict(played, policies, seed);
    }

    private Verdict.Played played(int number) {
        Job job = jobs.job(number);
        Map<Policy, Outcome> outcomes = new EnumMap<>(Policy.class);
        for (Policy policy : policies) {
            outcomes.put(policy, new Course(job, policy, nothingKnown, pairs, beginning, chart).run());
        }
        done.incrementAndGet();
        return new Verdict.Played(job, outcomes);
    }
}
