package wetside.diagnosis.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.diagnosis.Library;
import wetside.diagnosis.Toy;

/** All draws of a pair told from a few runs, where two causes meet in different ways. */
class PairRowsTest {
    private static final int DRAWS = 16;
    private static final int RAN = 8;

    /** Flow through a jet and a pump: shares of the whole machine's, which a sum of changes misses. */
    private static float flow(int k, double jet, double pump) {
        return (float) ((10 + 0.1 * k) * jet * pump);
    }

    /** Pressure: the lower of two limits. */
    private static float pressure(int k, double first, double second) {
        return (float) (Math.min(first, second) + 0.05 * k);
    }

    private static float[][] rows(double jet, double pump, double first, double second) {
        float[][] rows = new float[DRAWS][];
        for (int k = 0; k < DRAWS; k++) {
            rows[k] = new float[] {flow(k, jet, pump), pressure(k, first, second)};
        }
        return rows;
    }

    @Test
    void theWayTwoCausesMeetIsReadOffTheRuns() {
        Library library = Toy.library(
                List.of(Toy.cause("whole", 1), Toy.cause("jet", 1), Toy.cause("pump", 1)),
                List.of(Toy.number("flow", 0.1), Toy.number("pressure", 0.1)),
                rows(1, 1, 9, 12),
                rows(0.5, 1, 6, 12),
                rows(1, 0.4, 9, 4));
        float[] run = new float[RAN * 2];
        for (int k = 0; k < RAN; k++) {
            run[2 * k] = flow(k, 0.5, 0.4);
            run[2 * k + 1] = pressure(k, 6, 4);
        }
        int[] donors = new int[DRAWS];
        for (int k = 0; k < DRAWS; k++) {
            donors[k] = k % RAN;
        }
        float[] told = PairRows.told(library, 1, 2, run, donors);
        for (int k = 0; k < DRAWS; k++) {
            assertThat(told[2 * k]).isCloseTo(flow(k, 0.5, 0.4), within(1e-4f));
            assertThat(told[2 * k + 1]).isCloseTo(pressure(k, 6, 4), within(1e-4f));
        }
    }

    @Test
    void aMultipleOfNothingIsNotTold() {
        float[][] whole = rows(1, 1, 9, 12);
        whole[DRAWS - 1][0] = 0;
        Library library = Toy.library(
                List.of(Toy.cause("whole", 1), Toy.cause("jet", 1), Toy.cause("pump", 1)),
                List.of(Toy.number("flow", 0.1), Toy.number("pressure", 0.1)),
                whole,
                rows(0.5, 1, 6, 12),
                rows(1, 0.4, 9, 4));
        float[] run = new float[RAN * 2];
        int[] donors = new int[DRAWS];
        for (int k = 0; k < DRAWS; k++) {
            donors[k] = k % RAN;
            if (k < RAN) {
                run[2 * k] = flow(k, 0.5, 0.4);
                run[2 * k + 1] = pressure(k, 6, 4);
            }
        }
        float[] told = PairRows.told(library, 1, 2, run, donors);
        assertThat(told[2 * (DRAWS - 1)]).isEqualTo(run[2 * donors[DRAWS - 1]]);
    }
}
