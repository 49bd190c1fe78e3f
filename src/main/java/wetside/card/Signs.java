package wetside.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.casework.LibraryBuild;
import wetside.diagnosis.Answering;
import wetside.diagnosis.Library;
import wetside.diagnosis.Signatures;

/** What a machine reads when it is whole, and when one part of it has failed in each of its ways: the twin, asked. */
final class Signs {
    /** A reading that never comes when whole counts as this many standard deviations, and nothing counts more. */
    private static final double SURE = 8;

    private final Casework casework;
    private final Library library;

    private Signs(Casework casework, Library library) {
        this.casework = casework;
        this.library = library;
    }

    /** @param whole the machine's casework with all its causes */
    static Signs of(Casework whole, String component, int draws) {
        List<String> causes = whole.candidates().stream()
                .filter(c -> c.component().filter(component::equals).isPresent())
                .map(c -> c.cause().id())
                .toList();
        Casework about = whole.about(causes);
        return new Signs(about, new LibraryBuild(about).upTo(draws, about.empty(), sharper -> {}));
    }

    List<Asking> askings() {
        return casework.askings();
    }

    Expected whole(Asking asking) {
        return expected(0, asking);
    }

    Expected when(String cause, Asking asking) {
        return expected(library.cause(cause), asking);
    }

    private Expected expected(int cause, Asking asking) {
        return Expected.of(asking, values(cause, asking));
    }

    private double[] values(int cause, Asking asking) {
        Signatures s = library.signatures();
        int q = library.question(asking.question().id());
        return IntStream.range(0, s.draws(cause))
                .mapToDouble(k -> s.value(cause, k, q))
                .toArray();
    }

    /** How clearly a reading tells a cause from a whole machine, in standard deviations of what it reads when whole. */
    double clearness(String cause, Asking asking) {
        int c = library.cause(cause);
        Expected normally = whole(asking);
        Expected then = expected(c, asking);
        if (asking.question().answering() instanceof Answering.Choice choice) {
            double apart = choice.options().stream()
                    .mapToDouble(o -> Math.abs(normally.shares().getOrDefault(o, 0.0)
                            - then.shares().getOrDefault(o, 0.0)))
                    .sum();
            return SURE * apart / 2 * (1 - choice.errorRate());
        }
        Answering.Number number = (Answering.Number) asking.question().answering();
        double scatter = (normally.high() - normally.low()) / 3.29;
        double clear = Math.abs(then.middle() - normally.middle())
                / Math.sqrt(scatter * scatter + number.variance(normally.middle()));
        return Double.isNaN(clear) ? 0 : Math.min(SURE, clear);
    }

    /** Readings that tell a cause, the clearest first, then what takes least time. */
    List<Card.Notice> notices(String cause, List<Asking> from, double least) {
        List<Card.Notice> notices = new ArrayList<>();
        for (Asking asking : from) {
            double clear = clearness(cause, asking);
            if (clear >= least) {
                notices.add(new Card.Notice(asking, whole(asking), when(cause, asking), clear));
            }
        }
        notices.sort(Comparator.comparingDouble((Card.Notice n) -> -Math.rint(n.clearness()))
                .thenComparingDouble(n -> n.asking().question().effort().minutes()));
        return notices;
    }
}
