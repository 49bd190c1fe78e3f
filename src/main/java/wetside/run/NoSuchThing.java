package wetside.run;

import java.util.Collection;
import wetside.machine.Wording;

/** Something was named that this machine has not got; says what comes nearest. */
public final class NoSuchThing extends RuntimeException {
    private static final long serialVersionUID = 1;

    public NoSuchThing(String what, String said, Collection<String> known) {
        super(what + maybe(Wording.nearest(said, known)));
    }

    private static String maybe(String near) {
        return near.isEmpty() ? "" : ". Maybe " + near + ".";
    }
}
