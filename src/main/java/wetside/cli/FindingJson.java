package wetside.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.casework.Answers;
import wetside.casework.Session;
import wetside.diagnosis.Observation;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Plausibility;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.Step;

/** A finding for programs. */
final class FindingJson {
    private FindingJson() {}

    static Map<String, Object> of(Session session, String complaint) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("machine", session.casework().machine().identity().title());
        m.put("revision", session.casework().machine().identity().revision());
        m.put("complaint", complaint);
        m.put("draws", Signing.drawn(session.library()));
        m.put(
                "known",
                session.observations().entered().stream()
                        .map(o -> known(session, o))
                        .toList());
        Evidence evidence = session.evidence();
        m.put(
                "causes",
                session.posterior().ranking().stream()
                        .limit(12)
                        .map(r -> cause(session.posterior(), evidence, r))
                        .toList());
        Plausibility p = session.plausibility();
        m.put("explained", p.plausible());
        m.put("odd", p.odd().stream().map(o -> o.observation().about()).toList());
        Advice advice = session.advice();
        m.put(
                "not told apart",
                advice.alike().stream()
                        .map(a -> a.positions().stream()
                                .map(session.posterior()::id)
                                .toList())
                        .toList());
        m.put("next", step(advice.best()));
        m.put(
                "best by information",
                advice.byInformation().stream().limit(3).map(FindingJson::step).toList());
        m.put("steps", advice.steps().stream().limit(8).map(FindingJson::step).toList());
        return m;
    }

    private static Map<String, Object> known(Session session, Observation o) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("reading", o.about());
        m.put(
                "answer",
                session.casework()
                        .asking(o.about())
                        .map(a -> Answers.words(a, o))
                        .orElse("still there"));
        return m;
    }

    private static Map<String, Object> cause(Posterior posterior, Evidence evidence, Posterior.Ranked r) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("cause", r.id());
        m.put("words", r.words());
        m.put("share", Json.number(r.share()));
        var range = posterior.range(r.position());
        m.put("range", List.of(Json.number(range.low()), Json.number(range.high())));
        m.put(
                "evidence",
                evidence.of(r.position()).stream()
                        .map(w -> {
                            Map<String, Object> e = new LinkedHashMap<>();
                            e.put("reading", w.observation().about());
                            e.put("decibans", Json.number(w.decibans()));
                            e.put("strength", w.strength().name().toLowerCase(Locale.ROOT));
                            return e;
                        })
                        .toList());
        return m;
    }

    private static Map<String, Object> step(Step s) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("sort", s.sort().name().toLowerCase(Locale.ROOT).replace('_', ' '));
        m.put("id", s.id());
        m.put("says", s.words());
        m.put("minutes", Json.number(s.minutes()));
        m.put("expected cost", Json.number(s.expectedCost()));
        m.put("bits", Json.number(s.bits()));
        m.put("bits per minute", Json.number(s.bitsPerMinute()));
        m.put("reason", s.reason());
        return m;
    }
}
