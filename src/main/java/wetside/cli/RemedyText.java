package wetside.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import wetside.casework.Candidate;
import wetside.casework.Precautions;
import wetside.casework.Session;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Posterior;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;

/** Part, order of work and proof, once a cause stands out. */
final class RemedyText {
    private final Console console;
    private final Session session;

    RemedyText(Console console, Session session) {
        this.console = console;
        this.session = session;
    }

    /** The finding, when there is one: gives the repair it tells of, or nothing while the causes are open. */
    Optional<String> print() {
        Posterior.Ranked best = session.posterior().ranking().get(0);
        List<Candidate> candidates = session.candidates(best.position());
        if (!session.isFound() || candidates.isEmpty()) {
            return Optional.empty();
        }
        console.line("");
        console.text("Finding: ", best.words() + " (" + FindingText.percent(best.share()) + ")");
        String repair = session.posterior()
                .library()
                .causes()
                .get(best.position())
                .repair()
                .id();
        for (Candidate candidate : candidates) {
            if (candidate.words().isEmpty()) {
                console.text("  What it is   ", "nothing is wrong with the machine");
                console.text("  Do           ", "tell the owner what is normal here, and why");
            } else {
                Component part = session.casework()
                        .machine()
                        .component(candidate.component().orElseThrow());
                remedy(candidate.words().get(), part.place());
            }
        }
        return Optional.of(repair);
    }

    private void remedy(Words.OfFault words, Component.Place place) {
        Words.Remedy r = words.remedy();
        Who who = who(r);
        if (session.who() == Who.OWNER && !words.owner().isEmpty()) {
            console.text("  Tell         ", "“" + words.owner() + "”");
        }
        console.text("  What it is   ", words.says());
        if (!place.part().isEmpty()) {
            console.text(
                    "  Part         ",
                    place.part() + ", for revision "
                            + session.casework().machine().identity().revision());
        }
        if (!place.mark().isEmpty()) {
            console.text("  Know it      ", place.mark());
        }
        if (!place.behind().isEmpty()) {
            console.text("  Behind       ", String.join(", then ", panels(session, place.behind())));
        }
        console.text("  Who          ", People.allowed(who) + ", about " + Math.round(r.minutes()) + " min");
        safety(r, place.behind());
        console.text("  Do           ", r.does());
        if (who != Who.OWNER) {
            console.text("  After        ", Precautions.AFTER_OPENING);
        }
        if (!words.prove().isEmpty()) {
            console.text("  Prove it     ", String.join("; ", words.prove()));
        }
        console.line("  " + Precautions.FIRST);
    }

    /** What comes before hands do anything. */
    void safety(Words.Remedy r, Collection<String> panels) {
        if (who(r) != Who.OWNER) {
            console.text(
                    "  Before       ",
                    Precautions.beforeOpening(session.casework().machine(), panels));
        }
        if (!r.caution().isEmpty()) {
            console.text("  Caution      ", r.caution());
        }
    }

    private static Who who(Words.Remedy r) {
        return Who.values()[People.WORDS.indexOf(r.who())];
    }

    /** Panels by their names. */
    static List<String> panels(Session session, Iterable<String> ids) {
        List<String> names = new ArrayList<>();
        ids.forEach(id -> names.add(session.casework().machine().identity().panels().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .map(Machine.Panel::name)
                .orElse(id)));
        return names;
    }
}
