package wetside.casework;

import java.util.Optional;
import wetside.diagnosis.Cause;
import wetside.kind.Fault;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;

/**
 * A cause together with what it does to a machine: the changed copy the twin is run on.
 *
 * @param cause     as the inference knows it
 * @param component id of the part, empty for "works as it should"
 * @param meant     the part as it is meant to be, whatever its tolerances make of it, empty for "works as it should"
 * @param fault     what moves, empty for "works as it should"
 * @param words     what people are told, empty for "works as it should"
 */
public record Candidate(
        Cause cause,
        Optional<String> component,
        Optional<Component> meant,
        Optional<Fault> fault,
        Optional<Words.OfFault> words) {
    /** The machine with this cause in it, {@code severity} from just noticeable (0) to complete (1). */
    public Machine in(Machine machine, double severity) {
        if (fault.isEmpty() || component.isEmpty()) {
            return machine;
        }
        Component whole = machine.component(component.get());
        return machine.with(fault.get().on(whole, meant.orElse(whole), severity));
    }
}
