package wetside.judging;

import java.util.List;
import wetside.casework.TwinFailed;

/** A job whose machine the twin could not run. */
final class Unplayable extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Positions of the hidden causes that were in the machine. */
    private final transient List<Integer> truth;

    Unplayable(List<Integer> truth, TwinFailed why) {
        super(why.getMessage(), why);
        this.truth = truth;
    }

    List<Integer> truth() {
        return truth;
    }
}
