package wetside.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.blueprint.Control;

/** The moment at which something switches by itself is found on the straight line between two states. */
class JumpSearchTest {
    private static final int PRESSURE = 0;
    private static final int FELT = 1;
    private static final int CLOSED = 2;
    private static final int ENDLESS = 3;

    private static double moment(Control control, double from, double to, double dt) {
        double[] began = {from, from, 1, Double.POSITIVE_INFINITY};
        double[] ended = began.clone();
        ended[PRESSURE] = to;
        JumpSearch search = new JumpSearch(List.of(control), new int[] {CLOSED}, began.length);
        search.keep(ended);
        return search.moment(began, dt, 0.01);
    }

    @Test
    void aSwitchOpensWhereThePressurePassesItsSetting() {
        Control opens = (x, dt) -> x[CLOSED] = x[PRESSURE] > 5 && x[ENDLESS] > 1 ? 0 : x[CLOSED];
        assertThat(moment(opens, 0, 10, 8)).isCloseTo(4, within(0.01));
        assertThat(moment(opens, 4.9, 30, 8)).isCloseTo(8 * 0.1 / 25.1, within(0.01));
    }

    @Test
    void whatAControlRemembersMovesWithTheTimeLookedAt() {
        // felt = from + t/dt (to - from)(1 - exp(-t/20)) along the line, with t = 8 s: opens where that is 1
        Control lags = (x, dt) -> {
            x[FELT] += (x[PRESSURE] - x[FELT]) * -Math.expm1(-dt / 20);
            x[CLOSED] = x[FELT] > 1 ? 0 : x[CLOSED];
        };
        double t = moment(lags, 0, 10, 8);
        assertThat(10 * t / 8 * -Math.expm1(-t / 20)).isCloseTo(1, within(0.01));
    }
}
