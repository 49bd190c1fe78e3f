package wetside.judging;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.inference.Calls;

/**
 * What an owner calls about: of all that an owner can see and that the cause brought about, what strikes most. Of a machine
 * with nothing wrong what lies furthest from others like it, or any one thing when nothing does.
 */
final class Complaint {
    /** Standard deviations from which on no tolerance explains it. */
    private static final double DEAD = 8;

    private final Library library;
    private final Calls calls;

    Complaint(Library library) {
        this.library = library;
        calls = new Calls(library);
    }

    /** Whether anybody would notice anything; answers as they truly are, with the cause and without. */
    boolean strikes(float[] values, float[] whole) {
        return calls.strikes(values, 0, whole, 0) >= Calls.STRIKING;
    }

    /** Whether a machine does what one does that works, as far as an owner can see. */
    boolean works(float[] whole) {
        return IntStream.range(0, whole.length).noneMatch(q -> calls.isSeen(q) && calls.oddness(q, whole[q]) >= DEAD);
    }

    /** What is told of a machine with something wrong. */
    Observation of(float[] values, float[] whole) {
        return most(seen(values), values, q -> calls.strikes(q, values[q], whole[q]));
    }

    /** What is told of a machine with nothing wrong. */
    Observation of(float[] whole, SplittableRandom random) {
        List<Integer> seen = seen(whole);
        boolean odd = seen.stream().anyMatch(q -> calls.oddness(q, whole[q]) >= Calls.STRIKING);
        return odd || seen.isEmpty()
                ? most(seen, whole, q -> calls.oddness(q, whole[q]))
                : said(seen.get(random.nextInt(seen.size())), whole);
    }

    private List<Integer> seen(float[] values) {
        return IntStream.range(0, values.length)
                .filter(q -> calls.isSeen(q) && !Float.isNaN(values[q]))
                .boxed()
                .toList();
    }

    private Observation most(List<Integer> seen, float[] values, java.util.function.ToDoubleFunction<Integer> how) {
        return seen.stream()
                .max(Comparator.comparingDouble(how))
                .map(q -> said(q, values))
                .orElseGet(() -> Observation.unknown(library.questions().get(0).id()));
    }

    private Observation said(int q, float[] values) {
        String id = library.questions().get(q).id();
        return library.questions().get(q).answering() instanceof Answering.Number
                ? Observation.number(id, values[q])
                : Observation.choice(id, (int) values[q]);
    }
}
