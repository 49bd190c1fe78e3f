package wetside.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.casework.Heard;
import wetside.diagnosis.Who;

/**
 * What an owner may mean: the questions an owner can answer on this machine, ranked by the words they share with the
 * complaint. A word says the more the fewer questions use it.
 */
final class Signs {
    /** A name says more of a question than its sentences. */
    private static final double IN_NAME = 2;
    /** What it is about stands first in the name. */
    private static final double FIRST = 3.5;
    /** What scores less than this of the best is noise. */
    private static final double WORTH = 0.4;
    /** What happens at the time that was named comes first. */
    private static final double AT_THAT_TIME = 1.5;

    /** What follows in a name says when it is looked at, not what. */
    private static final Pattern WHEN = Pattern.compile(",| (?:while|after|before|when|on) ");

    private final List<Asking> asked;
    private final Map<Asking, Set<String>> names = new HashMap<>();
    private final Map<Asking, Set<String>> words = new HashMap<>();

    Signs(Casework casework) {
        asked = casework.askings().stream()
                .filter(a -> a.question().effort().who() == Who.OWNER)
                .toList();
        asked.forEach(a -> {
            names.put(a, Heard.words(WHEN.split(a.question().id())[0]));
            words.put(
                    a,
                    Heard.words(
                            a.procedure().ask() + " " + a.procedure().says() + " " + String.join(" ", a.options())));
        });
    }

    /** @param score 0 and less means nothing */
    record Sign(Asking asking, double score) {}

    /**
     * The best, best first.
     *
     * @param when the state it happens in, "" when nobody has said
     */
    List<Sign> of(String complaint, String when, int most) {
        Map<String, Double> weights = weights(Heard.trouble(complaint));
        List<Sign> all = new ArrayList<>();
        for (Asking a : asked) {
            double score = 0;
            for (Map.Entry<String, Double> word : weights.entrySet()) {
                score += word.getValue() * share(a, word.getKey());
            }
            score /= Math.sqrt(8 + words.get(a).size());
            all.add(new Sign(a, a.procedure().routine().equals(when) ? score * AT_THAT_TIME : score));
        }
        double best = all.stream().mapToDouble(Sign::score).max().orElse(0);
        return all.stream()
                .filter(s -> s.score() > 0 && s.score() >= WORTH * best)
                .sorted(Comparator.comparingDouble((Sign s) -> -s.score()))
                .limit(most)
                .toList();
    }

    /** How much a word says of a question. */
    private double share(Asking a, String word) {
        Set<String> name = names.get(a);
        if (!name.isEmpty() && Heard.alike(name.iterator().next(), word)) {
            return FIRST;
        }
        return has(name, word) ? IN_NAME : has(words.get(a), word) ? 1 : 0;
    }

    /** States the signs are seen in, likeliest first. */
    static Set<String> when(Casework casework, List<Sign> signs, int most) {
        Set<String> when = new LinkedHashSet<>();
        for (Sign s : signs) {
            String routine = s.asking().procedure().routine();
            if (when.size() < most && casework.routines().containsKey(routine)) {
                when.add(routine);
            }
        }
        return when;
    }

    private Map<String, Double> weights(Set<String> complaint) {
        Map<String, Double> weights = new LinkedHashMap<>();
        for (String word : complaint) {
            long with = asked.stream()
                    .filter(a -> has(names.get(a), word) || has(words.get(a), word))
                    .count();
            if (with > 0) {
                weights.put(word, Math.log((1.0 + asked.size()) / with));
            }
        }
        return weights;
    }

    /** Whether a word or one that begins alike is among some. */
    private static boolean has(Set<String> words, String word) {
        return words.stream().anyMatch(w -> Heard.alike(w, word));
    }
}
