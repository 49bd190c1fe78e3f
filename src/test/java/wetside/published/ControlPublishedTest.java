package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.Regulation;
import wetside.physics.Tuning;

class ControlPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Control");

    private static final String MEMORY = " (rule from memory)";
    private static final String ARITHMETIC = "printed digits";

    @Test
    void aStepResponse() {
        double[] share = {0.63212, 0.86466, 0.95021, 0.98168, 0.99326};
        for (int n = 1; n <= 5; n++) {
            published.check(
                    "rise %d time constants after the dead time".formatted(n),
                    "any control text",
                    share[n - 1],
                    Tuning.stepResponse(1, 200, 10, 10 + n * 200),
                    Tolerance.digit(1e-5),
                    ARITHMETIC);
        }
    }

    @Test
    void bSetPointResponseOfThePiLoopWithDeadTime() {
        String source = "closed form by the method of steps, SIMC settings with τc = θ and Ti = τ";
        double[] y = piLoop(0.6, 60, 10, 2000, 8);
        double[][] exact = {{1, 0}, {2, 0.5}, {3, 7 / 8.0}, {4, 49 / 48.0}, {5, 133 / 128.0}, {6, 1.0211}, {8, 0.9994}};
        for (double[] row : exact) {
            published.check(
                    "answer to a unit step at %.0f θ".formatted(row[0]),
                    source,
                    row[1],
                    y[(int) Math.round(row[0] * 2000)],
                    Tolerance.absolute(1e-3),
                    "the controller samples 2000 times in a dead time");
        }
        double peak = 0;
        for (double value : y) {
            peak = Math.max(peak, value);
        }
        published.check("its highest value", source, 1.0405, peak, Tolerance.absolute(1e-3), "the same");
    }

    /** The product's controller on an exact first-order process behind a delay line. */
    private static double[] piLoop(double k, double tau, double theta, int perDeadTime, int deadTimes) {
        Tuning tuning = Tuning.simc(k, tau, theta, theta);
        double step = theta / perDeadTime;
        double decay = Math.exp(-step / tau);
        double[] y = new double[deadTimes * perDeadTime + 1];
        double[] u = new double[y.length];
        double[] memory = new double[1];
        for (int i = 0; i + 1 < y.length; i++) {
            u[i] = Regulation.proportionalIntegral(tuning, 1 - y[i], step, -1e9, 1e9, memory);
            double delayed = i >= perDeadTime ? u[i - perDeadTime] : 0;
            y[i + 1] = k * delayed + (y[i] - k * delayed) * decay;
        }
        return y;
    }

    @Test
    void cSettingsBySimc() {
        String source = "Skogestad, J. Process Control 13, 2003, p. 291";
        gains("SIMC PI (0.6, 200, 10)", source, Tuning.simc(0.6, 200, 10, 10), 16.6667, 80, 0);
        gains("SIMC PI (1, 10, 1)", source, Tuning.simc(1, 10, 1, 1), 5, 8, 0);
    }

    @Test
    void dStabilityLimit() {
        double[][] table = {
            {1, 1, 0.5, 3.80688, 1.71055},
            {1, 10, 1, 16.35055, 3.85000},
            {0.6, 200, 10, 53.42591, 39.22095},
            {1, 50, 30, 3.28866, 100.27621},
        };
        for (double[] row : table) {
            Tuning.Limit limit = Tuning.limit(row[0], row[1], row[2]);
            String process = " of process (%s, %s, %s)"
                    .formatted(Published.digits(row[0], 3), Published.digits(row[1], 3), Published.digits(row[2], 3));
            String source = "phase condition, solved independently";
            published.check("Ku" + process, source, row[3], limit.gain(), Tolerance.relative(2e-6), ARITHMETIC);
            published.check(
                    "Pu" + process + " [s]", source, row[4], limit.period(), Tolerance.relative(4e-6), ARITHMETIC);
        }
    }

    @Test
    void eSettingsByOlderRules() {
        String zn = "Ziegler and Nichols, Trans. ASME 64, 1942, p. 759" + MEMORY;
        String cc = "Cohen and Coon, Trans. ASME 75, 1953, p. 827" + MEMORY;
        Tuning.Limit limit = Tuning.limit(0.6, 200, 10);
        gains("Ziegler–Nichols limit PID (0.6, 200, 10)", zn, Tuning.zieglerNicholsPid(limit), 32.0556, 19.610, 4.9026);
        gains(
                "Ziegler–Nichols limit PI (1, 10, 1)",
                zn,
                Tuning.zieglerNicholsPi(Tuning.limit(1, 10, 1)),
                7.3578,
                3.2083,
                0);
        gains("Ziegler–Nichols step PID (0.6, 200, 10)", zn, Tuning.zieglerNicholsStepPid(0.6, 200, 10), 40, 20, 5);
        gains("Ziegler–Nichols step PI (0.6, 200, 10)", zn, Tuning.zieglerNicholsStepPi(0.6, 200, 10), 30, 33.333, 0);
        gains("Cohen–Coon PI (0.6, 200, 10)", cc, Tuning.cohenCoonPi(0.6, 200, 10), 30.1389, 30.150, 0);
        gains("Cohen–Coon PI (1, 10, 1)", cc, Tuning.cohenCoonPi(1, 10, 1), 9.0833, 2.7546, 0);
        gains("Cohen–Coon PID (0.6, 200, 10)", cc, Tuning.cohenCoonPid(0.6, 200, 10), 44.8611, 24.1045, 3.6036);
    }

    private static void gains(String name, String source, Tuning tuning, double kc, double ti, double td) {
        Tolerance digits = Tolerance.relative(3e-5);
        published.check("Kc by " + name, source, kc, tuning.gain(), digits, ARITHMETIC);
        published.check("Ti by " + name + " [s]", source, ti, tuning.integralTime(), digits, ARITHMETIC);
        if (td > 0) {
            published.check("Td by " + name + " [s]", source, td, tuning.derivativeTime(), digits, ARITHMETIC);
        }
    }

    @Test
    void fRippleOfPulsedPower() {
        double[][] table = {
            {60, 200, 2, 0.3, 0.1259998}, {60, 200, 10, 0.5, 0.7499609}, {100, 50, 10, 0.25, 3.7476584},
        };
        for (double[] row : table) {
            String pulses = "%.0f K, τ %.0f s, T %.0f s, duty %s"
                    .formatted(row[0], row[1], row[2], Published.digits(row[3], 3));
            published.check(
                    "swing by the formula, " + pulses + " [K]",
                    "periodic solution, computed independently",
                    row[4],
                    Regulation.ripple(row[0], row[1], row[2], row[3]),
                    Tolerance.digit(1e-7),
                    ARITHMETIC);
            published.check(
                    "swing of a simulated body, " + pulses + " [K]",
                    "periodic solution, computed independently",
                    row[4],
                    simulatedSwing(row),
                    Tolerance.relative(1e-6),
                    "after 40 time constants of pulses");
        }
    }

    private static double simulatedSwing(double[] row) {
        double on = Math.exp(-row[2] * row[3] / row[1]);
        double off = Math.exp(-row[2] * (1 - row[3]) / row[1]);
        double t = 0;
        double top = 0;
        for (int pulse = 0; pulse < 40 * row[1] / row[2]; pulse++) {
            top = row[0] + (t - row[0]) * on;
            t = top * off;
        }
        return top - t;
    }
}
