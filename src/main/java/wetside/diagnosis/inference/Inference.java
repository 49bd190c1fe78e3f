package wetside.diagnosis.inference;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Overtaken;

/** A library made ready to be asked: every posterior of one machine starts here. */
public final class Inference {
    private final Library library;
    private final Assumptions assumptions;
    private final Pool pool;
    private final Layout layout;
    /** By what was called about, then by cause. */
    private final Map<Optional<Readings.Complaint>, AtomicReferenceArray<double[]>> weights = new ConcurrentHashMap<>();
    /** Null where whoever has a cause is as likely to call. */
    private final Calls calls;
    /** As it was made ready last after a repair: every answer until the next repair finds it so. */
    private volatile Asked asked;

    private Inference(Library library, Assumptions assumptions) {
        this(library, assumptions, Pool.of(library), new Layout(library.questions()), null);
    }

    private Inference(Library library, Assumptions assumptions, Pool pool, Layout layout, Calls calls) {
        this.library = library;
        this.assumptions = assumptions;
        this.pool = pool;
        this.layout = layout;
        this.calls = calls;
    }

    private Inference(Library library, Inference same) {
        this(library, same.assumptions, same.pool, same.layout, same.calls == null ? null : same.calls.of(library));
        int causes = library.causes().size();
        int known = Math.min(causes, same.library.causes().size());
        same.weights.forEach((complaint, byCause) -> {
            AtomicReferenceArray<double[]> more = new AtomicReferenceArray<>(causes);
            for (int c = 0; c < known; c++) {
                more.set(c, byCause.get(c));
            }
            weights.put(complaint, more);
        });
    }

    /**
     * The same signatures with the causes weighted otherwise, as in {@code other}. How often causes are does not change
     * what an unknown one would read, so all that was made ready serves both.
     */
    public Inference weighted(Library other) {
        if (other.signatures() != library.signatures()) {
            throw new IllegalArgumentException("another library's signatures");
        }
        return other == library ? this : new Inference(other, this);
    }

    public static Inference of(Library library) {
        return of(library, Assumptions.USUAL);
    }

    public static Inference of(Library library, Assumptions assumptions) {
        return new Inference(library, assumptions);
    }

    /** The same for a machine that somebody called about: draws that nobody would notice anything of count less. */
    public Inference called() {
        return new Inference(library, assumptions, pool, layout, new Calls(library));
    }

    /** The same with what is known already of who calls. */
    public Inference called(Calls known) {
        return known.isOf(library) ? new Inference(library, assumptions, pool, layout, known.of(library)) : called();
    }

    /** With further causes behind those there are; what readings can be at all stays as it was. */
    Inference beside(Library more) {
        return new Inference(more, this);
    }

    /**
     * Ready for observations with repairs among them: what they have overtaken has columns of its own, and can be asked
     * again. Observations are to be put as {@link Overtaken#observed} puts them.
     */
    public Inference asked(Observations observed) {
        List<String> overtaken = Overtaken.names(observed);
        if (overtaken.isEmpty()) {
            return this;
        }
        Asked known = asked;
        if (known == null || !known.overtaken.equals(overtaken)) {
            Inference more = new Inference(Overtaken.columns(library, observed), assumptions);
            known = new Asked(overtaken, calls == null ? more : more.called());
            asked = known;
        }
        return known.inference;
    }

    private record Asked(List<String> overtaken, Inference inference) {}

    /** What is believed after these observations. */
    public Posterior posterior(Observations observations) {
        return new Posterior(this, observations);
    }

    public Library library() {
        return library;
    }

    public Assumptions assumptions() {
        return assumptions;
    }

    Pool pool() {
        return pool;
    }

    Layout layout() {
        return layout;
    }

    /** The draws of a cause. */
    float[] rows(int cause) {
        return library.signatures().rows(cause);
    }

    Readings readings(Observations observations) {
        return new Readings(library, pool, assumptions, observations);
    }

    Fit fit(Readings readings, int cause) {
        return fit(readings, cause, assumptions);
    }

    /** With each heap of draws rounded to one normal distribution, which is what deviations can be counted from. */
    Fit rounded(Readings readings, int cause) {
        return fit(readings, cause, assumptions.smoothing(Double.POSITIVE_INFINITY));
    }

    private Fit fit(Readings readings, int cause, Assumptions assumed) {
        return new Fit(readings, rows(cause), weights(cause, readings.complaint), layout, assumed);
    }

    private double[] weights(int cause, Optional<Readings.Complaint> complaint) {
        if (calls == null) {
            return null;
        }
        AtomicReferenceArray<double[]> byCause = weights.computeIfAbsent(
                complaint, c -> new AtomicReferenceArray<>(library.causes().size()));
        if (byCause.get(cause) == null) {
            byCause.set(cause, calls.weights(cause, complaint));
        }
        return byCause.get(cause);
    }
}
