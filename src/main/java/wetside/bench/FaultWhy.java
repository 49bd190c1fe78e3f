package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wetside.casework.Asking;
import wetside.casework.Candidates;
import wetside.casework.Session;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Observation;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Parting;
import wetside.diagnosis.inference.Posterior;
import wetside.machine.Wording;
import wetside.units.Display;

/** Why a cause, or why not: what every answer says of it, beside what it should have said. */
final class FaultWhy {
    private final Session session;
    private final FaultCase about;
    private final Display units;
    private final FaultCauses causes;
    private final Posterior posterior;

    FaultWhy(Session session, FaultCase about, Display units, FaultCauses causes) {
        this.session = session;
        this.about = about;
        this.units = units;
        this.causes = causes;
        posterior = session.posterior();
    }

    /** Null when there is no such cause. */
    FaultView.Why of(String cause) {
        return posterior.ranking().stream()
                .filter(r -> r.id().equals(cause) && r.position() != posterior.somethingElse())
                .findFirst()
                .map(this::why)
                .orElse(null);
    }

    private FaultView.Why why(Posterior.Ranked r) {
        Posterior.Ranked best = posterior.best();
        boolean rival = r.position() != best.position();
        List<Evidence.Weight> weights = rival
                ? session.evidence().of(r.position(), best.position())
                : session.evidence().of(r.position());
        var range = posterior.range(r.position());
        List<Evidence.Weight> loud = weights.stream()
                .filter(w -> w.strength() != Evidence.Strength.NONE)
                .toList();
        return new FaultView.Why(
                (rival ? "Why not: " : "Why: ") + r.words(),
                share(r.share(), range.low(), range.high()),
                says(r, best, rival, loud),
                loud.stream().map(w -> reason(w, r, best, rival)).toList(),
                silent(weights),
                rival ? parting(r, best) : null);
    }

    private static String share(double share, double low, double high) {
        String range = Spoken.range(low, high);
        return Spoken.percent(share) + (range.contains("–") ? ", " + range + " %" : "");
    }

    private String says(Posterior.Ranked r, Posterior.Ranked best, boolean rival, List<Evidence.Weight> loud) {
        String often = "How often it happens, before anything was known: "
                + Spoken.percent(posterior.library().causes().get(r.position()).weight()
                        / posterior.library().causes().stream()
                                .mapToDouble(c -> c.weight())
                                .sum())
                + session.often(r.position())
                        .map(o -> " in this shop, " + Spoken.percent(o.shipped()) + " as shipped")
                        .orElse("")
                + ".";
        if (loud.isEmpty()) {
            return (rival
                            ? "Nothing known parts it from " + best.words() + ". "
                            : "Nothing known speaks for or against it. ")
                    + often;
        }
        if (!rival) {
            return often + " Below, what every answer has added.";
        }
        String most = session.evidence()
                .whyNot(r.position())
                .map(w -> Wording.capital(causes.said(w.observation())) + " speaks most against it, beside "
                        + best.words() + ". ")
                .orElse("No answer speaks against it, beside " + best.words() + ". ");
        return most + often;
    }

    private FaultView.Reason reason(Evidence.Weight w, Posterior.Ranked r, Posterior.Ranked best, boolean rival) {
        return new FaultView.Reason(
                w.speaksFor() ? "+" : "−",
                Wording.capital(causes.said(w.observation())),
                w.strength().name().toLowerCase(Locale.ROOT),
                expect(w.observation(), r, best, rival));
    }

    /** What it should have been if it is this, the likeliest, or nothing; by all that is known besides. */
    private FaultView.Expect expect(Observation o, Posterior.Ranked r, Posterior.Ranked best, boolean rival) {
        Optional<Asking> asking = session.casework().asking(o.about());
        if (asking.isEmpty() || o.kind() == Observation.Kind.UNKNOWN) {
            return null;
        }
        Session without = session.knowingWithPairs(session.observations().without(o));
        List<Posterior.Ranked> rows = new ArrayList<>(List.of(r));
        if (rival) {
            rows.add(best);
        }
        posterior.ranking().stream()
                .filter(h -> h.id().equals(Candidates.HEALTHY) && !rows.contains(h))
                .forEach(rows::add);
        return new FaultExpectation(without, units).beside(asking.get(), o, rows);
    }

    private String silent(List<Evidence.Weight> weights) {
        List<String> words = weights.stream()
                .filter(w -> w.strength() == Evidence.Strength.NONE)
                .filter(w -> w.observation().kind() != Observation.Kind.UNKNOWN)
                .filter(w -> w.observation()
                        .about()
                        .equals(Earlier.reading(w.observation().about())))
                .map(w -> causes.said(w.observation()))
                .toList();
        return words.isEmpty() ? "" : "Says nothing of it: " + String.join("; ", words) + ".";
    }

    private FaultView.Parting parting(Posterior.Ranked r, Posterior.Ranked best) {
        List<Parting> open = Parting.of(posterior, r.position(), best.position());
        Optional<Parting> here = open.stream()
                .filter(p -> p.question().effort().allowed(session.who()))
                .findFirst();
        return here.or(() -> open.stream().findFirst())
                .map(p -> parting(p, here.isPresent()))
                .orElse(new FaultView.Parting("Nothing that can still be asked would part the two.", "", "", null, ""));
    }

    private FaultView.Parting parting(Parting p, boolean allowed) {
        Effort effort = p.question().effort();
        return new FaultView.Parting(
                "What would part the two:",
                Wording.capital(p.question().words()),
                allowed ? about.link("step", p.question().id()) : "",
                Spoken.level(effort.who()),
                Math.max(1, Math.round(effort.minutes())) + " min");
    }

    /** The causes that are not named, each with what speaks most against it. */
    FaultView.Rest rest() {
        List<Posterior.Ranked> ranking = posterior.ranking();
        List<Posterior.Ranked> others = ranking.subList(session.leading().size(), ranking.size());
        double sum = others.stream().mapToDouble(Posterior.Ranked::share).sum();
        return new FaultView.Rest(
                others.size() + " other causes, " + Spoken.percent(sum) + " together",
                others.stream().map(this::unlikely).toList());
    }

    private FaultView.Unlikely unlikely(Posterior.Ranked r) {
        boolean known = r.position() != posterior.somethingElse();
        String says = !known
                ? "whatever the twin does not know"
                : session.evidence()
                        .whyNot(r.position())
                        .map(w -> causes.said(w.observation()))
                        .orElse(r.share() == 0 ? "cannot be seen on this machine where it stands" : "seldom happens");
        return new FaultView.Unlikely(
                Wording.capital(r.words()), Spoken.percent(r.share()), says, known ? about.link("why", r.id()) : "");
    }
}
