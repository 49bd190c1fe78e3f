package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** The causes that still matter, the likeliest first: what is foreseen and planned runs over these only. */
public final class InPlay {
    private static final double NEGLIGIBLE = 1e-4;
    private static final double ENOUGH = 0.998;

    private final Posterior posterior;
    private final int[] positions;
    private final double[] shares;

    private InPlay(Posterior posterior, int[] positions) {
        this.posterior = posterior;
        this.positions = positions;
        double all = IntStream.of(positions).mapToDouble(posterior::share).sum();
        shares = IntStream.of(positions)
                .mapToDouble(c -> posterior.share(c) / all)
                .toArray();
    }

    private InPlay(Posterior posterior, int[] positions, double[] shares) {
        this.posterior = posterior;
        this.positions = positions;
        this.shares = shares;
    }

    public static InPlay of(Posterior posterior) {
        List<Posterior.Ranked> ranking = posterior.ranking();
        int kept = 0;
        double sum = 0;
        while (kept < ranking.size() && sum < ENOUGH && ranking.get(kept).share() > NEGLIGIBLE) {
            sum += ranking.get(kept++).share();
        }
        return new InPlay(
                posterior,
                ranking.stream()
                        .limit(kept)
                        .mapToInt(Posterior.Ranked::position)
                        .toArray());
    }

    /** Two causes alone, held equally likely whatever is known. */
    static InPlay between(Posterior posterior, int one, int other) {
        return new InPlay(posterior, new int[] {one, other}, new double[] {0.5, 0.5});
    }

    /** The likeliest few of them alone; their shares add up to one. */
    public InPlay leading(int most) {
        return size() <= most ? this : new InPlay(posterior, Arrays.copyOf(positions, most));
    }

    public Posterior posterior() {
        return posterior;
    }

    public int size() {
        return positions.length;
    }

    /** Position in the posterior. */
    public int position(int active) {
        return positions[active];
    }

    /** Whether the library knows this one. */
    public boolean known(int active) {
        return positions[active] != posterior.somethingElse();
    }

    /** Shares of the causes in play, adding up to one. */
    public double[] shares() {
        return shares;
    }

    /** Shares evened out, so that unlikely rivals get a say in how outcomes are cut. */
    double[] flattened() {
        double[] logs = IntStream.range(0, size())
                .mapToDouble(a -> known(a) ? 0.5 * Math.log(shares[a]) : Double.NEGATIVE_INFINITY)
                .toArray();
        return Shares.logSum(logs) == Double.NEGATIVE_INFINITY ? new double[size()] : Shares.of(logs);
    }

    /** What a question of the library would answer. */
    public Foresight foresee(int question) {
        return Foresight.of(this, question);
    }

    /** What every question of the library would answer, in the library's order. */
    public List<Foresight> foresight() {
        List<Foresight> all = new ArrayList<>();
        for (int q = 0; q < posterior.library().questions().size(); q++) {
            all.add(foresee(q));
        }
        return all;
    }
}
