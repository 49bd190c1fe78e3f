package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Overtaken;
import wetside.diagnosis.Question;

/** The observations looked up in a library: numbers with their errors, reports by shared reporter, repairs in vain. */
final class Readings {
    /** No reading is trusted below this share of what the question usually spans. */
    private static final double FINEST = 1e-4;
    /** What differs by less is the same. */
    private static final double SAME = 1e-6;
    /** How much of the variance of the twin's error two readings that share it have in common: assumed. */
    private static final double SHARED = 0.5;
    /** However alike two readings are, each has something of its own. */
    private static final double ALIKE = 0.999;

    final List<Observation> numbers = new ArrayList<>();
    final List<List<Report>> reports = new ArrayList<>();

    /** What somebody called about. */
    final Optional<Complaint> complaint;

    private final Observations observations;

    /** Per number: question, value, variance of instrument and twin, log floor of its density, log broad density. */
    final int[] question;

    final double[] value;
    final double[] variance;
    final double[] logFloor;
    final double[] logBroad;
    private final double[] shared;
    /** Column of the same reading taken again after a repair; -1 when it was not. */
    private final int[] again;

    /** The answer to a question. */
    record Complaint(int question, float value) {}

    /** One named option; {@code thing} is the question whenever answered, {@code broad} its probability when nothing is known. */
    record Report(
            Observation observation, String thing, int question, int option, Answering.Choice choice, double broad) {}

    Readings(Library library, Pool pool, Assumptions assumptions, Observations observations) {
        this.observations = observations;
        Map<String, List<Report>> byErrors = new LinkedHashMap<>();
        for (Observation observation : observations.sorted()) {
            switch (observation.kind()) {
                case NUMBER -> numbers.add(observation);
                case CHOICE -> {
                    Question asked = library.questions().get(library.question(observation.about()));
                    byErrors.computeIfAbsent(asked.reporter(), key -> new ArrayList<>())
                            .add(report(library, pool, observation));
                }
                case UNKNOWN -> library.question(observation.about());
                case STILL_BAD -> {
                    // it speaks of repairs, not of readings
                }
            }
        }
        reports.addAll(byErrors.values());
        complaint = observations.sorted().stream()
                .filter(Observation::isComplaint)
                .filter(o -> o.kind() == Observation.Kind.NUMBER || o.kind() == Observation.Kind.CHOICE)
                .map(o -> new Complaint(library.question(o.about()), (float) o.value()))
                .findFirst();
        int n = numbers.size();
        question = new int[n];
        value = new double[n];
        variance = new double[n];
        shared = new double[n * n];
        logFloor = new double[n];
        logBroad = new double[n];
        again = new int[n];
        Arrays.fill(again, -1);
        for (int i = 0; i < n; i++) {
            lookUp(i, library, pool, assumptions);
        }
        for (int i = 0; i < n * n; i++) {
            shared[i] = shared(library, i / n, i % n);
        }
        for (int i = 0; i < n; i++) {
            Overtaken.before(observations, numbers.get(i).about()).ifPresent(takenAgain(library, i));
        }
    }

    /**
     * Where nothing has changed in between, who reads a thing again with the same instrument reads the same: that says
     * nothing of what is wrong, and is as likely whatever it is.
     */
    private Consumer<Observation> takenAgain(Library library, int second) {
        return before -> {
            int first = numbers.indexOf(before);
            again[first] = question[second];
            double variance = ((Answering.Number)
                            library.questions().get(question[second]).answering())
                    .again(value[second]);
            double off = value[second] - value[first];
            logBroad[first] = Shares.logAdd(
                    -Normal.LOG_ROOT_TWO_PI - 0.5 * (Math.log(variance) + off * off / variance), logFloor[first]);
        };
    }

    /**
     * Covariance of what is in two readings beside the draws: the twin's error is one where one thing is read twice, and in
     * part one where the same quantity is read elsewhere or otherwise, so that two readings a little off are not two proofs.
     */
    double shared(int i, int j) {
        return shared[i * size() + j];
    }

    private double shared(Library library, int i, int j) {
        Question one = library.questions().get(question[i]);
        Question other = library.questions().get(question[j]);
        if (!one.reporter().equals(other.reporter())) {
            return 0;
        }
        boolean same = Earlier.reading(one.id()).equals(Earlier.reading(other.id()));
        double most = ALIKE * Math.sqrt(variance[i] * variance[j]);
        double common = (same ? 1 : SHARED) * off(one, i) * off(other, j);
        return Math.max(-most, Math.min(most, common));
    }

    /** How far the twin may be off at a reading. */
    private double off(Question asked, int i) {
        return ((Answering.Number) asked.answering()).discrepancy() * value[i];
    }

    /** What a question was answered before a repair overtook it; nothing when it was not, or was answered again. */
    Optional<Observation> overtaken(Question question) {
        return again.length == 0 && reports.isEmpty()
                ? Optional.empty()
                : Overtaken.before(observations, question.id());
    }

    /** Whether a draw has something to say of a reading: it has a value, and not the one it has when it is taken again. */
    boolean tells(int i, float[] rows, int from) {
        float value = rows[from + question[i]];
        return !Float.isNaN(value)
                && (again[i] < 0 || Math.abs(value - rows[from + again[i]]) > SAME * Math.abs(value));
    }

    private Readings(Readings same) {
        observations = same.observations;
        complaint = same.complaint;
        numbers.addAll(same.numbers);
        reports.addAll(same.reports);
        question = same.question;
        value = same.value;
        variance = same.variance;
        shared = same.shared;
        logFloor = same.logFloor.clone();
        logBroad = same.logBroad;
        again = same.again;
    }

    private void lookUp(int i, Library library, Pool pool, Assumptions assumptions) {
        Observation observation = numbers.get(i);
        question[i] = library.question(observation.about());
        if (!(library.questions().get(question[i]).answering() instanceof Answering.Number number)) {
            throw new IllegalArgumentException(observation.about() + " is answered by an option, not by a number");
        }
        value[i] = observation.value();
        double finest = FINEST * pool.sd(question[i]);
        variance[i] = Math.max(number.variance(value[i]), finest * finest);
        double logPeak = -Normal.LOG_ROOT_TWO_PI - 0.5 * Math.log(variance[i]);
        double logAnything = pool.logDensity(question[i], value[i], variance[i]);
        logFloor[i] = Math.max(Math.log(assumptions.slip()) + logAnything, logPeak - Math.log(assumptions.mostOdds()));
        logBroad[i] = Shares.logAdd(logAnything, logFloor[i]);
    }

    private static Report report(Library library, Pool pool, Observation observation) {
        int q = library.question(observation.about());
        if (!(library.questions().get(q).answering() instanceof Answering.Choice choice)) {
            throw new IllegalArgumentException(observation.about() + " is answered by a number, not by an option");
        }
        if (observation.option() < 0 || observation.option() >= choice.options().size()) {
            throw new IllegalArgumentException(observation.about() + " has no option " + observation.option());
        }
        Answering.Choice told = observation.isComplaint() ? choice.sure() : choice;
        String thing = Overtaken.now(observation.about());
        return new Report(observation, thing, q, observation.option(), told, pool.chance(q, observation.option()));
    }

    /** The same, some numbers saying at most so much. */
    Readings lenient(boolean[] where, double mostOdds) {
        Readings other = new Readings(this);
        for (int i = 0; i < where.length; i++) {
            double peak = -Normal.LOG_ROOT_TWO_PI - 0.5 * Math.log(variance[i]);
            other.logFloor[i] = where[i] ? Math.max(logFloor[i], peak - Math.log(mostOdds)) : logFloor[i];
        }
        return other;
    }

    int size() {
        return question.length;
    }

    /** Log likelihood under a cause nobody thought of. */
    double logBroad() {
        double log = 0;
        for (double density : logBroad) {
            log += density;
        }
        for (List<Report> group : reports) {
            Map<String, List<Report>> byThing = new LinkedHashMap<>();
            group.forEach(r ->
                    byThing.computeIfAbsent(r.thing(), key -> new ArrayList<>()).add(r));
            for (List<Report> same : byThing.values()) {
                log += Math.log(Reporter.broad(same));
            }
        }
        return log;
    }

    /** Log likelihood that nothing can exceed: every number exactly as expected, every report as it should be. */
    double logBest() {
        double log = 0;
        for (int i = 0; i < size(); i++) {
            log += Shares.logAdd(-Normal.LOG_ROOT_TWO_PI - 0.5 * Math.log(variance[i]), logFloor[i]);
        }
        for (List<Report> group : reports) {
            double error =
                    group.stream().mapToDouble(r -> r.choice().doubt()).max().orElse(0);
            double broad = group.stream().mapToDouble(Report::broad).max().orElse(0);
            log += Math.log(Math.max(1 - error, broad));
        }
        return log;
    }
}
