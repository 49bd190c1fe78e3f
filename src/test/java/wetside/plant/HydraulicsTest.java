package wetside.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class HydraulicsTest {
    @Test
    void balancesWhateverTheMachineAndItsState() {
        Random r = new Random(7);
        long iterations = 0;
        long fallbacks = 0;
        int failed = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            TwinNetwork net = new TwinNetwork(r);
            double[] x = net.any(r);
            double dt = i % 2 == 0 ? 0.05 : 20;
            boolean done = net.hydraulics.solve(x, dt, net.rows);
            Convergence c = net.hydraulics.convergence();
            if (!done && failed < 10) {
                System.err.println(i + " " + c.worst() + " " + c.worstImbalance() + " its " + c.iterations());
            }
            failed += done ? 0 : 1;
            iterations += c.iterations();
            fallbacks += c.fallbacks();
        }
        System.err.println("failed " + failed + " its " + (double) iterations / n + " fallbacks " + fallbacks);
        assertThat(failed).isZero();
    }
}
