package wetside.diagnosis.inference;

import wetside.diagnosis.Library;
import wetside.diagnosis.Observations;

/** A library made ready to be asked: every posterior of one machine starts here. */
public final class Inference {
    private final Library library;
    private final Assumptions assumptions;
    private final Pool pool;
    private final float[][] columns;

    private Inference(Library library, Assumptions assumptions) {
        this(library, assumptions, Pool.of(library), new float[library.causes().size()][]);
    }

    private Inference(Library library, Assumptions assumptions, Pool pool, float[][] columns) {
        this.library = library;
        this.assumptions = assumptions;
        this.pool = pool;
        this.columns = columns;
    }

    /**
     * The same signatures with the causes weighted otherwise, as in {@code other}. How often causes are does not change
     * what an unknown one would read, so all that was made ready serves both.
     */
    public Inference weighted(Library other) {
        if (other.signatures() != library.signatures()) {
            throw new IllegalArgumentException("another library's signatures");
        }
        return other == library ? this : new Inference(other, assumptions, pool, columns);
    }

    public static Inference of(Library library) {
        return of(library, Assumptions.USUAL);
    }

    public static Inference of(Library library, Assumptions assumptions) {
        return new Inference(library, assumptions);
    }

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

    /** The draws of a cause question by question, as foresight goes through them: all draws of a question side by side. */
    float[] columns(int cause) {
        if (columns[cause] == null) {
            float[] rows = library.signatures().rows(cause);
            int questions = Math.max(1, library.signatures().questions());
            int draws = rows.length / questions;
            float[] turned = new float[rows.length];
            for (int k = 0; k < draws; k++) {
                for (int q = 0; q < questions; q++) {
                    turned[q * draws + k] = rows[k * questions + q];
                }
            }
            columns[cause] = turned;
        }
        return columns[cause];
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
        return new Fit(
                readings,
                library.signatures().rows(cause),
                Math.max(1, library.signatures().questions()),
                assumed);
    }
}
