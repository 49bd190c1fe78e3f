package wetside.bench;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import wetside.casework.Casework;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.machine.Wording;
import wetside.units.Display;

/** What this very machine read when it left here well, and whether that counts. */
final class FaultNormal {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter LONG_AGO = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    /** Field of a link that leaves the earlier readings out. */
    static final String FIELD = "normal";

    static final String WITHOUT = "without";

    private FaultNormal() {}

    /** Null when there is nothing. */
    static FaultView.Normal of(FaultCase about, Casework casework, Display units, ZoneId zone, int year) {
        Observations normal = about.normal(casework);
        if (normal.size() == 0) {
            return null;
        }
        List<FaultView.Line> lines = normal.stream()
                .map(o -> new FaultView.Line("", Wording.capital(o.about()), said(casework, o, units)))
                .toList();
        String day = about.earlier().stream()
                .filter(e -> normal.about(e.asked()).isPresent())
                .map(FaultCase.Earlier::at)
                .max(java.util.Comparator.naturalOrder())
                .map(at -> at.atZone(zone))
                .map(at -> (at.getYear() == year ? DAY : LONG_AGO).format(at))
                .orElse("");
        String words = about.narrowed()
                ? "Narrowed by " + (lines.size() == 1 ? "a reading" : "readings") + " of " + day
                : (lines.size() == 1 ? "The reading" : "Readings") + " of " + day + (lines.size() == 1 ? " is" : " are")
                        + " left out";
        return new FaultView.Normal(words, about.narrowed(), lines, toggle(about));
    }

    private static String said(Casework casework, Observation o, Display units) {
        return casework.asking(o.about())
                .map(a -> Spoken.answer(a, o, "", units))
                .orElse("");
    }

    private static String toggle(FaultCase about) {
        return about.narrowed()
                ? about.link(FIELD, WITHOUT)
                : FaultCase.linked(
                        about.address(),
                        about.fields().stream()
                                .filter(f -> !f.name().equals(FIELD))
                                .toList());
    }
}
