package wetside.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.judging.Belief;
import wetside.judging.Calibration;
import wetside.judging.Interval;
import wetside.judging.NotPlayed;
import wetside.judging.Outcome;
import wetside.judging.Policy;
import wetside.judging.Tally;
import wetside.judging.Verdict;

/** An evaluation for programs. */
final class VerdictJson {
    private final Judged judged;
    private final Verdict verdict;

    VerdictJson(Judged judged) {
        this.judged = judged;
        verdict = judged.verdict();
    }

    Map<String, Object> whole() {
        Map<String, Object> m = Json.machine(judged.installed());
        m.put("jobs", judged.jobs());
        m.put("wanted", judged.wanted());
        m.put("incomplete", judged.isIncomplete());
        m.put("seed", judged.seed());
        m.put("draws", judged.draws());
        Map<String, Object> policies = new LinkedHashMap<>();
        if (!verdict.played().isEmpty()) {
            verdict.policies().forEach(p -> policies.put(p.word(), policy(p)));
            m.put("calibration", calibration(verdict.calibration(Policy.PLAN), verdict.limit(Policy.PLAN)));
            m.put(
                    "calibrationAtEnd",
                    calibration(verdict.calibrationAtEnd(Policy.PLAN), verdict.limitAtEnd(Policy.PLAN)));
            m.put("two", two());
        }
        m.put("policies", policies);
        m.put("notPlayed", verdict.notPlayed().stream().map(this::notPlayed).toList());
        m.put("played", verdict.played().stream().map(this::played).toList());
        return m;
    }

    private Map<String, Object> policy(Policy p) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("means", p.means());
        m.put("all", tally(verdict.tally(p)));
        if (p != Policy.PLAN) {
            Interval r = verdict.ratio(p);
            m.put("oursCosts", List.of(Json.number(r.value()), Json.number(r.low()), Json.number(r.high())));
        }
        Map<String, Object> sorts = new LinkedHashMap<>();
        verdict.bySort(p).forEach((sort, t) -> sorts.put(sort, tally(t)));
        m.put("bySort", sorts);
        return m;
    }

    private static Map<String, Object> tally(Tally t) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("jobs", t.n());
        m.put("first", Json.number(t.first()));
        m.put("firstThree", Json.number(t.three()));
        m.put("toldFirst", Json.number(t.toldFirst()));
        m.put("rightRepair", Json.number(t.repair()));
        m.put("minutes", Json.number(t.minutes()));
        m.put("cost", Json.number(t.cost()));
        m.put("questions", Json.number(t.questions()));
        m.put("wrongParts", Json.number(t.wrongParts()));
        m.put("hazardMinutes", Json.number(t.hazard()));
        m.put("handedOver", Json.number(t.handedOver()));
        m.put("touched", Json.number(t.touched()));
        m.put("alarm", Json.number(t.alarm()));
        m.put("brier", Json.number(t.brier()));
        m.put("logScore", Json.number(t.log()));
        m.put("covered", Json.number(t.covered()));
        return m;
    }

    private Map<String, Object> two() {
        Verdict.Two two = verdict.two(Policy.PLAN);
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("said", Json.number(two.said()));
        m.put("were", Json.number(two.were()));
        return m;
    }

    private static Map<String, Object> calibration(Calibration c, double limit) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("error", Json.number(c.error()));
        m.put("limit", Json.number(limit));
        List<Map<String, Object>> bins = new ArrayList<>();
        for (Calibration.Bin b : c.bins()) {
            Map<String, Object> bin = new LinkedHashMap<>();
            bin.put("jobs", b.n());
            bin.put("said", Json.number(b.confidence()));
            bin.put("right", Json.number(b.right()));
            bin.put("interval", List.of(Json.number(b.low()), Json.number(b.high())));
            bins.add(bin);
        }
        m.put("bins", bins);
        return m;
    }

    private Map<String, Object> played(Verdict.Played p) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("job", p.job().number());
        m.put("sort", p.job().sort());
        m.put("truth", truth(p.job().truth()));
        Map<String, Object> outcomes = new LinkedHashMap<>();
        p.outcomes().forEach((policy, o) -> outcomes.put(policy.word(), outcome(o)));
        m.put("outcomes", outcomes);
        return m;
    }

    private Map<String, Object> notPlayed(NotPlayed n) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("job", n.number());
        m.put("truth", truth(n.truth()));
        m.put("by", n.by());
        m.put("reason", n.reason());
        return m;
    }

    private List<String> truth(List<Integer> truth) {
        return truth.stream().map(judged.casework()::cause).toList();
    }

    private Map<String, Object> outcome(Outcome o) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("cost", Json.number(o.cost()));
        m.put("minutes", Json.number(o.minutes()));
        m.put("questions", o.questions());
        m.put("wrongParts", o.wrongParts());
        m.put("handedOver", o.handedOver());
        m.put("alarm", o.alarm());
        m.put("covered", o.first().covered());
        m.put("steps", o.steps().stream().map(this::step).toList());
        m.put("whenDoing", belief(o.first()));
        m.put("inTheEnd", belief(o.last()));
        return m;
    }

    private Map<String, Object> step(Outcome.Step s) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("id", s.id());
        m.put("answer", CourseText.answer(s, judged.casework()));
        m.put("first", s.told());
        m.put("share", Json.number(s.top()));
        m.put("shareOfTruth", Json.number(s.ofTruth()));
        return m;
    }

    private static Map<String, Object> belief(Belief b) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("first", b.told());
        m.put("share", Json.number(b.top()));
        m.put("placeOfTruth", b.rank());
        m.put("shareOfTruth", Json.number(b.ofTruth()));
        m.put("shareOfTwo", Json.number(b.two()));
        return m;
    }
}
