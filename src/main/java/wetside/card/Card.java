package wetside.card;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import wetside.cabinet.Fitted;
import wetside.cabinet.Reach;
import wetside.casework.Asking;
import wetside.casework.Expected;
import wetside.diagnosis.Who;
import wetside.kind.Words;
import wetside.machine.Component;

/**
 * All there is to say of a part.
 *
 * @param number    on every drawing of the machine
 * @param words     of its kind
 * @param level     the least trained person who may work on it
 * @param reader    for whom the card is: nothing on it is beyond this person
 * @param fitted    where it sits, empty for what is outside the case or beyond the reader
 * @param reach     how to get at it, empty likewise
 * @param lookAlike what it could be taken for
 * @param fails     the most frequent first
 * @param settings  what it is set to
 * @param makings   its part in every making of the machine
 * @param withheld  checks that are beyond the reader
 */
public record Card(
        Component part,
        OptionalInt number,
        Words words,
        Who level,
        Who reader,
        Optional<Fitted> fitted,
        Optional<Reach> reach,
        Optional<LookAlike> lookAlike,
        List<Failure> fails,
        List<Check> checks,
        List<Setting> settings,
        List<Making> makings,
        int withheld) {

    /**
     * @param share   of this part's failures
     * @param notices what the reader could notice, the clearest first
     */
    public record Failure(String name, Words.OfFault words, double share, List<Notice> notices) {}

    /** A reading that is another than it should be. */
    public record Notice(Asking asking, Expected normally, Expected then, double clearness) {}

    /**
     * @param direct  true when it reads this part itself
     * @param minutes panels included
     */
    public record Check(Asking asking, Expected expected, boolean direct, double minutes) {}

    /** @param source where the value is from */
    public record Setting(String name, String value, String source, String meaning) {}

    /**
     * @param making  revision, and supply where there are several
     * @param part    part number, may be empty
     * @param differs what is set otherwise than in the card's own making, or that it is not there
     * @param own     the making the card is about
     */
    public record Making(String making, String part, String differs, boolean own) {}
}
