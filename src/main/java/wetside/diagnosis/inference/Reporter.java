package wetside.diagnosis.inference;

import java.util.List;
import wetside.diagnosis.inference.Readings.Report;

/**
 * How likely somebody gives some answers when the truth is known. Answers that share an error variable are mostly right
 * or mostly wrong together, so hearing the same twice is not evidence twice.
 *
 * <pre>P = m max(0, min eps over the wrong - max eps over the right) + (1 - m) PROD(eps or 1 - eps)</pre>
 *
 * The first term is one mistake common to all (perfect dependence), the second none in common; m is how much is shared.
 */
final class Reporter {
    private final double sameMind;

    Reporter(double sameMind) {
        this.sameMind = sameMind;
    }

    /** Likelihood of a reporter's answers under one draw, given by its row of values. */
    double likelihood(List<Report> group, float[] rows, int from) {
        double smallestWrong = 1;
        double largestRight = 0;
        double apart = 1;
        double which = 1;
        for (Report report : group) {
            float truth = rows[from + report.question()];
            if (Float.isNaN(truth)) {
                which *= report.broad();
            } else if ((int) truth == report.option()) {
                largestRight = Math.max(largestRight, report.choice().doubt());
                apart *= 1 - report.choice().doubt();
            } else {
                smallestWrong = Math.min(smallestWrong, report.choice().doubt());
                apart *= report.choice().doubt();
                which /= report.choice().options().size() - 1;
            }
        }
        double together = Math.max(0, smallestWrong - largestRight);
        return which * (group.size() == 1 ? apart : sameMind * together + (1 - sameMind) * apart);
    }
}
