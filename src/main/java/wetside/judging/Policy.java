package wetside.judging;

import java.util.Arrays;
import java.util.List;

/** Ways to go about a job. All share the same beliefs; they differ in what they do next. */
public enum Policy {
    PLAN("plan", "our plan: least expected cost"),
    CHART("chart", "fixed chart: questions in one order, by what they teach per cost at first, useless ones skipped"),
    INFORMATION_PER_COST("gain per cost", "the question that teaches most per cost now"),
    INFORMATION("gain", "the question that teaches most now, whatever it costs"),
    CHEAPEST("cheapest", "the cheapest question that teaches anything"),
    LIKELIEST("likeliest", "no questions: the likeliest cause is mended first"),
    RANDOM("random", "any question that teaches anything");

    private final String word;
    private final String means;

    Policy(String word, String means) {
        this.word = word;
        this.means = means;
    }

    public String word() {
        return word;
    }

    public String means() {
        return means;
    }

    public static List<String> words() {
        return Arrays.stream(values()).map(Policy::word).toList();
    }
}
