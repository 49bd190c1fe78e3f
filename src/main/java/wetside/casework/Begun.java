package wetside.casework;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.inference.Assumptions;
import wetside.diagnosis.inference.Calls;
import wetside.diagnosis.inference.Inference;

/**
 * A library some of whose causes have been run, made ready while the others are still to come: what has not been run yet
 * counts as something else.
 *
 * @param casework  thinks of the causes there are
 * @param inference of these
 */
public record Begun(Casework casework, Inference inference) {
    /** Fewer causes than this say nothing. */
    private static final int ENOUGH = 8;

    /** Empty while too little is there. */
    public static Optional<Begun> of(Casework whole, Library some) {
        return of(whole, some, Observations.none());
    }

    /** @param earlier what this machine read when nothing was wrong with it */
    static Optional<Begun> of(Casework whole, Library some, Observations earlier) {
        List<Integer> there = IntStream.range(0, some.causes().size())
                .filter(c -> some.signatures().draws(c) > 0)
                .boxed()
                .toList();
        if (there.size() < ENOUGH || there.get(0) != 0) {
            return Optional.empty();
        }
        List<Cause> causes = there.stream().map(some.causes()::get).toList();
        float[][] rows = there.stream().map(some.signatures()::rows).toArray(float[][]::new);
        Library part = new Library(
                causes, some.questions(), Signatures.of(some.questions().size(), rows));
        double all = weight(some.causes());
        Assumptions usual = Assumptions.USUAL;
        double unknown = 1 - (1 - usual.somethingElse()) * weight(causes) / all;
        // where only some readings are simulated, what an owner would notice is not known
        boolean noticed = whole.simulatesAll();
        Calls calls = new Calls(part);
        Inference inference = Inference.of(
                Earlier.columns(Footprint.called(part, noticed, calls), earlier), usual.somethingElse(unknown));
        return Optional.of(new Begun(
                whole.about(causes.stream().map(Cause::id).toList()), noticed ? inference.called(calls) : inference));
    }

    private static double weight(List<Cause> causes) {
        return causes.stream().mapToDouble(Cause::weight).sum();
    }

    /** Causes there are. */
    public int causes() {
        return casework.candidates().size();
    }
}
