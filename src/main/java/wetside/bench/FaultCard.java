package wetside.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import wetside.casework.Candidate;
import wetside.casework.Precautions;
import wetside.casework.Session;
import wetside.diagnosis.inference.Posterior;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Wording;
import wetside.page.Level;
import wetside.units.Display;

/** The finding, once a cause stands out: the part for this revision, the order of work, what can hurt, what proves it. */
final class FaultCard {
    private FaultCard() {}

    /** Null while the causes are open. */
    static FaultView.Card of(Session session, FaultCase about, Display units) {
        Posterior.Ranked best = session.posterior().ranking().get(0);
        List<Candidate> causes = session.candidates(best.position());
        if (!session.isFound() || causes.isEmpty()) {
            return null;
        }
        boolean saved = about.job() != null && about.job().finding().equals(best.id());
        var range = session.posterior().range(best.position());
        String share = Spoken.percent(best.share()) + ", " + Spoken.range(range.low(), range.high());
        List<Words.OfFault> words =
                causes.stream().flatMap(c -> c.words().stream()).toList();
        if (words.isEmpty()) {
            return new FaultView.Card(
                    Wording.capital(best.words()),
                    share,
                    "Nothing is wrong with the machine.",
                    "This is how it should be here.",
                    List.of(new FaultView.Fact("Do", "tell the owner what is normal here, and why")),
                    null,
                    List.of(),
                    saved,
                    best.id());
        }
        Machine machine = session.casework().machine();
        Set<String> panels = new LinkedHashSet<>();
        causes.forEach(c -> panels.addAll(
                machine.component(c.component().orElseThrow()).place().behind()));
        return new FaultView.Card(
                Wording.capital(best.words()),
                share,
                all(words, w -> Wording.sentence(units.prose(w.says()))),
                all(words, w -> Wording.sentence(units.prose(w.owner()))),
                facts(session, causes, units),
                caution(
                        words.stream().map(Words.OfFault::remedy).toList(),
                        units,
                        Precautions.beforeOpening(machine, panels)),
                words.stream()
                        .flatMap(w -> w.prove().stream())
                        .distinct()
                        .map(units::prose)
                        .toList(),
                saved,
                best.id());
    }

    private static String all(List<Words.OfFault> words, Function<Words.OfFault, String> says) {
        return words.stream().map(says).filter(s -> !s.isEmpty()).distinct().collect(Collectors.joining(" "));
    }

    /** Of two causes at once one after the other, each under its name. */
    private static List<FaultView.Fact> facts(Session session, List<Candidate> causes, Display units) {
        List<FaultView.Fact> facts = new ArrayList<>();
        for (Candidate c : causes) {
            if (causes.size() > 1) {
                facts.add(new FaultView.Fact(
                        facts.isEmpty() ? "First" : "And",
                        Wording.capital(c.cause().words())));
            }
            Component part =
                    session.casework().machine().component(c.component().orElseThrow());
            facts.addAll(facts(session, c.words().orElseThrow().remedy(), part.place(), units));
        }
        return facts;
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
                .map(r -> Wording.sentence(units.prose(r.caution())))
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
