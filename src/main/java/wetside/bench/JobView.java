package wetside.bench;

import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wetside.casework.Casework;
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
 * @param options what forms offer
 * @param finding the cause agreed on, in words
 * @param typed   what was typed and could not be saved, kept
 */
public record JobView(
        Job job,
        Plate plate,
        List<Step> rail,
        List<Timeline.Day> days,
        List<Measured> measured,
        Proof proof,
        List<Shelf.Use> used,
        List<Part> fitting,
        List<Photos.Photo> photos,
        double minutes,
        Optional<Closing.Signature> signature,
        JobLists.Options options,
        String finding,
        String person,
        Typed typed) {
    /** Longer than this no page waits for what a machine should read; it is there at the next look. */
    private static final Duration PATIENCE = Duration.ofMillis(1500);

    /** A state on the rail. */
    public record Step(JobState state, boolean passed, boolean here) {}

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

    /** What the shop has of a job, asked for over one connection. */
    private record Kept(
            Plate plate,
            List<Entry> timeline,
            List<Reading> readings,
            AsFound told,
            List<Shelf.Use> used,
            List<Part> fitting,
            List<Photos.Photo> photos,
            double minutes,
            Optional<Closing.Signature> signature) {
        /** What was told before anything was read comes first. */
        private List<Reading> read() {
            return Stream.concat(told.readings().stream(), readings.stream()).toList();
        }

        static Kept of(Workshop w, Job job, Set<String> numbers, Display units) {
            return new Kept(
                    Plate.of(w, job, units),
                    w.jobs().timeline(job.id()),
                    w.readings().of(job.id()),
                    AsFound.of(w.answered().all(job.id())),
                    w.shelf().used(job.id()),
                    numbers.isEmpty() ? List.of() : w.shelf().among(numbers),
                    w.photos().of(job.id()),
                    w.closing().minutes(job.id()),
                    w.closing().signature(job.id()));
        }
    }

    static JobView of(Workshop w, Job job, Display units, String person, Typed typed, JobLists lists) {
        RegisteredMachine machine = w.register().machine(job.machineId());
        Optional<Casework> casework = casework(w, machine);
        JobLists.Options options = casework.map(c -> lists.of(c, units)).orElse(JobLists.NONE);
        Kept kept = w.shop().together(() -> Kept.of(w, job, options.parts(), units));
        List<Measured> measured = Measured.all(w, machine, casework, kept.read(), PATIENCE);
        return new JobView(
                job,
                kept.plate(),
                rail(job.state()),
                Timeline.days(
                        said(kept.timeline(), casework),
                        kept.told(),
                        measured,
                        w.clock().getZone(),
                        LocalDate.now(w.clock())),
                measured,
                Proof.of(casework, job.finding(), kept.timeline()),
                kept.used(),
                kept.fitting(),
                kept.photos(),
                kept.minutes(),
                kept.signature(),
                options,
                Found.words(casework, job.finding()),
                person,
                typed);
    }

    private static List<Entry> said(List<Entry> timeline, Optional<Casework> casework) {
        return timeline.stream().map(e -> Found.said(casework, e)).toList();
    }

    /** A job can be worked on when its machine's file is gone: only what is computed is missing. */
    static Optional<Casework> casework(Workshop w, RegisteredMachine machine) {
        try {
            return Optional.of(w.models().casework(machine));
        } catch (BadFile | NoSuchThing | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static List<Step> rail(JobState state) {
        List<Step> rail = new ArrayList<>();
        for (JobState s : JobState.values()) {
            rail.add(new Step(s, s.ordinal() < state.ordinal(), s == state));
        }
        return rail;
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
}
