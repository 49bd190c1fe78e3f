package wetside.casework;

import java.util.List;
import java.util.Optional;
import wetside.kind.Fault;
import wetside.machine.Parameter;

/** A machine one of whose faults makes a part that cannot be: the twin refuses to run it. */
public final class Mistaken {
    private Mistaken() {}

    /** The same machine, but the fault's figures are none. */
    public static Casework of(Casework sound, String cause) {
        return sound.mistaken(c -> c.cause().id().equals(cause) ? without(c) : c);
    }

    private static Candidate without(Candidate c) {
        Fault fault = c.fault().orElseThrow();
        Parameter moved = fault.shifts().get(0).parameter();
        Fault none = new Fault(fault.name(), fault.sort(), List.of(Fault.set(moved, Double.NaN)), fault.rate());
        return new Candidate(c.cause(), c.component(), c.meant(), Optional.of(none), c.words());
    }
}
