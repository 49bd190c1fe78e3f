package wetside.department;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import wetside.shop.Outcome;
import wetside.shop.Outcomes;

/**
 * The closed jobs of a shop by model, read once and then only where something has happened. Nothing is added to or taken
 * from a sum: whatever changed on a job, it is read again, and everything follows from the jobs as they stand.
 */
public final class Ledger {
    /** More changes than this at once: all are read again. */
    private static final int MANY = 500;

    private final Outcomes outcomes;
    private final Map<String, Account> accounts = new HashMap<>();
    private Map<String, Long> models;
    private long modelsAt;

    public Ledger(Outcomes outcomes) {
        this.outcomes = outcomes;
    }

    /** What is worked out of one model's jobs. */
    private record Figures(Object key, Failures failures, Course course, double weight, List<Counted> newestFirst) {}

    /** What is kept of one model. */
    private final class Account {
        private final String file;
        private final Optional<Model> model;
        private final Counting counting;
        private final TreeMap<Long, Counted> jobs = new TreeMap<>();
        private long stamp = -1;
        private Practice practice;
        private Figures figures;

        private Account(String file) {
            this.file = file;
            model = Model.of(file);
            counting = new Counting(model);
        }

        private synchronized Practice now() {
            long newest = outcomes.stamp();
            if (newest != stamp) {
                boolean changed = stamp < 0 ? all() : since(stamp);
                stamp = newest;
                if (changed) {
                    practice = Practice.of(file, newest, model, new ArrayList<>(jobs.values()));
                }
            }
            return practice;
        }

        /** Worked out once for as long as nothing happens on any job, a day at most. */
        private synchronized Figures figures(Instant at) {
            Practice current = now();
            Exposure exposure = exposure(file, at);
            long day = at.truncatedTo(ChronoUnit.DAYS).getEpochSecond();
            Object key = List.of(stamp, day, exposure.since());
            if (figures == null || !figures.key.equals(key)) {
                figures = new Figures(
                        key,
                        Failures.of(current, exposure, at),
                        Course.of(current.jobs(), outcomes.taken(file), outcomes.minutes(file), at),
                        current.weight(at),
                        current.jobs().stream()
                                .sorted(Comparator.comparing(
                                                (Counted j) -> j.outcome().closed())
                                        .reversed())
                                .toList());
            }
            return figures;
        }

        private boolean all() {
            jobs.clear();
            outcomes.of(file).forEach(o -> jobs.put(o.jobId(), counting.of(o)));
            return true;
        }

        private boolean since(long from) {
            Set<Long> touched = outcomes.since(from);
            if (touched.size() > MANY) {
                return all();
            }
            Map<Long, Counted> now = new HashMap<>();
            for (Outcome o : outcomes.of(file, touched)) {
                now.put(o.jobId(), counting.of(o));
            }
            boolean changed = false;
            for (Long id : touched) {
                Counted after = now.get(id);
                Counted before = after == null ? jobs.remove(id) : jobs.put(id, after);
                changed |= after == null ? before != null : !after.equals(before);
            }
            return changed;
        }
    }

    /** What this shop has closed on a model by now. */
    public Practice of(String file) {
        return account(file).now();
    }

    /** How long machines of a model have been owned, as far as that is known. */
    public Exposure exposure(String file, Instant now) {
        return Exposure.of(outcomes.bought(file), now);
    }

    /** What fails how often on a model, with what that follows from. */
    public Failures failures(String file, Instant now) {
        return account(file).figures(now).failures;
    }

    /** How jobs on a model go. */
    public Course course(String file, Instant now) {
        return account(file).figures(now).course;
    }

    /** How much the jobs of a model count together. */
    public double weight(String file, Instant now) {
        return account(file).figures(now).weight;
    }

    /** The jobs of a model, the one closed last first. */
    public List<Counted> newestFirst(String file, Instant now) {
        return account(file).figures(now).newestFirst;
    }

    /** What people call a model; its file's name where the file is gone. */
    public String title(String file) {
        return account(file).model.map(Model::title).orElse(file);
    }

    private Account account(String file) {
        synchronized (accounts) {
            return accounts.computeIfAbsent(file, Account::new);
        }
    }

    /** Jobs done by the machine file they are of, the most first. */
    public Map<String, Long> models() {
        long newest = outcomes.stamp();
        synchronized (accounts) {
            if (models == null || newest != modelsAt) {
                models = outcomes.models();
                modelsAt = newest;
            }
            return models;
        }
    }
}
