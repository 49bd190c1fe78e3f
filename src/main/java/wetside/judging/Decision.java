package wetside.judging;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import wetside.diagnosis.Question;
import wetside.diagnosis.Repair;
import wetside.diagnosis.inference.Foresight;
import wetside.diagnosis.inference.InPlay;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Left;
import wetside.diagnosis.plan.NextStep;
import wetside.diagnosis.plan.Situation;
import wetside.diagnosis.plan.Step;

/**
 * What a policy does next. The plainer ones ask until one repair is nearly sure or no question teaches anything, then mend
 * what has the best chance per cost, and hand over when nothing worth trying is left.
 */
final class Decision {
    private static final double SURE = 0.95;
    private static final double TEACHES = 0.05;
    private static final double WORTH_TRYING = 0.03;

    private final Posterior posterior;
    private final Situation situation;
    private final InPlay inPlay;

    Decision(Posterior posterior, Situation situation) {
        this.posterior = posterior;
        this.situation = situation;
        inPlay = InPlay.of(posterior);
    }

    Move of(Policy policy, List<String> chart, SplittableRandom random) {
        if (policy == Policy.PLAN) {
            Step best = NextStep.advise(posterior, situation).best();
            return new Move(best.sort(), best.id());
        }
        Map<Repair, Double> chances = chances();
        boolean sure = chances.values().stream().anyMatch(p -> p >= SURE);
        if (policy != Policy.LIKELIEST && !sure) {
            Optional<Foresight> next = question(policy, chart, random);
            if (next.isPresent()) {
                return new Move(Step.Sort.ASK, next.get().question().id());
            }
        }
        ToDoubleFunction<Map.Entry<Repair, Double>> worth = policy == Policy.LIKELIEST
                ? Map.Entry::getValue
                : e -> e.getValue()
                        / Math.max(
                                1e-9,
                                situation.cost(e.getKey().effort()) + e.getKey().needless());
        return chances.entrySet().stream()
                .filter(e -> e.getValue() >= WORTH_TRYING)
                .max(Comparator.comparingDouble(worth))
                .map(e -> new Move(Step.Sort.REPAIR, e.getKey().id()))
                .orElse(Move.CALL_IN);
    }

    /** Chance that each repair this person may do, and has not done, is the one needed. */
    private Map<Repair, Double> chances() {
        Map<String, Repair> byId = new LinkedHashMap<>();
        Map<Repair, Double> chances = new LinkedHashMap<>();
        for (int c = 0; c < posterior.somethingElse(); c++) {
            double share = posterior.share(c);
            Left.of(posterior.library(), c, posterior.observations())
                    .filter(r -> r.effort().allowed(situation.who()))
                    .map(r -> byId.computeIfAbsent(r.id(), id -> r))
                    .ifPresent(r -> chances.merge(r, share * r.works(), Double::sum));
        }
        return chances;
    }

    private Optional<Foresight> question(Policy policy, List<String> chart, SplittableRandom random) {
        List<Integer> open = open();
        return switch (policy) {
            case RANDOM -> firstUseful(shuffled(open, random));
            case CHEAPEST -> firstUseful(sorted(open, q -> cost(q)));
            case CHART -> firstUseful(sorted(open, q -> chart.indexOf(id(q))));
            case INFORMATION -> most(open, f -> f.bits(inPlay));
            case INFORMATION_PER_COST ->
                most(open, f -> f.bits(inPlay) / situation.asking(f.question().effort()));
            case PLAN, LIKELIEST -> Optional.empty();
        };
    }

    /** Questions by what they teach per cost now: frozen, they are a flow chart. */
    List<String> chart() {
        return open().stream()
                .map(inPlay::foresee)
                .sorted(Comparator.comparingDouble(
                        f -> -f.bits(inPlay) / situation.asking(f.question().effort())))
                .map(f -> f.question().id())
                .toList();
    }

    private List<Integer> open() {
        List<Question> all = posterior.library().questions();
        return java.util.stream.IntStream.range(0, all.size())
                .filter(q -> all.get(q).effort().allowed(situation.who()))
                .filter(q -> posterior.observations().about(all.get(q).id()).isEmpty())
                .boxed()
                .toList();
    }

    private String id(int q) {
        return posterior.library().questions().get(q).id();
    }

    private double cost(int q) {
        return situation.asking(posterior.library().questions().get(q).effort());
    }

    private Optional<Foresight> firstUseful(List<Integer> order) {
        return order.stream()
                .map(inPlay::foresee)
                .filter(f -> f.bits(inPlay) >= TEACHES)
                .findFirst();
    }

    private Optional<Foresight> most(List<Integer> open, ToDoubleFunction<Foresight> worth) {
        return open.stream()
                .map(inPlay::foresee)
                .filter(f -> f.bits(inPlay) >= TEACHES)
                .max(Comparator.comparingDouble(worth));
    }

    private static List<Integer> sorted(List<Integer> open, ToDoubleFunction<Integer> by) {
        return open.stream().sorted(Comparator.comparingDouble(by)).toList();
    }

    private static List<Integer> shuffled(List<Integer> open, SplittableRandom random) {
        Map<Integer, Double> key = new LinkedHashMap<>();
        open.forEach(q -> key.put(q, random.nextDouble()));
        return sorted(open, key::get);
    }
}
