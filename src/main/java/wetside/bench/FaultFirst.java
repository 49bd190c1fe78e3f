package wetside.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.diagnosis.Hazard;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;

/**
 * What to ask while the twin has not run this machine yet: what the owner's words are about, then what costs least and opens
 * nothing. Whatever the causes turn out to be, these are asked early.
 */
final class FaultFirst {
    private static final int MOST = 8;
    /** Of the owner's words. */
    private static final int SIGNS = 3;

    private FaultFirst() {}

    /** @param meant it is what the owner's words are about */
    record First(Asking asking, boolean meant) {}

    /** What the owner's words are about, likeliest first: the sign kept when the job was taken in, then what shares words. */
    static List<Asking> meant(Casework casework, FaultCase about, Observations known, Who who) {
        Stream<Asking> kept = casework.asking(about.rates().complaint()).stream();
        Stream<Asking> alike =
                new Signs(casework).of(about.complaint(), "", SIGNS).stream().map(Signs.Sign::asking);
        return Stream.concat(kept, alike)
                .distinct()
                .filter(a -> isOpen(a, known, who))
                .toList();
    }

    static List<First> of(Casework casework, FaultCase about, Observations known, Who who) {
        List<First> first = new ArrayList<>();
        meant(casework, about, known, who).forEach(a -> first.add(new First(a, true)));
        casework.askings().stream()
                .filter(a -> isOpen(a, known, who) && isEasy(a))
                .filter(a -> first.stream().noneMatch(f -> f.asking() == a))
                .sorted(Comparator.comparingDouble(a -> a.question().effort().minutes()))
                .limit(MOST - first.size())
                .forEach(a -> first.add(new First(a, false)));
        return first;
    }

    private static boolean isOpen(Asking a, Observations known, Who who) {
        return a.question().effort().allowed(who)
                && known.about(a.question().id()).isEmpty();
    }

    private static boolean isEasy(Asking a) {
        return a.question().effort().panels().isEmpty()
                && a.question().effort().hazard() == Hazard.NONE
                && a.question().effort().who() == Who.OWNER;
    }
}
