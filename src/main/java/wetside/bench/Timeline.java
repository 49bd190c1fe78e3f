package wetside.bench;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import wetside.shop.Entry;

/** What happened on a job, day by day; what was set right stands struck beside what is right. */
public final class Timeline {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm", Locale.ENGLISH);

    private Timeline() {}

    /** @param date as people say it */
    public record Day(String date, List<Line> lines) {}

    /**
     * @param struck  set right by a later entry, or taken back
     * @param was     of a correction: what it corrects
     * @param reading of a reading: the reading
     * @param photo   of a photo: its number
     */
    public record Line(
            Entry entry, String time, String heading, boolean struck, String was, Measured reading, Long photo) {}

    /** @param told in fault finding */
    static List<Day> days(List<Entry> kept, AsFound told, List<Measured> measured, ZoneId zone, LocalDate today) {
        List<Entry> entries = Stream.concat(kept.stream(), told.entries().stream())
                .sorted(Comparator.comparing(Entry::at))
                .toList();
        Map<Long, Measured> readings = new HashMap<>();
        measured.forEach(m -> readings.put(m.reading().entryId(), m));
        Map<Long, Entry> byId = new HashMap<>();
        entries.forEach(e -> byId.put(e.id(), e));
        Map<Long, Entry> setRight = new HashMap<>();
        entries.stream().filter(e -> e.corrects() != null).forEach(e -> setRight.put(e.corrects(), e));
        List<Day> days = new ArrayList<>();
        for (Entry e : entries) {
            ZonedDateTime at = e.at().atZone(zone);
            String day = (at.toLocalDate().equals(today) ? "Today, " : "") + DATE.format(at);
            if (days.isEmpty() || !days.get(days.size() - 1).date().equals(day)) {
                days.add(new Day(day, new ArrayList<>()));
            }
            Entry was = e.corrects() == null ? null : byId.get(e.corrects());
            days.get(days.size() - 1)
                    .lines()
                    .add(new Line(
                            e,
                            TIME.format(at),
                            heading(e),
                            setRight.containsKey(e.id()) || told.takenBack().contains(e.id()),
                            was == null ? "" : was.words(),
                            readings.get(e.id()),
                            e.sort().equals("photo") ? photo(e) : null));
        }
        return days;
    }

    private static Long photo(Entry e) {
        String digits = e.detail().replaceAll("\\D", "");
        return digits.isEmpty() ? null : Long.valueOf(digits);
    }

    static String heading(Entry e) {
        if (e.corrects() != null) {
            return "Correction";
        }
        return switch (e.sort()) {
            case "said" -> "Owner said";
            case "state" -> "Moved to";
            case "assigned" -> "Given out";
            case "work" -> "Work done";
            case "finding" -> "Finding";
            case "part" -> "Part used";
            case "reading" -> "Reading";
            case "proof" -> "Proof";
            case "photo" -> "Photo";
            case "time" -> "Time";
            case "signed" -> "Signature";
            case "yours" -> "For the owner to do";
            case "ours" -> "For us to do next";
            case "answer" -> "Answer";
            case "counts", "rates" -> "Rates";
            default -> "Note";
        };
    }
}
