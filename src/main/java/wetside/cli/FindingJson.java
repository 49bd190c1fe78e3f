package wetside.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Danger;
import wetside.casework.Installed;
import wetside.casework.Precautions;
import wetside.casework.Session;
import wetside.casework.Signing;
import wetside.casework.Standing;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Parting;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.Step;
import wetside.kind.Words;
import wetside.procedure.Procedure;

/** A finding for programs; its fields are described in docs/commands.md. */
final class FindingJson {
    private static final int CAUSES = 12;
    private static final int STEPS = 8;
    private static final int INFORMATIVE = 3;

    private final Session session;
    private final Posterior posterior;
    private final Evidence evidence;

    private FindingJson(Session session) {
        this.session = session;
        posterior = session.posterior();
        evidence = session.evidence();
    }

    /** @param whyNot part of the name of a cause to be held against the best, or null */
    static Map<String, Object> of(
            Session session, Installed installed, String complaint, ShopChoice shop, String whyNot) {
        Map<String, Object> m = Json.machine(installed);
        m.put("complaint", complaint);
        m.put("who", People.word(session.who()));
        m.put("draws", Signing.drawn(session.library()));
        shop.jobs().ifPresent(jobs -> m.put("shopJobs", jobs));
        Standing standing = Standing.of(session.library());
        m.put("fewestSimulated", standing.fewest());
        m.put("mostSimulated", standing.most());
        FindingJson finding = new FindingJson(session);
        Advice advice = session.advice();
        finding.fill(m, advice);
        Optional<String> stop = Danger.saidTo(session.who(), complaint);
        if (stop.isPresent()) {
            m.put("stop", stop.get());
        } else {
            finding.steps(m, advice);
        }
        if (whyNot != null) {
            m.put("whyNot", finding.whyNot(whyNot));
        }
        return m;
    }

    private void fill(Map<String, Object> m, Advice advice) {
        m.put(
                "known",
                session.observations().entered().stream().map(this::known).toList());
        List<Posterior.Ranked> ranking = posterior.ranking();
        m.put("causes", ranking.stream().limit(CAUSES).map(this::cause).toList());
        m.put("found", session.isFound());
        boolean explained = session.isExplained();
        m.put("explained", explained);
        m.put("pairsTried", session.pairsTried());
        m.put(
                "odd",
                explained
                        ? List.of()
                        : session.plausibility().odd().stream()
                                .map(o -> o.observation().about())
                                .toList());
        m.put(
                "notToldApart",
                advice.alike().stream()
                        .map(a -> a.positions().stream().map(posterior::id).toList())
                        .toList());
    }

    private void steps(Map<String, Object> m, Advice advice) {
        m.put("next", step(advice.best()));
        m.put("steps", advice.steps().stream().limit(STEPS).map(this::step).toList());
        m.put(
                "byInformation",
                advice.byInformation().stream()
                        .limit(INFORMATIVE)
                        .map(this::step)
                        .toList());
    }

    private Map<String, Object> known(Observation o) {
        Map<String, Object> m = new LinkedHashMap<>();
        Asking asking = session.casework().asking(o.about()).orElse(null);
        m.put(asking == null ? "repair" : "reading", o.about());
        m.put("answer", asking == null ? "still bad" : Answers.words(asking, o));
        if (o.kind() == Observation.Kind.NUMBER && asking != null) {
            m.put("value", Json.number(o.value()));
            m.put("unit", asking.unit().symbol());
        }
        return m;
    }

    private Map<String, Object> cause(Posterior.Ranked r) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("cause", r.id());
        m.put("words", r.words());
        m.put("share", Json.number(r.share()));
        var range = posterior.range(r.position());
        m.put("range", List.of(Json.number(range.low()), Json.number(range.high())));
        m.put(
                "evidence",
                evidence.of(r.position()).stream().map(FindingJson::weight).toList());
        session.often(r.position())
                .ifPresent(o -> m.put("often", List.of(Json.number(o.shipped()), Json.number(o.here()))));
        return m;
    }

    private List<Map<String, Object>> whyNot(String part) {
        int best = posterior.best().position();
        return posterior.ranking().stream()
                .filter(r -> r.position() != best && r.position() != posterior.somethingElse())
                .filter(r -> r.id().contains(part) || r.words().contains(part))
                .map(r -> {
                    Map<String, Object> m = new LinkedHashMap<>();
                    m.put("cause", r.id());
                    m.put("share", Json.number(r.share()));
                    m.put("beside", posterior.id(best));
                    m.put(
                            "evidence",
                            evidence.of(r.position(), best).stream()
                                    .map(FindingJson::weight)
                                    .toList());
                    m.put(
                            "wouldPart",
                            Parting.of(posterior, r.position(), best).stream()
                                    .limit(INFORMATIVE)
                                    .map(p -> p.question().id())
                                    .toList());
                    return m;
                })
                .toList();
    }

    private static Map<String, Object> weight(Evidence.Weight w) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("about", w.observation().about());
        m.put("decibans", Json.number(w.decibans()));
        m.put("strength", w.strength().name().toLowerCase(Locale.ROOT));
        return m;
    }

    private Map<String, Object> step(Step s) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("sort", s.sort().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        m.put("id", s.id());
        m.put("says", s.words());
        m.put("who", People.word(s.effort().who()));
        m.put("panels", List.copyOf(s.effort().panels()));
        m.put("minutes", Json.number(s.minutes()));
        m.put("expectedCost", Json.number(s.expectedCost()));
        m.put("bits", Json.number(s.bits()));
        m.put("bitsPerMinute", Json.number(s.bitsPerMinute()));
        m.put("reason", s.reason());
        session.casework().asking(s.id()).ifPresent(asking -> {
            Procedure p = asking.procedure();
            m.put("say", p.ask());
            m.put("how", p.how());
            m.put("caution", asking.caution());
            m.put("tool", p.tool());
        });
        if (s.sort() == Step.Sort.REPAIR) {
            repair(s, m);
        }
        m.put("outcomes", s.outcomes().stream().map(FindingJson::outcome).toList());
        return m;
    }

    /** What can hurt, and what shows that it holds: of all that is done together. */
    private void repair(Step s, Map<String, Object> m) {
        List<Words.OfFault> words = Repair.parts(s.id()).stream()
                .flatMap(part -> session.mending(part).stream())
                .flatMap(c -> c.words().stream())
                .toList();
        String before = s.effort().who() == Who.OWNER
                ? ""
                : Precautions.beforeOpening(
                                session.casework().machine(), s.effort().panels())
                        + " ";
        m.put(
                "caution",
                words.stream()
                        .map(w -> w.remedy().caution())
                        .filter(c -> !c.isEmpty())
                        .distinct()
                        .collect(Collectors.joining("; ", before, ""))
                        .strip());
        m.put(
                "prove",
                words.stream().flatMap(w -> w.prove().stream()).distinct().toList());
    }

    private static Map<String, Object> outcome(Step.Outcome o) {
        Map<String, Object> m = new LinkedHashMap<>();
        if (o.option().isEmpty()) {
            m.put("low", Json.number(o.low()));
            m.put("high", Json.number(o.high()));
        } else {
            m.put("answer", o.option());
        }
        m.put("chance", Json.number(o.chance()));
        m.put("leaves", o.leaves().stream().map(Posterior.Ranked::id).toList());
        return m;
    }
}
