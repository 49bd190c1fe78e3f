package wetside.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wetside.casework.Candidates;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.page.Level;
import wetside.page.Sheet;
import wetside.shop.Reading;

/** What was found and done, for the owner in plain words. */
final class OwnerReport {
    private final Dossier dossier;

    OwnerReport(Dossier dossier) {
        this.dossier = dossier;
    }

    Sheet sheet() {
        List<Sheet.Section> sections = new ArrayList<>();
        sections.add(new Sheet.Section("You told us", new Block.Prose("“" + dossier.job.complaint() + "”")));
        List<Block> was = new ArrayList<>();
        dossier.whatItWas().ifPresent(w -> was.add(new Block.Prose(w)));
        was.addAll(dossier.drawn());
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
        end.add(new Block.Prose(dossier.checks()));
        end.addAll(dossier.signed());
        sections.add(new Sheet.Section("Signature", end));
        return new Sheet("What we found and did", dossier.source(), dossier.plate(), lead(), sections, "");
    }

    /** One plain sentence or two before anything else; what an owner was to do until the repair is over by now. */
    private String lead() {
        if (dossier.job.finding().isEmpty()) {
            return "We are still looking for what it is.";
        }
        if (dossier.job.finding().equals(Candidates.HEALTHY)) {
            return "Your machine works as it should; nothing had to be repaired.";
        }
        String said = dossier.causes.stream()
                .map(w -> w.owner().split("; ", 2)[0])
                .filter(o -> !o.isEmpty())
                .collect(Collectors.joining("; and "));
        String what = said.isEmpty() ? dossier.found : said;
        String did = dossier.used.isEmpty()
                ? ""
                : " We have fitted a new "
                        + dossier.used.stream()
                                .map(u -> u.name().replaceAll(",.*", ""))
                                .distinct()
                                .collect(Collectors.joining(" and a new "))
                        + ".";
        return "We found this: " + Dossier.stop(what) + did + proved();
    }

    /** How far the repair is proved. */
    private String proved() {
        if (dossier.proof.failed() > 0) {
            return " It has not passed a check after the repair: it stays off until it has.";
        }
        if (dossier.proof.passed() == dossier.proof.items().size()) {
            return " It has passed every check after the repair.";
        }
        return dossier.proof.passed() == 0 ? "" : " It has passed the checks made so far; some are still to do.";
    }

    /** Readings taken both as found and as left, each with its rail. */
    private Optional<Sheet.Section> beforeAndAfter() {
        Map<String, Reading> found = latest("found");
        List<Block.Row> rows = new ArrayList<>();
        List<Block.Drawing> drawings = new ArrayList<>();
        List<Block> rails = new ArrayList<>();
        for (Measured m : dossier.measured) {
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
        dossier.measured.stream()
                .map(Measured::reading)
                .filter(r -> r.phase().equals(phase))
                .forEach(r -> all.put(r.asked(), r));
        return all;
    }

    private Optional<Block> todo(String sort) {
        List<String> words = dossier.standing.stream()
                .filter(e -> e.sort().equals(sort))
                .map(e -> "– " + e.words())
                .toList();
        return words.isEmpty() ? Optional.empty() : Optional.of(new Block.Prose(words));
    }
}
