package wetside.casework;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Overtaken;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Calls;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.PairSearch;
import wetside.diagnosis.inference.Plausibility;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.NextStep;
import wetside.diagnosis.plan.Rates;
import wetside.diagnosis.plan.Situation;
import wetside.diagnosis.plan.Step;

/** One fault finding: what is known so far, and what follows from it. Answers can come in any order and be taken back. */
public final class Session {
    /** Causes below this share are gathered. */
    public static final double WORTH_NAMING = 0.03;

    private static final int MOST_NAMED = 5;
    /** Causes below this share are not simulated more closely. */
    private static final double IN_PLAY = 0.002;

    private static final int MOST_IN_PLAY = 32;
    /** From this share on the best cause is treated as found. */
    private static final double FOUND = 0.8;

    private final Casework casework;
    private final Who who;
    private final Pairs pairs;
    private UnaryOperator<Library> rates = UnaryOperator.identity();
    private Library library;
    private Library shipped;
    /** The library with the rates of here and what this machine read earlier, and that made ready once it is asked. */
    private Library rated;

    private Inference singles;
    /** Who would call, of the library; null where others made it ready. */
    private Calls calls;

    private Observations observations = Observations.none();
    private Observations earlier = Observations.none();
    private Posterior alone;
    private Posterior posterior;
    private List<PairSearch.Pair> tried = List.of();
    private Advice advice;
    private Evidence evidence;

    public Session(Casework casework, Library library, Who who) {
        this(casework, library, who, new Pairs(casework));
    }

    /** @param pairs those run so far */
    public Session(Casework casework, Library library, Who who, Pairs pairs) {
        this.casework = casework;
        this.who = who;
        this.pairs = pairs;
        sharpen(library);
    }

    /**
     * What sessions on one machine may share.
     *
     * @param inference as {@link #inference} made it of the same earlier readings, with whatever rates
     * @param shipped   the library with the rates it came with
     * @param pairs     those run so far
     */
    public record Shared(Casework casework, Inference inference, Library shipped, Pairs pairs) {}

    /** One that begins with all that is known. */
    public Session(Shared shared, Observations observations, Observations earlier, Who who) {
        casework = shared.casework();
        shipped = shared.shipped();
        pairs = shared.pairs();
        singles = shared.inference();
        rated = singles.library();
        library = rated;
        this.who = who;
        this.observations = observations;
        this.earlier = earlier;
        believe();
    }

    /** Another on the same signatures that knows something else, from single causes only. */
    public Session knowing(Observations other) {
        return new Session(new Shared(casework, inference(), shipped, pairs), other, earlier, who);
    }

    /** The same with the pairs that were tried beside the single causes. */
    public Session knowingWithPairs(Observations other) {
        Session session = knowing(other);
        if (!tried.isEmpty()) {
            session.tryPairs(tried);
        }
        return session;
    }

    /** What a library's signatures say, made ready; causes nothing would ever show are left out. */
    public static Inference inference(Library library, Observations earlier) {
        Calls calls = new Calls(library);
        return Inference.of(Earlier.columns(Footprint.called(library, true, calls), earlier))
                .called(calls);
    }

    /** Goes on with a library of more draws. */
    public void sharpen(Library library) {
        this.library = library;
        calls = calls == null ? new Calls(library) : calls.sharper(library);
        shipped = Footprint.called(library, casework.simulatesAll(), calls);
        weigh();
    }

    /** Takes shipped rates, the shop's and this machine's normal together. */
    private void weigh() {
        Library here = rates.apply(shipped);
        rated = earlier.size() == 0 ? here : Earlier.columns(here, earlier);
        singles = null;
        believe();
    }

    /** Takes the rates of a shop in the place of the shipped ones: the same library with other weights. */
    public void rates(UnaryOperator<Library> ofShop) {
        rates = ofShop;
        weigh();
    }

    /** How often a cause is before any answer: as shipped, and as it is taken here. */
    public record Often(double shipped, double here) {}

    /** Empty where both are one. */
    public Optional<Often> often(int position) {
        if (shipped == null || position >= shipped.causes().size()) {
            return Optional.empty();
        }
        Often often = new Often(often(shipped, position), often(rated, position));
        return Math.abs(often.here - often.shipped) < 1e-12 ? Optional.empty() : Optional.of(often);
    }

    private static double often(Library library, int position) {
        double all = library.causes().stream().mapToDouble(Cause::weight).sum();
        return library.causes().get(position).weight() / all;
    }

    /** Takes what this machine read when nothing was wrong with it: its own normal narrows the tolerances. */
    public void earlier(Observations readings) {
        earlier = readings;
        weigh();
    }

    public void learn(Observation observation) {
        observations = observations.learning(observation);
        believe();
    }

    public void undo() {
        observations = observations.undo();
        believe();
    }

    /** From single causes only: pairs are for {@link #tryPairs} to add, so that what was believed before leaves no trace. */
    private void believe() {
        alone = null;
        posterior = null;
        tried = List.of();
        advice = null;
        evidence = null;
    }

    /** Pairs of causes worth running: none while single causes leave nothing odd. */
    public List<PairSearch.Pair> pairsWorth() {
        return pairs.worth(alone());
    }

    /** Those that are worth it once the first were run, until stopped: {@link Pairs#tried}. */
    public List<PairSearch.Pair> triedPairs(BooleanSupplier stopped, Consumer<List<PairSearch.Pair>> round) {
        return pairs.tried(alone(), stopped, round);
    }

    /** Runs pairs on the twin and lets them stand beside the single causes until something else is learnt. */
    public void tryPairs(List<PairSearch.Pair> worth) {
        posterior = alone().beside(pairs.with(alone(), worth));
        tried = List.copyOf(worth);
        advice = null;
        evidence = null;
    }

    /** Pairs that stand beside the single causes now. */
    public int pairsTried() {
        return tried.size();
    }

    public Pairs pairs() {
        return pairs;
    }

    public Casework casework() {
        return casework;
    }

    public Who who() {
        return who;
    }

    public Library library() {
        return library;
    }

    /** What single causes would read. */
    public Inference inference() {
        if (singles == null) {
            Inference any = Inference.of(rated);
            singles = !casework.simulatesAll() ? any : calls == null ? any.called() : any.called(calls);
        }
        return singles;
    }

    public Observations observations() {
        return observations;
    }

    /** What this machine read when nothing was wrong with it. */
    public Observations earlier() {
        return earlier;
    }

    public Posterior posterior() {
        if (posterior == null) {
            posterior = alone();
        }
        return posterior;
    }

    /** From single causes only; worked out when somebody asks, since answers often come several at once. */
    private Posterior alone() {
        if (alone == null) {
            Observations all = Overtaken.observed(inference().library(), Earlier.observed(observations, earlier));
            alone = inference().asked(all).posterior(all);
        }
        return alone;
    }

    /** Reasons; worked out once for what is known. */
    public Evidence evidence() {
        if (evidence == null) {
            evidence = Evidence.of(posterior());
        }
        return evidence;
    }

    /** How well the best cause explains all that was found. */
    public Plausibility plausibility() {
        return Plausibility.of(posterior(), posterior().best().position());
    }

    /** What can be done next; worked out once for what is known. */
    public Advice advice() {
        if (advice == null) {
            advice = advised();
        }
        return advice;
    }

    private Advice advised() {
        return NextStep.advise(posterior(), beginning().after(library(), observations));
    }

    /** Who comes to the machine, nothing of it open yet. */
    public Situation beginning() {
        Map<String, Double> minutes = new HashMap<>();
        casework.machine().identity().panels().forEach(p -> minutes.put(p.id(), p.minutes()));
        Rates usual = Rates.USUAL;
        Rates rates = new Rates(usual.perMinute(), minutes, usual.otherPanel(), usual.risk(), usual.callIn());
        return new Situation(who, Set.of(), rates);
    }

    /** Causes worth naming, the likeliest first: one at least, "something else" may be among them. */
    public List<Posterior.Ranked> leading() {
        List<Posterior.Ranked> ranking = posterior().ranking();
        int named = 1;
        while (named < MOST_NAMED && ranking.get(named).share() >= WORTH_NAMING) {
            named++;
        }
        return ranking.subList(0, named);
    }

    /** Causes that may still be it, the likeliest first: worth simulating more closely. None before anything is known. */
    public List<Integer> inPlay() {
        return observations.size() == 0
                ? List.of()
                : inPlay(posterior(), casework.candidates().size());
    }

    /** The same of any belief, among the first so many causes. */
    public static List<Integer> inPlay(Posterior posterior, int causes) {
        return posterior.ranking().stream()
                .filter(r -> r.share() >= IN_PLAY && r.position() < causes)
                .limit(MOST_IN_PLAY)
                .map(Posterior.Ranked::position)
                .toList();
    }

    /** Whether the best cause stands out so far that it is treated as found. */
    public boolean isFound() {
        return posterior().ranking().get(0).share() >= FOUND;
    }

    /** Whether one of the leading causes explains all that is known. */
    public boolean isExplained() {
        return observations.size() == 0
                || posterior().ranking().get(0).position() != posterior().somethingElse()
                        && leading().stream()
                                .filter(r -> r.position() != posterior().somethingElse())
                                .anyMatch(r -> Plausibility.of(posterior(), r.position())
                                        .plausible());
    }

    /** The best step; but before anything is known nothing is mended: somebody has called and is asked. */
    public Step next(Advice advice) {
        return observations.size() > 0
                ? advice.best()
                : advice.steps().stream()
                        .filter(s -> s.sort() == Step.Sort.ASK)
                        .findFirst()
                        .orElse(advice.best());
    }

    /** The likeliest cause a repair removes. */
    public Optional<Candidate> mending(String repair) {
        return posterior().ranking().stream()
                .flatMap(r -> candidate(r.position()).stream())
                .filter(c -> Repair.parts(repair).contains(c.cause().repair().id()))
                .findFirst();
    }

    /** What draws of a machine that works read. */
    public Expected normal(Asking asking) {
        int q = library.question(asking.question().id());
        double[] values = new double[library.signatures().draws(0)];
        for (int k = 0; k < values.length; k++) {
            values[k] = library.signatures().value(0, k, q);
        }
        return Expected.of(asking, values);
    }

    /** The candidate at a position of the posterior; empty for "something else". */
    public Optional<Candidate> candidate(int position) {
        return position < casework.candidates().size()
                ? Optional.of(casework.candidates().get(position))
                : Optional.empty();
    }

    /** The candidates at a position of the posterior: two for a pair, none for "something else". */
    public List<Candidate> candidates(int position) {
        int pair = position - casework.candidates().size();
        return pair >= 0 && pair < tried.size()
                ? List.of(
                        casework.candidates().get(tried.get(pair).one()),
                        casework.candidates().get(tried.get(pair).other()))
                : candidate(position).stream().toList();
    }
}
