package wetside.bench;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.diagnosis.Observation;
import wetside.machine.BadFile;
import wetside.run.NoSuchThing;
import wetside.shop.Closing;
import wetside.shop.Entry;
import wetside.shop.Job;
import wetside.shop.JobState;
import wetside.shop.Part;
import wetside.shop.Photos;
import wetside.shop.Reading;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shelf;
import wetside.units.Display;

/**
 * A job as its page shows it.
 *
 * @param askings by the state the machine is in, in the order of doing
 * @param finding the cause agreed on, in words
 * @param typed   what was typed and could not be saved, kept
 */
public record JobView(
        Job job,
        Plate plate,
        List<Step> rail,
        List<Day> days,
        List<Measured> measured,
        Proof proof,
        List<Shelf.Use> used,
        List<Part> fitting,
        List<Photos.Photo> photos,
        double minutes,
        Optional<Closing.Signature> signature,
        Map<String, List<Asking>> askings,
        List<String> causes,
        String finding,
        String person,
        Typed typed) {
    /** Longer than this no page waits for what a machine should read; it is there at the next look. */
    private static final Duration PATIENCE = Duration.ofMillis(1500);

    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("H:mm", Locale.ENGLISH);

    /** A state on the rail. */
    public record Step(JobState state, boolean passed, boolean here) {}

    /** @param date as people say it */
    public record Day(String date, List<Line> lines) {}

    /**
     * @param struck  set right by a later entry
     * @param was     of a correction: what it corrects
     * @param reading of a reading: the reading
     * @param photo   of a photo: its number
     */
    public record Line(
            Entry entry, String time, String heading, boolean struck, String was, Measured reading, Long photo) {}

    /** @param rail null for words, and when nothing is expected */
    public record Measured(Reading reading, RailBox rail) {
        public String expected() {
            return reading.expected() == null ? "" : reading.expected();
        }
    }

    /**
     * What was typed into a form that could not be saved.
     *
     * @param form    which, "" for none
     * @param trouble why it could not
     */
    public record Typed(String form, Map<String, String> fields, String trouble) {
        static final Typed NOTHING = new Typed("", Map.of(), "");

        public String field(String of, String field) {
            return of.equals(form) ? fields.getOrDefault(field, "") : "";
        }

        public boolean open(String of) {
            return of.equals(form);
        }
    }

    static JobView of(Workshop w, Job job, Display units, String person, Typed typed) {
        RegisteredMachine machine = w.register().machine(job.machineId());
        Optional<Casework> casework = casework(w, machine);
        List<Entry> timeline = w.jobs().timeline(job.id());
        List<Measured> measured = measured(w, machine, casework, w.readings().of(job.id()), PATIENCE);
        return new JobView(
                job,
                Plate.of(w, job, units),
                rail(job.state()),
                days(timeline, measured, w.clock().getZone(), LocalDate.now(w.clock())),
                measured,
                Proof.of(casework, job.finding(), timeline),
                w.shelf().used(job.id()),
                casework.map(c -> w.shelf().among(numbers(c))).orElse(List.of()),
                w.photos().of(job.id()),
                w.closing().minutes(job.id()),
                w.closing().signature(job.id()),
                casework.map(JobView::askings).orElse(Map.of()),
                casework.map(c ->
                                c.candidates().stream().map(x -> x.cause().id()).toList())
                        .orElse(List.of()),
                casework.flatMap(c -> Proof.cause(c, job.finding()))
                        .map(c -> c.cause().words())
                        .orElse(job.finding()),
                person,
                typed);
    }

    /** A job can be worked on when its machine's file is gone: only what is computed is missing. */
    static Optional<Casework> casework(Workshop w, RegisteredMachine machine) {
        try {
            return Optional.of(w.models().casework(machine));
        } catch (BadFile | NoSuchThing | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static TreeSet<String> numbers(Casework casework) {
        return casework.machine().components().stream()
                .map(c -> c.place().part())
                .filter(p -> !p.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Map<String, List<Asking>> askings(Casework casework) {
        Map<String, List<Asking>> all = new LinkedHashMap<>();
        casework.routines().forEach((name, routine) -> {
            List<Asking> here = casework.askings().stream()
                    .filter(a -> a.procedure().routine().equals(name))
                    .toList();
            if (!here.isEmpty()) {
                all.put(routine.says(), here);
            }
        });
        return all;
    }

    /** With what was expected when it was read; where that was not kept, what is expected now. */
    static List<Measured> measured(
            Workshop w, RegisteredMachine machine, Optional<Casework> casework, List<Reading> all, Duration patience) {
        boolean kept = all.stream().allMatch(r -> r.expected() != null);
        Map<String, Expected> expected =
                kept || casework.isEmpty() ? Map.of() : w.models().expected(machine, patience);
        Map<String, Double> before = new HashMap<>();
        List<Measured> measured = new ArrayList<>();
        for (Reading r : all) {
            Reading full = r.expected() != null ? r : completed(r, expected.get(r.asked()));
            boolean left = r.phase().equals("left");
            measured.add(new Measured(
                    full, RailBox.of(full.low(), full.high(), full.value(), left ? before.get(r.asked()) : null)));
            if (!left && full.value() != null) {
                before.put(r.asked(), full.value());
            }
        }
        return measured;
    }

    private static Reading completed(Reading r, Expected e) {
        if (e == null) {
            return r;
        }
        try {
            Reading.Taken t = taken(e.asking(), r.phase(), r.said(), e, Display.METRIC);
            return new Reading(
                    r.id(),
                    r.phase(),
                    r.asked(),
                    r.said(),
                    t.verdict(),
                    r.who(),
                    r.at(),
                    r.entryId(),
                    t.expected(),
                    t.value(),
                    t.low(),
                    t.high());
        } catch (Answers.NotAnAnswer notOfThisMachine) {
            return r;
        }
    }

    /**
     * A reading as typed, with what is expected of it.
     *
     * @param e null when nothing is
     */
    static Reading.Taken taken(Asking asking, String phase, String typed, Expected e, Display units) {
        boolean bare = asking.options().isEmpty() && typed.matches("-?\\d+([.,]\\d+)?");
        String whole = bare ? typed.replace(',', '.') + " " + units.unit(asking.dimension()).symbol() : typed;
        Observation o = Answers.parse(asking, whole);
        String said = Answers.words(asking, o);
        boolean number = o.kind() == Observation.Kind.NUMBER;
        boolean band = number && e != null && e.isNumber() && !Double.isNaN(e.middle());
        return new Reading.Taken(
                phase,
                asking.question().id(),
                said,
                RailBox.verdict(e, o),
                e == null ? null : e.words(),
                number ? o.value() : null,
                band ? e.low() : null,
                band ? e.high() : null);
    }

    private static List<Step> rail(JobState state) {
        List<Step> rail = new ArrayList<>();
        for (JobState s : JobState.values()) {
            rail.add(new Step(s, s.ordinal() < state.ordinal(), s == state));
        }
        return rail;
    }

    private static List<Day> days(List<Entry> entries, List<Measured> measured, ZoneId zone, LocalDate today) {
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
                            setRight.containsKey(e.id()),
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

    private static String heading(Entry e) {
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

    public static String capital(String words) {
        return Spoken.capital(words);
    }

    /** "1 h 34", "20 min". */
    public String spent() {
        long all = Math.round(minutes);
        return all < 60 ? all + " min" : all / 60 + " h " + String.format(Locale.ROOT, "%02d", all % 60);
    }

    /** What the parts cost, where every price is known; else "–". */
    public String cost() {
        if (used.isEmpty() || used.stream().anyMatch(u -> u.price() == null)) {
            return "–";
        }
        return String.format(
                Locale.ROOT,
                "%.2f",
                used.stream().mapToDouble(u -> u.count() * u.price()).sum());
    }

    /** What a procedure is answered with: its unit, or its words. */
    public static String answeredBy(Asking a, Display units) {
        return a.options().isEmpty() ? units.unit(a.dimension()).symbol() : String.join(" / ", a.options());
    }
}
