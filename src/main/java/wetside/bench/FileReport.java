package wetside.bench;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import wetside.kind.Words;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.page.Level;
import wetside.page.Sheet;
import wetside.shop.Entry;

/** What was found and done, for the file: everything. */
final class FileReport {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("d MMM H:mm", Locale.ENGLISH);

    private final Dossier dossier;

    FileReport(Dossier dossier) {
        this.dossier = dossier;
    }

    Sheet sheet() {
        List<Sheet.Section> sections = new ArrayList<>();
        sections.add(new Sheet.Section("In the owner’s words", new Block.Prose("“" + dossier.job.complaint() + "”")));
        List<Block> found = new ArrayList<>(List.of(finding()));
        found.addAll(dossier.drawn());
        sections.add(new Sheet.Section("Finding", found));
        if (!dossier.measured.isEmpty()) {
            sections.add(new Sheet.Section("Readings as found and as left", readings()));
        }
        if (!dossier.used.isEmpty()) {
            sections.add(new Sheet.Section("Parts, for revision " + dossier.machine.revision(), parts()));
        }
        sections.add(new Sheet.Section("Proof after repair", proofTable()));
        sections.add(new Sheet.Section("Everything, in order", history()));
        List<Block> end = new ArrayList<>();
        end.add(new Block.Caution(
                Level.QUALIFIED,
                "Protective conductor and insulation: qualified electricians only",
                "Limits and intervals follow the local code, which comes before anything here."));
        end.addAll(dossier.signed());
        sections.add(new Sheet.Section("Signature", end));
        String lead = dossier.job.state().words()
                + (dossier.minutes > 0 ? ", " + Math.round(dossier.minutes) + " minutes of work" : "");
        return new Sheet(
                "Job " + dossier.job.number(),
                dossier.source(),
                dossier.plate(),
                Wording.capital(lead) + ".",
                sections,
                dossier.checks());
    }

    private Block finding() {
        if (dossier.job.finding().isEmpty()) {
            return new Block.Prose("None yet.");
        }
        String says = dossier.causes.stream().map(Words.OfFault::says).collect(Collectors.joining("; and "));
        return new Block.Prose(Wording.capital(dossier.found)
                + (says.isEmpty() ? "." : ": " + Dossier.stop(says))
                + dossier.whatItWas().map(w -> " " + w).orElse(""));
    }

    private Block readings() {
        List<Block.Row> rows = dossier.measured.stream()
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
                dossier.used.stream()
                        .map(u -> Block.Row.of(u.number(), u.name(), Long.toString(u.count())))
                        .toList(),
                "Number",
                "Part",
                "Count");
    }

    private Block proofTable() {
        return table(
                dossier.proof.items().stream()
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
        Set<Long> stands = dossier.standing.stream().map(Entry::id).collect(Collectors.toSet());
        return table(
                dossier.timeline.stream()
                        .map(e -> Block.Row.of(
                                MINUTE.format(e.at().atZone(dossier.zone)),
                                Timeline.heading(e),
                                (e.sort().equals("reading") ? dossier.units.prose(e.words()) : e.words())
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
}
