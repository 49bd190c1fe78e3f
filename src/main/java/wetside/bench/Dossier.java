package wetside.bench;

import java.time.Duration;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wetside.casework.Casework;
import wetside.kind.Words;
import wetside.page.Block;
import wetside.page.Sheet;
import wetside.shop.Closing;
import wetside.shop.Entry;
import wetside.shop.Job;
import wetside.shop.Owner;
import wetside.shop.Reading;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shelf;
import wetside.units.Display;

/** All that the reports of a job are written from, and what stands on each of them. */
final class Dossier {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    /** How wide the cabinet is drawn, of the sheet. */
    private static final double DRAWN = 0.2;

    /** A sheet that is printed and kept is worth waiting for what the machine should read. */
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    final Job job;
    final RegisteredMachine machine;
    final Owner owner;
    final String title;
    final ZoneId zone;
    final List<Entry> standing;
    /** As read by people. */
    final List<Entry> timeline;

    final String found;
    final List<Measured> measured;
    final Proof proof;
    final List<Shelf.Use> used;
    final List<Words.OfFault> causes;
    final Optional<Closing.Signature> signature;
    final double minutes;
    final Display units;
    final List<Block.Drawing> where;

    /** @param units those the reader chose */
    Dossier(Workshop w, Job job, Display units) {
        this.units = units;
        this.job = job;
        machine = w.register().machine(job.machineId());
        owner = w.register().owner(machine.ownerId());
        title = w.models().title(machine);
        zone = w.clock().getZone();
        List<Entry> kept = w.jobs().timeline(job.id());
        Set<Long> setAside = kept.stream()
                .filter(e -> e.corrects() != null)
                .map(Entry::corrects)
                .collect(Collectors.toSet());
        standing = kept.stream().filter(e -> !setAside.contains(e.id())).toList();
        Optional<Casework> casework = JobView.casework(w, machine);
        found = Found.words(casework, job.finding());
        timeline = kept.stream().map(e -> Found.said(casework, e)).toList();
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

    /** Where what was found sits. */
    List<Block> drawn() {
        return where.isEmpty() ? List.of() : List.of(where.size() == 1 ? where.get(0) : new Block.Drawings(where));
    }

    Sheet.Plate plate() {
        return Sheet.Plate.of(
                "Machine", title, "Serial", machine.serial(), "Fed from", machine.fedFrom(), "Owner", owner.name());
    }

    String source() {
        return DAY.format(job.moved().atZone(zone)) + ", job " + job.number();
    }

    /** What was seen of the finding. */
    Optional<String> whatItWas() {
        return standing.stream()
                .filter(e -> e.sort().equals("finding"))
                .reduce((a, b) -> b)
                .map(e -> e.words().startsWith(job.finding() + ". ")
                        ? e.words().substring(job.finding().length() + 2)
                        : "")
                .filter(w -> !w.isEmpty());
    }

    List<Block> signed() {
        List<Block> blocks = new ArrayList<>();
        signature.ifPresent(s -> {
            if (!s.strokes().isEmpty()) {
                String svg =
                        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"300\" height=\"80\" viewBox=\"0 0 600 160\">"
                                + "<path d=\"" + Strokes.path(s.strokes())
                                + "\" fill=\"none\" stroke=\"#16201C\" stroke-width=\"4\" stroke-linecap=\"round\"/></svg>";
                blocks.add(new Block.Drawing(svg, "Signature of " + s.name(), "", 0.4));
            }
            blocks.add(new Block.Prose((s.strokes().isEmpty() ? "Signed, by typing the name: " : "Signed by ")
                    + s.name() + ", " + DAY.format(s.at().atZone(zone)) + "."));
        });
        if (signature.isEmpty()) {
            blocks.add(new Block.Prose("Signed by  ______________________________   on  ______________"));
        }
        return blocks;
    }

    String checks() {
        long all = proof.items().size();
        return proof.passed() == all
                ? "All " + all + " checks after repair passed."
                : proof.passed() + " of " + all + " checks after repair passed so far"
                        + (proof.failed() == 0 ? "." : ", " + proof.failed() + " failed.");
    }

    static String stop(String words) {
        return words.endsWith(".") ? words : words + ".";
    }
}
