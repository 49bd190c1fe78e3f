package wetside.cli;

import java.util.List;
import wetside.diagnosis.Who;

/** Who may do what, as words and as a mark that needs no colour. */
final class People {
    /** As options and files name them, the least trained first. */
    static final List<String> WORDS = List.of("owner", "technician", "qualified");

    private static final String[] MARKS = {"○", "□", "△"};
    private static final String[] LONG = {"owner may do this", "technician", "qualified electrician only"};

    private People() {}

    /** @param said as on the command line, or null */
    static Who of(String said, Who usual) {
        if (said == null) {
            return usual;
        }
        int i = WORDS.indexOf(said);
        if (i < 0) {
            throw new BadArgument("--who is owner, technician or qualified, not '" + said + "'");
        }
        return Who.values()[i];
    }

    static String word(Who who) {
        return WORDS.get(who.ordinal());
    }

    static String mark(Who who) {
        return MARKS[who.ordinal()];
    }

    /** Mark and words at the head of a step. */
    static String allowed(Who who) {
        return mark(who) + " " + LONG[who.ordinal()];
    }
}
