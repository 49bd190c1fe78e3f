package wetside.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wetside.casework.Candidate;
import wetside.casework.Session;
import wetside.diagnosis.Cause;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Effort;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Overtaken;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Alike;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.machine.Wording;
import wetside.units.Display;

/** The causes with shares, ranges and reasons; bracketed where nothing that can be asked will part them. */
final class FaultCauses {
    private static final int REASONS = 3;
    /** Bits still unknown of the cause when one has four fifths of the belief, the rest spread over a dozen. */
    private static final double LEFT_WHEN_FOUND = 1.4;

    private final Session session;
    private final FaultCase about;
    private final Display units;
    private final boolean begun;
    private final Evidence evidence;
    private final Posterior posterior;

    /** @param begun not all causes have been run yet */
    FaultCauses(Session session, FaultCase about, Display units, boolean begun) {
        this.begun = begun;
        this.about = about;
        this.session = session;
        this.units = units;
        evidence = session.evidence();
        posterior = session.posterior();
    }

    FaultView.Causes of(Advice advice) {
        List<Posterior.Ranked> leading = session.leading();
        List<FaultView.Group> groups = new ArrayList<>();
        Set<Integer> told = new LinkedHashSet<>();
        for (Posterior.Ranked r : leading) {
            if (told.add(r.position())) {
                List<Posterior.Ranked> group = new ArrayList<>(List.of(r));
                Alike alike = advice.alike().stream()
                        .filter(a -> a.positions().contains(r.position()))
                        .findFirst()
                        .orElse(null);
                if (alike != null) {
                    leading.stream()
                            .filter(o -> alike.positions().contains(o.position()) && told.add(o.position()))
                            .forEach(group::add);
                }
                groups.add(group(group, alike, groups.isEmpty()));
            }
        }
        double rest = posterior.ranking().stream()
                .skip(leading.size())
                .mapToDouble(Posterior.Ranked::share)
                .sum();
        return new FaultView.Causes(
                groups,
                (posterior.ranking().size() - leading.size()) + " others, together",
                Spoken.percent(rest),
                spent(),
                toGo(advice),
                session.pairsTried() == 0 ? "" : "With " + session.pairsTried() + " pairs of causes among them.");
    }

    /** What is still unknown of the cause, at the pace at which the next question tells something. */
    private String toGo(Advice advice) {
        if (session.isFound()) {
            return "reached";
        }
        double unknown = 0;
        for (double share : posterior.shares()) {
            unknown -= share > 0 ? share * Math.log(share) / Math.log(2) : 0;
        }
        double bits = Math.max(0.5, unknown - LEFT_WHEN_FOUND);
        return advice.byInformation().stream()
                .findFirst()
                .map(s -> Math.max(1, Math.round(bits / s.bits() * Math.max(1, s.minutes()))) + " min")
                .orElse("nothing left to ask");
    }

    private FaultView.Group group(List<Posterior.Ranked> ranked, Alike alike, boolean first) {
        boolean bracket = ranked.size() > 1;
        String sentence = "";
        if (bracket) {
            String those = ranked.size() == 2 ? "these two" : "these";
            String who = session.who() == Who.OWNER ? " by what an owner can see" : "";
            sentence = "I cannot tell " + those + " apart" + who + "."
                    + alike.parting()
                            .map(q -> " What would: " + q.words() + " ("
                                    + Spoken.level(q.effort().who()).words() + ", "
                                    + Math.max(1, Math.round(q.effort().minutes())) + " min).")
                            .orElse(" Nothing that can be asked would; " + mended(ranked));
        }
        double sum = ranked.stream().mapToDouble(Posterior.Ranked::share).sum();
        return new FaultView.Group(
                bracket,
                Spoken.percent(sum),
                sentence,
                ranked.stream().map(this::cause).toList(),
                reasons(ranked.get(0), first ? REASONS : REASONS - 1));
    }

    private String mended(List<Posterior.Ranked> ranked) {
        List<Cause> causes = posterior.library().causes();
        long repairs = ranked.stream()
                .map(r -> causes.get(r.position()).repair().id())
                .distinct()
                .count();
        return repairs == 1 ? "the same repair mends them." : "a repair will.";
    }

    private FaultView.Cause cause(Posterior.Ranked r) {
        var range = posterior.range(r.position());
        return new FaultView.Cause(
                r.position() == posterior.somethingElse() && begun ? "Causes not run yet" : Wording.capital(r.words()),
                Spoken.percent(r.share()),
                Spoken.range(range.low(), range.high()),
                100 * r.share(),
                100 * range.low(),
                100 * range.high(),
                r.position() == posterior.somethingElse() ? "" : about.link("why", r.id()),
                parts(r));
    }

    /** Of two causes at once, both and what mends each. */
    private List<FaultView.Part> parts(Posterior.Ranked r) {
        List<Candidate> two = session.candidates(r.position());
        return two.size() < 2
                ? List.of()
                : two.stream()
                        .map(c -> new FaultView.Part(
                                c.cause().words(),
                                c.words().map(w -> w.remedy().does()).orElse(""),
                                Spoken.level(c.cause().repair().effort().who()),
                                Math.round(c.cause().repair().effort().minutes()) + " min"))
                        .toList();
    }

    private List<FaultView.Line> reasons(Posterior.Ranked r, int most) {
        if (r.position() == posterior.somethingElse()) {
            return List.of();
        }
        List<FaultView.Line> reasons = new ArrayList<>();
        evidence.of(r.position()).stream()
                .filter(w -> w.strength() != Evidence.Strength.NONE)
                .limit(most)
                .map(w -> new FaultView.Line(
                        w.speaksFor() ? "+" : "−",
                        said(w.observation()),
                        w.strength().name().toLowerCase(Locale.ROOT)))
                .forEach(reasons::add);
        if (!begun) {
            ShopRates.reason(session, r.position()).ifPresent(reasons::add);
        }
        return reasons;
    }

    String said(Observation o) {
        return session.casework()
                .asking(Earlier.reading(o.about()))
                .map(a -> o.about() + ": "
                        + (a.options().isEmpty() && o.kind() == Observation.Kind.NUMBER
                                ? Spoken.answer(a, o, "", units).replace("Open", "open")
                                : Spoken.answer(a, o, "", units).toLowerCase(Locale.ROOT)))
                .orElse(o.about() + " did not help");
    }

    /** How much an answer told of the leading causes. */
    String told(Observation o) {
        Evidence.Strength most = session.leading().stream()
                .filter(r -> r.position() != posterior.somethingElse())
                .flatMap(r -> evidence.of(r.position()).stream())
                .filter(w -> isOf(w.observation(), o))
                .map(Evidence.Weight::strength)
                .max(Enum::compareTo)
                .orElse(Evidence.Strength.NONE);
        return switch (most) {
            case STRONG -> "told much";
            case SOME -> "told some";
            case SLIGHT -> "told little";
            case NONE -> "told nothing";
        };
    }

    /** Whether this is what an answer counts as; one given before a repair goes by another name since. */
    private static boolean isOf(Observation counted, Observation answer) {
        return counted.kind() == answer.kind()
                && counted.value() == answer.value()
                && Overtaken.now(counted.about()).equals(answer.about());
    }

    private String spent() {
        double minutes = 0;
        Set<String> panels = new LinkedHashSet<>();
        for (Observation o : session.observations()) {
            if (o.kind() != Observation.Kind.UNKNOWN) {
                Effort effort = session.casework()
                        .asking(o.about())
                        .map(a -> a.question().effort())
                        .or(() -> session.mending(o.about())
                                .map(c -> c.cause().repair().effort()))
                        .orElse(Effort.minutes(0));
                minutes += effort.minutes();
                panels.addAll(effort.panels());
            }
        }
        double off = session.casework().machine().identity().panels().stream()
                .filter(p -> panels.contains(p.id()))
                .mapToDouble(p -> p.minutes())
                .sum();
        String opened = panels.isEmpty() ? "" : panels.size() == 1 ? ", 1 panel" : ", " + panels.size() + " panels";
        return Math.round(minutes + off) + " min" + opened;
    }
}
