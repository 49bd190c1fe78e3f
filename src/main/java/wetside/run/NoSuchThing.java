package wetside.run;

import java.util.Collection;
import wetside.machine.Wording;

/** Something was named that this machine has not got; says what comes nearest, or what there is. */
public final class NoSuchThing extends RuntimeException {
    private static final long serialVersionUID = 1;

    public NoSuchThing(String what, String said, Collection<String> known) {
        super(what + maybe(Wording.nearest(said, known), known), null, false, false);
    }

    private static String maybe(String near, Collection<String> known) {
        return near.isEmpty() ? (known.isEmpty() ? "" : "; " + Wording.thereAre(known)) : ". Maybe " + near + ".";
    }
}
