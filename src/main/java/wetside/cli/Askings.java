package wetside.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.diagnosis.Observation;
import wetside.machine.Wording;

/** The readings of a machine, called by their names or a part of them, and answered as people type. */
final class Askings {
    private static final int NAMED = 6;

    private final Casework casework;

    Askings(Casework casework) {
        this.casework = casework;
    }

    /** A name that fits no reading, or several; the message says which there are. */
    static final class NoReading extends RuntimeException {
        private static final long serialVersionUID = 1;

        NoReading(String message) {
            super(message, null, false, false);
        }
    }

    /** All with a word in their names. */
    List<Asking> with(String word) {
        String lower = word.toLowerCase(Locale.ROOT);
        return casework.askings().stream()
                .filter(a -> id(a).toLowerCase(Locale.ROOT).contains(lower))
                .toList();
    }

    /** The one of this name, or the only one with these words in its name. */
    Asking named(String name) {
        Optional<Asking> exact = casework.asking(name);
        if (exact.isPresent()) {
            return exact.get();
        }
        List<Asking> with = with(name);
        if (with.size() == 1) {
            return with.get(0);
        }
        if (with.isEmpty()) {
            String near = Wording.nearest(
                    name, casework.askings().stream().map(Askings::id).toList());
            throw new NoReading("No reading \"" + name + "\"."
                    + (near.isEmpty() ? " Type list to see them." : " Maybe " + near + "."));
        }
        String names =
                String.join("; ", with.stream().limit(NAMED).map(Askings::id).toList());
        throw new NoReading("\"" + name + "\" may be " + names
                + (with.size() > NAMED ? "; and " + (with.size() - NAMED) + " more" : "") + ".");
    }

    /**
     * An answer to {@code asked}, or to another reading as {@code reading: answer}.
     *
     * @param asked null when nothing is asked
     */
    Observation answer(String said, Asking asked) {
        int colon = said.indexOf(':');
        if (colon > 0) {
            Asking named = named(said.substring(0, colon).strip());
            return Answers.parse(
                    named, completed(named, said.substring(colon + 1).strip()));
        }
        if (asked == null) {
            throw new NoReading(
                    "Nothing is asked here. Give a reading by name (READING: ANSWER), or type list or help.");
        }
        return Answers.parse(asked, completed(asked, said));
    }

    /** The number of an option stands for it; a number alone is in the unit asked for; a comma may be the point. */
    private static String completed(Asking asked, String said) {
        if (!asked.options().isEmpty()) {
            boolean number = said.matches("\\d{1,2}");
            int i = number ? Integer.parseInt(said) : 0;
            return i >= 1 && i <= asked.options().size() ? asked.options().get(i - 1) : said;
        }
        String point = said.replaceFirst("^([+-]?\\d+),(\\d+)", "$1.$2");
        return point.matches("[+-]?\\d+(\\.\\d+)?")
                ? (point + " " + asked.unit().symbol()).strip()
                : point;
    }

    static String id(Asking asking) {
        return asking.question().id();
    }
}
