package wetside.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import wetside.casework.Asking;
import wetside.casework.Candidates;
import wetside.casework.Session;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Observation;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Step;
import wetside.drawing.Rails;
import wetside.machine.Wording;
import wetside.procedure.Trial;
import wetside.units.Dimension;
import wetside.units.Display;

/** What a reading should be under the leading causes, given all that is known: rails for a number, shares for words. */
final class FaultExpectation {
    private static final int ROWS = 4;
    private static final double[] QUANTILES = {0.05, 0.25, 0.5, 0.75, 0.95};
    /** Of how many standard deviations of the instrument each quantile takes part. */
    private static final double[] DEVIATIONS = {1.645, 0.674, 0, 0.674, 1.645};

    private final Session session;
    private final Display units;

    FaultExpectation(Session session, Display units) {
        this.session = session;
        this.units = units;
    }

    /** @param read what is being typed, null for nothing */
    FaultView.Expect of(Asking asking, Observation read) {
        return asking.options().isEmpty() ? rails(asking, read, rows(), would(asking, read)) : shares(asking, rows());
    }

    /** Under some causes only, what was read among it. */
    FaultView.Expect beside(Asking asking, Observation read, List<Posterior.Ranked> causes) {
        return asking.options().isEmpty() ? rails(asking, read, causes, "") : shares(asking, causes);
    }

    /** The leading causes this machine can have, and last that it works as it should. */
    private List<Posterior.Ranked> rows() {
        List<Posterior.Ranked> rows = new ArrayList<>(session.posterior().ranking().stream()
                .filter(r -> r.position() != session.posterior().somethingElse())
                .filter(r -> !r.id().equals(Candidates.HEALTHY))
                .limit(ROWS)
                .toList());
        session.posterior().ranking().stream()
                .filter(r -> r.id().equals(Candidates.HEALTHY))
                .forEach(rows::add);
        return rows;
    }

    private FaultView.Expect rails(Asking asking, Observation read, List<Posterior.Ranked> causes, String would) {
        List<Rails.Row> rows = causes.stream().map(r -> row(asking, r, read)).toList();
        Rails.Mark mark = null;
        if (read != null && read.kind() == Observation.Kind.NUMBER) {
            double value = Spoken.shown(asking, read.value(), units);
            double error = instrument(asking, read.value());
            double to = Spoken.shown(asking, read.value() + error, units);
            boolean open = asking.dimension() == Dimension.RESISTANCE && asking.si(read.value()) >= Trial.OPEN * 0.99;
            mark = new Rails.Mark(
                    value, to - value, open ? "open" : Spoken.number(value, step(asking, middle(asking), units)));
        }
        Rails rails = new Rails(
                rows, mark, units.unit(asking.dimension()).symbol(), asking.dimension() == Dimension.PRESSURE);
        return new FaultView.Expect(
                "What it should read if it is", rails.wide(), rails.narrow(), List.of(), List.of(), would);
    }

    /** Half width that holds nine readings of ten. */
    static double instrument(Asking asking, double kept) {
        Answering.Number n = (Answering.Number) asking.question().answering();
        return 1.645 * Math.hypot(n.sd(), n.relative() * kept);
    }

    /** What − and + move by: about a third of what the instrument can tell, a round number. */
    static double step(Asking asking, double middle, Display units) {
        double fine = Spoken.shown(asking, instrument(asking, middle), units) - Spoken.shown(asking, 0, units);
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(1e-3, Math.abs(fine) / 3))));
        return Math.min(Math.max(power, 0.01), 100);
    }

    /** Where counting begins: the middle of what the likeliest cause reads. */
    double middle(Asking asking) {
        double[] q = quantiles(asking, rows().get(0).position());
        return Double.isNaN(q[2]) ? 0 : q[2];
    }

    private Rails.Row row(Asking asking, Posterior.Ranked r, Observation read) {
        double[] q = quantiles(asking, r.position());
        boolean whole = r.id().equals(Candidates.HEALTHY);
        double[] shown =
                Arrays.stream(q).map(v -> Spoken.shown(asking, v, units)).toArray();
        return new Rails.Row(
                Wording.capital(r.words()),
                shown[0],
                shown[1],
                shown[2],
                shown[3],
                shown[4],
                whole,
                !whole && r.share() >= Session.WORTH_NAMING,
                verdict(q, read));
    }

    private static Rails.Verdict verdict(double[] q, Observation read) {
        if (read == null || read.kind() != Observation.Kind.NUMBER || Double.isNaN(q[2])) {
            return Rails.Verdict.NONE;
        }
        double v = read.value();
        if (v >= q[0] && v <= q[4]) {
            return Rails.Verdict.FITS;
        }
        boolean near = v >= q[2] - 2 * (q[2] - q[0]) && v <= q[2] + 2 * (q[4] - q[2]);
        return near ? Rails.Verdict.HARDLY : Rails.Verdict.NO;
    }

    /** Over the draws of a cause as far as each is believed in, widened by the instrument; NaN when nothing is read. */
    private double[] quantiles(Asking asking, int cause) {
        var signatures = session.posterior().library().signatures();
        int question = session.posterior().library().question(asking.question().id());
        double[] weights = session.posterior().believed(cause);
        List<double[]> draws = new ArrayList<>();
        double all = 0;
        for (int k = 0; k < weights.length; k++) {
            double v = signatures.value(cause, k, question);
            if (!Double.isNaN(v) && weights[k] > 0) {
                draws.add(new double[] {v, weights[k]});
                all += weights[k];
            }
        }
        draws.sort(Comparator.comparingDouble(d -> d[0]));
        double[] found = new double[QUANTILES.length];
        for (int i = 0; i < found.length; i++) {
            found[i] = draws.isEmpty() ? Double.NaN : quantile(draws, QUANTILES[i] * all);
        }
        double one = draws.isEmpty() ? 0 : instrument(asking, found[2]) / 1.645;
        double middle = found[2];
        boolean positive = !draws.isEmpty() && draws.get(0)[0] >= 0;
        for (int i = 0; i < found.length; i++) {
            double off = Math.hypot(found[i] - middle, DEVIATIONS[i] * one);
            found[i] = i < 2 ? middle - off : i > 2 ? middle + off : middle;
            found[i] = positive ? Math.max(0, found[i]) : found[i];
        }
        return found;
    }

    private static double quantile(List<double[]> draws, double wanted) {
        double before = 0;
        for (int k = 0; k < draws.size(); k++) {
            double middle = before + draws.get(k)[1] / 2;
            if (middle >= wanted) {
                if (k == 0) {
                    return draws.get(0)[0];
                }
                double last = before - draws.get(k - 1)[1] / 2;
                double t = (wanted - last) / Math.max(1e-12, middle - last);
                return draws.get(k - 1)[0] + t * (draws.get(k)[0] - draws.get(k - 1)[0]);
            }
            before += draws.get(k)[1];
        }
        return draws.get(draws.size() - 1)[0];
    }

    private FaultView.Expect shares(Asking asking, List<Posterior.Ranked> causes) {
        Answering.Choice choice = (Answering.Choice) asking.question().answering();
        List<FaultView.Shares> rows = causes.stream()
                .map(r -> new FaultView.Shares(
                        Wording.capital(r.words()),
                        r.share() >= Session.WORTH_NAMING && !r.id().equals(Candidates.HEALTHY),
                        cells(chances(asking, choice, r.position()))))
                .toList();
        return new FaultView.Expect("How often it is so if it is", "", "", choice.options(), rows, "");
    }

    private static List<FaultView.Cell> cells(double[] chances) {
        double most = Arrays.stream(chances).max().orElse(0);
        return Arrays.stream(chances)
                .mapToObj(c -> new FaultView.Cell(Math.round(100 * c), c == most && c > 0))
                .toList();
    }

    /** How often each answer is given, mistakes of who answers included. */
    private double[] chances(Asking asking, Answering.Choice choice, int cause) {
        var signatures = session.posterior().library().signatures();
        int question = session.posterior().library().question(asking.question().id());
        double[] weights = session.posterior().believed(cause);
        int n = choice.options().size();
        double[] truth = new double[n];
        double all = 0;
        for (int k = 0; k < weights.length; k++) {
            float v = signatures.value(cause, k, question);
            if (!Float.isNaN(v)) {
                truth[(int) v] += weights[k];
                all += weights[k];
            }
        }
        double sum = all;
        return IntStream.range(0, n)
                .mapToDouble(a -> sum == 0
                        ? 0
                        : IntStream.range(0, n)
                                .mapToDouble(t -> truth[t] / sum * choice.chance(a, t))
                                .sum())
                .toArray();
    }

    /** What the causes would be after an answer, and what would come next. */
    private String would(Asking asking, Observation read) {
        if (read == null) {
            return "";
        }
        Session after =
                session.knowing(session.observations().without(read.about()).with(read));
        List<String> left = after.leading().stream()
                .limit(2)
                .map(r -> r.words() + " at " + Spoken.percent(r.share()))
                .toList();
        Step then = after.next(after.advice());
        String next = then.sort() == Step.Sort.CALL_IN ? "hand the job over" : then.words();
        return Spoken.answer(asking, read, "", units) + " would leave " + String.join(", ", left) + ". Then: " + next
                + ".";
    }
}
