package wetside.bench;

import java.time.Duration;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wetside.casework.Candidates;
import wetside.casework.Casework;
import wetside.kind.Words;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.page.Level;
import wetside.page.Sheet;
import wetside.shop.Closing;
import wetside.shop.Entry;
import wetside.shop.Job;
import wetside.shop.Owner;
import wetside.shop.Reading;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shelf;
import wetside.units.Display;

/** What was found and done on a job, on paper: for the owner in plain words, for the file with everything. */
final class JobReport {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("d MMM yyyy H:mm", Locale.ENGLISH);

    /** How wide the cabinet is drawn, of the sheet. */
    private static final double DRAWN = 0.2;

    /** A sheet that is printed and kept is worth waiting for what the machine should read. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Job job;
    private final RegisteredMachine machine;
    private final Owner owner;
    private final String title;
    private final ZoneId zone;
    private final List<Entry> standing;
    private final List<Entry> timeline;
    private final List<Measured> measured;
    private final Proof proof;
    private final List<Shelf.Use> used;
    private final List<Words.OfFault> causes;
    private final Optional<Closing.Signature> signature;
    private final double minutes;
    private final Display units;
    private final List<Block.Drawing> where;

    /** @param units those the reader chose */
    JobReport(Workshop w, Job job, Display units) {
        this.units = units;
        this.job = job;
        machine = w.register().machine(job.machineId());
        owner = w.register().owner(machine.ownerId());
        title = w.models().title(machine);
        zone = w.clock().getZone();
        timeline = w.jobs().timeline(job.id());
        Set<Long> setAside = timeline.stream()
                .filter(e -> e.corrects() != null)
                .map(Entry::corrects)
                .collect(Collectors.toSet());
        standing = timeline.stream().filter(e -> !setAside.contains(e.id())).toList();
        Optional<Casework> casework = JobView.casework(w, machine);
        AsFound told = AsFound.of(w.answered().standing(job.id()));
        List<Reading> read = Stream.concat(told.readings().stream(), w.readings().of(job.id()).stream())
                .toList();
        measured = Measured.all(w, machine, casework, read, PATIENCE).stream()
                .map(m -> new Measured(in(units, m.reading()), m.rail()))
                .toList();
        where = casework.stream()
                .flatMap(c -> Proof.causes(c, job.finding()).stream()
                        .flatMap(x -> x.component().stream())
                        .distinct()
                        .flatMap(id ->
                                Whereabouts.of(machine, c.machine(), c.machine().component(id), DRAWN).stream()))
                .toList();
        proof = Proof.of(casework, job.finding(), timeline);
        used = w.shelf().used(job.id());
        causes = casework.stream()
                .flatMap(c -> Proof.causes(c, job.finding()).stream())
                .flatMap(c -> c.words().stream())
                .toList();
        signature = w.closing().signature(job.id());
        minutes = w.closing().minutes(job.id());
    }

    /** Where what was found sits. */
    private List<Block> drawn() {
        return where.isEmpty() ? List.of() : List.of(where.size() == 1 ? where.get(0) : new Block.Drawings(where));
    }

    private static Reading in(Display units, Reading r) {
        return new Reading(
                r.id(),
                r.phase(),
                r.asked(),
                units.prose(r.said()),
                r.verdict(),
                r.who(),
                r.at(),
                r.entryId(),
                r.expected() == null ? null : units.prose(r.expected()),
                r.value(),
                r.low(),
                r.high());
    }

    private Sheet.Plate plate() {
        return Sheet.Plate.of(
                "Machine", title, "Serial", machine.serial(), "Fed from", machine.fedFrom(), "Owner", owner.name());
    }

    private String source() {
        return DAY.format(job.moved().atZone(zone)) + ", job " + job.number();
    }

    Sheet forOwner() {
        List<Sheet.Section> sections = new ArrayList<>();
        sections.add(new Sheet.Section("You told us", new Block.Prose("“" + job.complaint() + "”")));
        List<Block> was = new ArrayList<>();
        whatItWas().ifPresent(w -> was.add(new Block.Prose(w)));
        was.addAll(drawn());
        if (!was.isEmpty()) {
            sections.add(new Sheet.Section("What it was", was));
        }
        beforeAndAfter().ifPresent(sections::add);
        todo("yours").ifPresent(b -> sections.add(new Sheet.Section("Yours to do", b)));
        todo("ours").ifPresent(b -> sections.add(new Sheet.Section("Ours to do", b)));
        List<Block> end = new ArrayList<>();
        end.add(new Block.Caution(
                Level.OWNER,
                "Please leave the case shut",
                "Inside it is hot, under pressure and live, also for a while after switching off."));
        end.add(new Block.Prose(checks()));
        end.addAll(signed());
        sections.add(new Sheet.Section("Signature", end));
        return new Sheet("What we found and did", source(), plate(), lead(), sections, "");
    }

    Sheet forFile() {
        List<Sheet.Section> sections = new ArrayList<>();
        sections.add(new Sheet.Section("In the owner’s words", new Block.Prose("“" + job.complaint() + "”")));
        List<Block> found = new ArrayList<>(List.of(finding()));
        found.addAll(drawn());
        sections.add(new Sheet.Section("Finding", found));
        if (!measured.isEmpty()) {
            sections.add(new Sheet.Section("Readings as found and as left", readings()));
        }
        if (!used.isEmpty()) {
            sections.add(new Sheet.Section("Parts, for revision " + machine.revision(), parts()));
        }
        sections.add(new Sheet.Section("Proof after repair", proofTable()));
        sections.add(new Sheet.Section("Everything, in order", history()));
        List<Block> end = new ArrayList<>();
        end.add(new Block.Caution(
                Level.QUALIFIED,
                "Protective conductor and insulation: qualified electricians only",
                "Limits and intervals follow the local code, which comes before anything here."));
        end.addAll(signed());
        sections.add(new Sheet.Section("Signature", end));
        String lead = job.state().words() + (minutes > 0 ? ", " + Math.round(minutes) + " minutes of work" : "");
        return new Sheet("Job " + job.number(), source(), plate(), Wording.capital(lead) + ".", sections, checks());
    }

    /** One plain sentence or two before anything else; what an owner was to do until the repair is over by now. */
    private String lead() {
        if (job.finding().isEmpty()) {
            return "We are still looking for what it is.";
        }
        if (job.finding().equals(Candidates.HEALTHY)) {
            return "Your machine works as it should; nothing had to be repaired.";
        }
        String said = causes.stream()
                .map(w -> w.owner().split("; ", 2)[0])
                .filter(o -> !o.isEmpty())
                .collect(Collectors.joining("; and "));
        String what = said.isEmpty() ? job.finding() : said;
        String did = used.isEmpty()
                ? ""
                : " We have fitted a new "
                        + used.stream()
                                .map(u -> u.name().replaceAll(",.*", ""))
                                .distinct()
                                .collect(Collectors.joining(" and a new "))
                        + ".";
        return "We found this: " + stop(what) + did + proved();
    }

    /** How far the repair is proved. */
    private String proved() {
        if (proof.failed() > 0) {
            return " It has not passed a check after the repair: it stays off until it has.";
        }
        if (proof.passed() == proof.items().size()) {
            return " It has passed every check after the repair.";
        }
        return proof.passed() == 0 ? "" : " It has passed the checks made so far; some are still to do.";
    }

    private Optional<String> whatItWas() {
        return standing.stream()
                .filter(e -> e.sort().equals("finding"))
                .reduce((a, b) -> b)
                .map(e -> e.words().startsWith(job.finding() + ". ")
                        ? e.words().substring(job.finding().length() + 2)
                        : "")
                .filter(w -> !w.isEmpty());
    }

    private Block finding() {
        if (job.finding().isEmpty()) {
            return new Block.Prose("None yet.");
        }
        String says = causes.stream().map(Words.OfFault::says).collect(Collectors.joining("; and "));
        return new Block.Prose(Wording.capital(job.finding())
                + (says.isEmpty() ? "." : ": " + stop(says))
                + whatItWas().map(w -> " " + w).orElse(""));
    }

    /** Readings taken both as found and as left, each with its rail. */
    private Optional<Sheet.Section> beforeAndAfter() {
        Map<String, Reading> found = latest("found");
        List<Block.Row> rows = new ArrayList<>();
        List<Block.Drawing> drawings = new ArrayList<>();
        List<Block> rails = new ArrayList<>();
        for (Measured m : measured) {
            Reading r = m.reading();
            if (r.phase().equals("left")) {
                String before =
                        found.containsKey(r.asked()) ? found.get(r.asked()).said() + " → " : "";
                if (m.rail() == null) {
                    rows.add(Block.Row.of(Wording.capital(r.asked()), before + r.said(), m.expected()));
                } else {
                    String words = Wording.capital(r.asked()) + ": " + before + r.said();
                    String svg = PaperRail.svg(m.rail());
                    drawings.add(new Block.Drawing(svg, words, words + " (should be " + m.expected() + ")", 0.45));
                }
            }
        }
        if (!drawings.isEmpty()) {
            rails.add(new Block.Drawings(drawings));
        }
        if (!rows.isEmpty()) {
            rails.add(new Block.Table(
                    List.of(
                            Block.Column.words("Read"),
                            Block.Column.words("Before → after"),
                            Block.Column.words("Should be")),
                    rows));
        }
        if (rails.isEmpty()) {
            return Optional.empty();
        }
        if (!drawings.isEmpty()) {
            rails.add(new Block.Prose(
                    "Grey: where it should be on your machine. Dotted: as it came. Solid: as it leaves."));
        }
        return Optional.of(new Sheet.Section("Before and after", rails));
    }

    private Map<String, Reading> latest(String phase) {
        Map<String, Reading> all = new LinkedHashMap<>();
        measured.stream()
                .map(Measured::reading)
                .filter(r -> r.phase().equals(phase))
                .forEach(r -> all.put(r.asked(), r));
        return all;
    }

    private Optional<Block> todo(String sort) {
        List<String> words = standing.stream()
                .filter(e -> e.sort().equals(sort))
                .map(e -> "– " + e.words())
                .toList();
        return words.isEmpty() ? Optional.empty() : Optional.of(new Block.Prose(words));
    }

    private Block readings() {
        List<Block.Row> rows = measured.stream()
                .map(Measured::reading)
                .map(r -> new Block.Row(
                        null,
                        !r.verdict().isEmpty() && !r.verdict().equals("as expected"),
                        List.of(
                                r.asked(),
                                "as " + r.phase(),
                                r.said(),
                                r.expected() == null ? "–" : r.expected(),
                                (RailBox.sign(r.verdict()) + " " + r.verdict()).strip(),
                                r.who())))
                .toList();
        return table(rows, "Reading", "When", "Read", "Expected", "", "By");
    }

    private Block parts() {
        return table(
                used.stream()
                        .map(u -> Block.Row.of(u.number(), u.name(), Long.toString(u.count())))
                        .toList(),
                "Number",
                "Part",
                "Count");
    }

    private Block proofTable() {
        return table(
                proof.items().stream()
                        .map(i -> new Block.Row(
                                i.level(),
                                i.result().equals("failed"),
                                List.of(i.what(), i.result().isEmpty() ? "to do" : i.result(), i.read(), i.who())))
                        .toList(),
                "Check",
                "Result",
                "Read",
                "By");
    }

    private Block history() {
        Set<Long> stands = standing.stream().map(Entry::id).collect(Collectors.toSet());
        return table(
                timeline.stream()
                        .map(e -> Block.Row.of(
                                MINUTE.format(e.at().atZone(zone)),
                                e.corrects() != null ? "correction" : e.sort(),
                                (e.sort().equals("reading") ? units.prose(e.words()) : e.words())
                                        + (stands.contains(e.id()) ? "" : " [set right below]"),
                                e.who()))
                        .toList(),
                "When",
                "What",
                "Words",
                "By");
    }

    private static Block table(List<Block.Row> rows, String... heads) {
        return new Block.Table(List.of(heads).stream().map(Block.Column::words).toList(), rows);
    }

    private List<Block> signed() {
        List<Block> blocks = new ArrayList<>();
        signature.ifPresent(s -> {
            if (!s.strokes().isEmpty()) {
                String svg =
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"300\" height=\"80\" viewBox=\"0 0 600 160\">"
                                + "<path d=\"" + Strokes.path(s.strokes())
                                + "\" fill=\"none\" stroke=\"#16201C\" stroke-width=\"4\" stroke-linecap=\"round\"/></svg>";
                blocks.add(new Block.Drawing(svg, "Signature of " + s.name(), "", 0.4));
            }
            blocks.add(new Block.Prose("Signed by " + s.name() + ", " + DAY.format(s.at().atZone(zone))));
        });
        if (signature.isEmpty()) {
            blocks.add(new Block.Prose("Signed by  ______________________________   on  ______________"));
        }
        return blocks;
    }

    private String checks() {
        long all = proof.items().size();
        return proof.passed() == all
                ? "All " + all + " checks after repair passed."
                : proof.passed() + " of " + all + " checks after repair passed so far"
                        + (proof.failed() == 0 ? "." : ", " + proof.failed() + " failed.");
    }

    private static String stop(String words) {
        return words.endsWith(".") ? words : words + ".";
    }
}
