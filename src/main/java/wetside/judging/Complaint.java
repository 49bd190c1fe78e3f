package wetside.judging;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Question;
import wetside.diagnosis.Who;

/** What an owner calls about: of all that an owner can see, what lies furthest from a machine that works. */
final class Complaint {
    /** Standard deviations below which nothing strikes anybody; the owner then tells any one thing. */
    private static final double STRIKING = 2;

    private final Library library;

    Complaint(Library library) {
        this.library = library;
    }

    Observation of(Map<String, Observation> answers, SplittableRandom random) {
        List<Observation> seen = library.questions().stream()
                .filter(q -> q.effort().allowed(Who.OWNER))
                .map(q -> answers.get(q.id()))
                .filter(o -> o != null && o.kind() != Observation.Kind.UNKNOWN)
                .toList();
        if (seen.isEmpty()) {
            return Observation.unknown(library.questions().get(0).id());
        }
        Observation oddest =
                seen.stream().max(Comparator.comparingDouble(this::oddness)).orElseThrow();
        return oddness(oddest) >= STRIKING ? oddest : seen.get(random.nextInt(seen.size()));
    }

    /** How far an answer lies from a machine that works, in standard deviations or what is as rare. */
    private double oddness(Observation o) {
        int q = library.question(o.about());
        Question question = library.questions().get(q);
        double sum = 0;
        double square = 0;
        double same = 0;
        int n = 0;
        for (int k = 0; k < library.signatures().draws(0); k++) {
            float v = library.signatures().value(0, k, q);
            if (!Float.isNaN(v)) {
                n++;
                sum += v;
                square += v * v;
                same += (int) v == o.option() ? 1 : 0;
            }
        }
        if (n == 0) {
            return 0;
        }
        if (question.answering() instanceof Answering.Choice choice) {
            double chance = (same + choice.errorRate()) / (n + 1);
            return Math.sqrt(-2 * Math.log(Math.min(1, chance)));
        }
        double mean = sum / n;
        double variance = Math.max(0, square / n - mean * mean);
        return Math.abs(o.value() - mean)
                / Math.sqrt(variance + ((Answering.Number) question.answering()).variance(mean));
    }
}
