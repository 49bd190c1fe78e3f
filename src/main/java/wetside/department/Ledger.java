package wetside.department;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
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

    /** What is kept of one model. */
    private final class Account {
        private final String file;
        private final Optional<Model> model;
        private final Counting counting;
        private final TreeMap<Long, Counted> jobs = new TreeMap<>();
        private long stamp = -1;
        private Practice practice;
        private Figures figures;
        private Object figuresAt;

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
            Exposure exposure = Exposure.of(outcomes.bought(file), at);
            long day = at.truncatedTo(ChronoUnit.DAYS).getEpochSecond();
            Object key = List.of(stamp, day, exposure.since());
            if (!key.equals(figuresAt)) {
                figures = Figures.of(current, exposure, outcomes, at);
                figuresAt = key;
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

    /** What follows from that at a time. */
    public Figures figures(String file, Instant now) {
        return account(file).figures(now);
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
