package wetside.run;

import java.util.Collection;
import java.util.List;
import wetside.machine.Node;

/** Something was named that this machine has not got; says what comes nearest. */
public final class NoSuchThing extends RuntimeException {
    private static final long serialVersionUID = 1;

    public NoSuchThing(String what, String said, Collection<String> known) {
        super(known.isEmpty() ? what : what + ". Maybe '" + Node.nearest(said, List.copyOf(known)) + "'.");
    }
}
