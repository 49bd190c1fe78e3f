package wetside.judging;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import wetside.casework.Casework;
import wetside.casework.Pairs;
import wetside.casework.Session;
import wetside.casework.TwinFailed;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Calls;
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
    private final Map<Integer, Verdict.Played> played = new ConcurrentSkipListMap<>();
    private final Map<Integer, NotPlayed> notPlayed = new ConcurrentSkipListMap<>();
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
        pairs = new Pairs(casework, false);
        beginning = session.beginning();
        jobs = new Jobs(casework, byRate(library, nothingKnown.library()), procedures, world, seed);
        chart = new Decision(nothingKnown, beginning).chart();
        this.policies = List.copyOf(policies);
        this.seed = seed;
    }

    /** Causes by their rates, however seldom noticed, but for those that no draw would bring anybody to call about. */
    private static Library byRate(Library library, Library believed) {
        Calls calls = new Calls(library);
        double[] weights = new double[library.causes().size()];
        for (int c = 0; c < weights.length; c++) {
            boolean shows = believed.causes().get(c).weight() > 0 && (c == 0 || calls.isEverMade(c));
            weights[c] = shows ? library.causes().get(c).weight() : 0;
        }
        return library.weighted(weights);
    }

    /** Jobs done with so far, those that could not be played included. */
    public long done() {
        return played.size() + notPlayed.size();
    }

    /** Begins no more jobs. */
    public void stop() {
        stopped = true;
    }

    /** Plays so many jobs; fewer when stopped, or when {@code enough} says so. */
    public Verdict play(int cases, BooleanSupplier enough) {
        ExecutorService workers =
                Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        List<Future<?>> running = new ArrayList<>();
        for (int i = 0; i < cases; i++) {
            int number = i;
            running.add(workers.submit(() -> {
                if (!stopped && !enough.getAsBoolean()) {
                    play(number);
                }
            }));
        }
        try {
            for (Future<?> one : running) {
                one.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a job could not be played: " + e.getCause(), e.getCause());
        } finally {
            workers.shutdownNow();
        }
        return sofar();
    }

    /** What the jobs played so far say, at any time. */
    public Verdict sofar() {
        return new Verdict(List.copyOf(played.values()), List.copyOf(notPlayed.values()), policies, seed);
    }

    /** One that fails is told, and the others go on. */
    private void play(int number) {
        Job job;
        try {
            job = jobs.job(number);
        } catch (Unplayable e) {
            notPlayed.put(number, new NotPlayed(number, e.truth(), "", e.getMessage()));
            return;
        }
        Map<Policy, Outcome> outcomes = new EnumMap<>(Policy.class);
        for (Policy policy : policies) {
            try {
                outcomes.put(policy, new Course(job, policy, nothingKnown, pairs, beginning, chart).run());
            } catch (RuntimeException e) {
                notPlayed.put(number, new NotPlayed(number, job.truth(), policy.word(), TwinFailed.said(e)));
                return;
            }
        }
        played.put(number, new Verdict.Played(job, outcomes));
    }
}
