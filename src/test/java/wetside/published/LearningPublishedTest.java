package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.diagnosis.learning.Counts;
import wetside.diagnosis.learning.Rate;

class LearningPublishedTest {
    private static final String ASTHMA =
            "asthma mortality, Bayesian Data Analysis (from memory; figures computed again)";
    private static final String POLL = "election poll, Bayesian Data Analysis (from memory; figures computed again)";
    private static final String HOURS = "gamma and Dirichlet forms, values by a separate program";
    private static final String BIRTHS =
            "437 girls of 980, Bayesian Data Analysis (from memory; figures computed again)";
    private static final Tolerance SIX = Tolerance.absolute(5e-7);
    private static final String DIGITS = "printed digits";

    @RegisterExtension
    static final Published published = Published.topic("Rates learnt from counts");

    @Test
    void t12Rates() {
        Rate once = new Rate(3, 5).with(3, 2);
        published.check("mean after 3 events in 2.0", ASTHMA, 0.857143, once.mean(), SIX, DIGITS);
        published.check("sd after 3 events in 2.0", ASTHMA, 0.349927, once.sd(), SIX, DIGITS);
        published.check("rate above 1", ASTHMA, 0.300708, once.above(1), SIX, DIGITS);
        published.check("2.5 % limit", ASTHMA, 0.3146, once.quantile(0.025), Tolerance.digit(1e-4), DIGITS);
        published.check("97.5 % limit", ASTHMA, 1.6669, once.quantile(0.975), Tolerance.digit(1e-4), DIGITS);
        Rate more = new Rate(3, 5).with(30, 20);
        published.check("mean after 30 events in 20", ASTHMA, 1.32, more.mean(), SIX, DIGITS);
        published.check("sd after 30 events in 20", ASTHMA, 0.229783, more.sd(), SIX, DIGITS);
        published.check("rate above 1 after 30 in 20", ASTHMA, 0.928544, more.above(1), SIX, DIGITS);
        published.check(
                "prior rate below 1.44", ASTHMA, 0.9745, 1 - new Rate(3, 5).above(1.44), Tolerance.digit(1e-4), DIGITS);
    }

    @Test
    void runningHours() {
        Rate failures = new Rate(2, 4000).with(3, 5000);
        published.check("failures an hour", HOURS, 5.5556e-4, failures.mean(), Tolerance.digit(1e-8), DIGITS);
        published.check("any failure in 1000 h", HOURS, 0.409510, failures.anyIn(1000), SIX, DIGITS);
        published.check(
                "after 2000 h without",
                HOURS,
                3.3333e-4,
                new Rate(2, 4000).with(0, 2000).mean(),
                Tolerance.digit(1e-8),
                DIGITS);
    }

    @Test
    void shares() {
        Counts poll = Counts.of(1, 1, 1).with(727, 583, 137);
        published.check("lead", POLL, 0.099310, poll.mean(0) - poll.mean(1), SIX, DIGITS);
        published.check("sd of the lead", POLL, 0.024835, poll.sdOfDifference(0, 1), SIX, DIGITS);
        Counts births = Counts.of(1, 1).with(437, 543);
        published.check("share of girls", BIRTHS, 0.446029, births.mean(0), SIX, DIGITS);
        published.check("its sd", BIRTHS, 0.015854, births.sd(0), SIX, DIGITS);
        published.check("its 2.5 % limit", BIRTHS, 0.4151, births.quantile(0, 0.025), Tolerance.digit(1e-4), DIGITS);
        published.check("its 97.5 % limit", BIRTHS, 0.4772, births.quantile(0, 0.975), Tolerance.digit(1e-4), DIGITS);
        Counts workshop = Counts.of(4, 3, 2, 1);
        Counts closed = workshop.with(9, 1, 4, 0);
        double[] expected = {0.541667, 0.166667, 0.25, 0.041667};
        for (int i = 0; i < 4; i++) {
            published.check("share of cause " + (i + 1), HOURS, expected[i], closed.mean(i), SIX, DIGITS);
        }
        published.check(
                "log chance of these jobs in their order",
                HOURS,
                -14.72328903,
                workshop.logChance(9, 1, 4, 0),
                Tolerance.absolute(5.1e-9),
                DIGITS);
    }
}
