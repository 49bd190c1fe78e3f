package wetside.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import wetside.casework.Candidate;
import wetside.casework.Precautions;
import wetside.casework.Session;
import wetside.diagnosis.inference.Posterior;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.page.Level;
import wetside.units.Display;

/** The finding, once a cause stands out: the part for this revision, the order of work, what can hurt, what proves it. */
final class FaultCard {
    private FaultCard() {}

    /** Null while the causes are open. */
    static FaultView.Card of(Session session, FaultCase about, Display units) {
        Posterior.Ranked best = session.posterior().ranking().get(0);
        Candidate candidate = session.candidate(best.position()).orElse(null);
        if (!session.isFound() || candidate == null) {
            return null;
        }
        boolean saved = about.job() != null && about.job().finding().equals(best.id());
        var range = session.posterior().range(best.position());
        String share = Spoken.percent(best.share()) + ", " + Spoken.range(range.low(), range.high());
        if (candidate.words().isEmpty()) {
            return new FaultView.Card(
                    Spoken.capital(best.words()),
                    share,
                    "Nothing is wrong with the machine.",
                    "This is how it should be here.",
                    List.of(new FaultView.Fact("Do", "tell the owner what is normal here, and why")),
                    null,
                    List.of(),
                    saved,
                    best.id());
        }
        Words.OfFault words = candidate.words().get();
        Component part =
                session.casework().machine().component(candidate.component().orElseThrow());
        return new FaultView.Card(
                Spoken.capital(best.words()),
                share,
                Spoken.sentence(units.prose(words.says())),
                Spoken.sentence(units.prose(words.owner())),
                facts(session, words.remedy(), part.place(), units),
                caution(
                        List.of(words.remedy()),
                        units,
                        Precautions.beforeOpening(
                                session.casework().machine(), part.place().behind())),
                words.prove().stream().map(units::prose).toList(),
                saved,
                best.id());
    }

    private static List<FaultView.Fact> facts(Session session, Words.Remedy r, Component.Place place, Display units) {
        List<FaultView.Fact> facts = new ArrayList<>();
        String revision = session.casework().machine().identity().revision();
        if (!place.part().isEmpty()) {
            facts.add(new FaultView.Fact("Part", place.part() + ", for revision " + revision));
        }
        if (!place.mark().isEmpty()) {
            facts.add(new FaultView.Fact("Know it", place.mark()));
        }
        if (!place.behind().isEmpty()) {
            facts.add(new FaultView.Fact(
                    "Behind", String.join(", then ", panels(session.casework().machine(), place.behind()))));
        }
        facts.add(new FaultView.Fact("Who", Level.of(r.who()).words() + ", about " + Math.round(r.minutes()) + " min"));
        facts.add(new FaultView.Fact("Do", units.prose(r.does())));
        if (Level.of(r.who()) != Level.OWNER) {
            facts.add(new FaultView.Fact("After", Precautions.AFTER_OPENING));
        }
        return facts;
    }

    /** What can hurt in all that is done together, at the level of the worst of it; null when nothing can. */
    static FaultView.Caution caution(List<Words.Remedy> done, Display units, String opening) {
        Level level = done.stream()
                .map(r -> Level.of(r.who()))
                .max(Comparator.naturalOrder())
                .orElse(Level.OWNER);
        String says = done.stream()
                .map(r -> Spoken.sentence(units.prose(r.caution())))
                .filter(c -> !c.isEmpty())
                .distinct()
                .collect(Collectors.joining(" "));
        if (level == Level.OWNER) {
            return says.isEmpty() ? null : new FaultView.Caution(level, says, "");
        }
        return new FaultView.Caution(level, opening, (says + " " + Precautions.FIRST).strip());
    }

    /** Panels by their names. */
    static List<String> panels(Machine machine, Iterable<String> ids) {
        List<String> names = new ArrayList<>();
        ids.forEach(id -> names.add(machine.identity().panels().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .map(p -> p.name())
                .orElse(id)));
        return names;
    }
}
