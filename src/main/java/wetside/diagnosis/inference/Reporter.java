package wetside.diagnosis.inference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.diagnosis.inference.Readings.Report;

/**
 * How likely some answers about the same thing are when the truth is known. Answers of one person that share an error
 * variable are mostly right or mostly wrong together, so hearing the same twice is not evidence twice.
 *
 * <pre>P = m max(0, min eps over the wrong - max eps over the right) + (1 - m) PROD(eps or 1 - eps)</pre>
 *
 * The first term is one mistake common to all (perfect dependence), the second none in common; m is how much is shared.
 *
 * <p>Where a question is answered more than once, by whomever, the machine had one word each time unless something changed
 * in it: that the twin has another word is one mistake, however often the machine is looked at.
 *
 * <pre>P = (1 - d) P(answers | twin's word) + d / (n - 1) SUM over other words P(answers | word)</pre>
 */
final class Reporter {
    private final double sameMind;

    Reporter(double sameMind) {
        this.sameMind = sameMind;
    }

    /** Likelihood of answers that share an error variable under one draw, given by its row of values. */
    double likelihood(List<Report> group, float[] rows, int from) {
        if (group.size() == 1) {
            return alone(group.get(0), rows[from + group.get(0).question()]);
        }
        double likelihood = 1;
        for (List<Report> same : alike(group, rows, from)) {
            float truth = rows[from + same.get(0).question()];
            likelihood *= Float.isNaN(truth)
                    ? broad(same)
                    : isAgain(same) ? again(same, (int) truth) : witnesses(same, rows, from);
        }
        return likelihood;
    }

    private static double alone(Report report, float truth) {
        return Float.isNaN(truth) ? report.broad() : report.choice().chance(report.option(), (int) truth);
    }

    /** Answers to one question while the machine was the same; those to other questions, and those without a truth, apart. */
    private static Iterable<List<Report>> alike(List<Report> group, float[] rows, int from) {
        boolean again = isAgain(group);
        Map<String, List<Report>> alike = new LinkedHashMap<>();
        for (Report r : group) {
            float truth = rows[from + r.question()];
            String key = Float.isNaN(truth) ? r.thing() : again ? (int) truth + r.thing() : "";
            alike.computeIfAbsent(key, k -> new ArrayList<>()).add(r);
        }
        return alike.values();
    }

    private static boolean isAgain(List<Report> group) {
        return group.stream().map(Report::thing).distinct().count() < group.size();
    }

    /** What nothing is known of is heard once; who says it again says the same but for mistakes. */
    static double broad(List<Report> same) {
        Report first = same.get(0);
        double likelihood = first.broad();
        for (Report r : same.subList(1, same.size())) {
            likelihood *= r.choice().chance(r.option(), first.option());
        }
        return likelihood;
    }

    /** Answers to one question, a mistake of the twin in all of them or in none. */
    private double again(List<Report> same, int truth) {
        int n = same.get(0).choice().options().size();
        double off = same.get(0).choice().discrepancy();
        double likelihood = 0;
        for (int word = 0; word < n; word++) {
            likelihood += (word == truth ? 1 - off : off / (n - 1)) * heard(same, word);
        }
        return likelihood;
    }

    /** The answers of several people, by what the machine has. */
    private double heard(List<Report> same, int word) {
        Map<String, List<Report>> byPerson = new LinkedHashMap<>();
        same.forEach(r -> byPerson.computeIfAbsent(r.observation().by(), k -> new ArrayList<>())
                .add(r));
        double likelihood = 1;
        for (List<Report> person : byPerson.values()) {
            Witness witness = new Witness();
            person.forEach(r -> witness.says(r, r.option() == word, r.choice().errorRate()));
            likelihood *= witness.likelihood(sameMind);
        }
        return likelihood;
    }

    /** Answers to different questions about the same thing. */
    private double witnesses(List<Report> group, float[] rows, int from) {
        Map<String, Witness> byPerson = new LinkedHashMap<>();
        for (Report r : group) {
            byPerson.computeIfAbsent(r.observation().by(), k -> new Witness())
                    .says(
                            r,
                            (int) rows[from + r.question()] == r.option(),
                            r.choice().doubt());
        }
        return byPerson.values().stream()
                .mapToDouble(w -> w.likelihood(sameMind))
                .reduce(1, (a, b) -> a * b);
    }

    /** One person's answers. */
    private static final class Witness {
        private int answers;
        private double smallestWrong = 1;
        private double largestRight;
        private double apart = 1;
        /** Which wrong word is named when each mistake is one of its own, and when all are one. */
        private double which = 1;

        private double whichTogether = 1;
        private final Map<String, Integer> wrong = new LinkedHashMap<>();

        void says(Report report, boolean right, double doubt) {
            answers++;
            if (right) {
                largestRight = Math.max(largestRight, doubt);
                apart *= 1 - doubt;
                return;
            }
            int others = report.choice().options().size() - 1;
            smallestWrong = Math.min(smallestWrong, doubt);
            apart *= doubt;
            which /= others;
            Integer before = wrong.put(report.thing(), report.option());
            whichTogether *= before == null ? 1.0 / others : before == report.option() ? 1 : 0;
        }

        double likelihood(double sameMind) {
            double together = Math.max(0, smallestWrong - largestRight);
            return answers == 1 ? which * apart : sameMind * whichTogether * together + (1 - sameMind) * which * apart;
        }
    }
}
