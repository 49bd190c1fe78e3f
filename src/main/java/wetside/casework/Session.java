package wetside.casework;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Plausibility;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.NextStep;
import wetside.diagnosis.plan.Rates;
import wetside.diagnosis.plan.Situation;

/** One fault finding: what is known so far, and what follows from it. Answers can come in any order and be taken back. */
public final class Session {
    private final Casework casework;
    private final Who who;
    private Library library;
    private Inference inference;
    private Observations observations = Observations.none();
    private Posterior posterior;

    public Session(Casework casework, Library library, Who who) {
        this.casework = casework;
        this.who = who;
        sharpen(library);
    }

    /** Goes on with a library of more draws. */
    public void sharpen(Library library) {
        this.library = library;
        inference = Inference.of(Footprint.withoutSilent(library));
        posterior = inference.posterior(observations);
    }

    public void learn(Observation observation) {
        observations = observations.without(observation.about()).with(observation);
        posterior = inference.posterior(observations);
    }

    public void undo() {
        observations = observations.undo();
        posterior = inference.posterior(observations);
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

    public Observations observations() {
        return observations;
    }

    public Posterior posterior() {
        return posterior;
    }

    public Evidence evidence() {
        return Evidence.of(posterior);
    }

    /** How well the best cause explains all that was found. */
    public Plausibility plausibility() {
        return Plausibility.of(posterior, posterior.best().position());
    }

    public Advice advice() {
        return NextStep.advise(posterior, beginning().after(library(), observations));
    }

    /** Who comes to the machine, nothing of it open yet. */
    public Situation beginning() {
        Map<String, Double> minutes = new HashMap<>();
        casework.machine().identity().panels().forEach(p -> minutes.put(p.id(), p.minutes()));
        Rates usual = Rates.USUAL;
        Rates rates = new Rates(usual.perMinute(), minutes, usual.otherPanel(), usual.risk(), usual.callIn());
        return new Situation(who, Set.of(), rates);
    }

    /** The candidate at a position of the posterior; empty for "something else". */
    public Optional<Candidate> candidate(int position) {
        return position < casework.candidates().size()
                ? Optional.of(casework.candidates().get(position))
                : Optional.empty();
    }
}
