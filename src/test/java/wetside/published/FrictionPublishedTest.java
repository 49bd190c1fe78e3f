package wetside.published;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.Friction;

class FrictionPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Pipe friction");

    private static final double FOOT = 0.3048;
    private static final double G = 9.80665;

    @Test
    void aFactorsByFormula() {
        String source = "test suite of the Python package fluids, Re 1e5, ε/D 1e-4";
        Tolerance tight = Tolerance.relative(1e-12);
        factor("Colebrook f", source, 0.018513866077471648, Friction.colebrook(1e5, 1e-4), tight);
        factor("Swamee–Jain f", source, 0.018452424431901808, Friction.swameeJain(1e5, 1e-4), Tolerance.relative(2e-6));
        factor("Churchill 1977 f", source, 0.018462624566280075, Friction.churchill(1e5, 1e-4), tight);
        factor(
                "Haaland f within 2 % of Colebrook's",
                "Haaland 1983", 0.018513866077471648, Friction.haaland(1e5, 1e-4), Tolerance.relative(0.02));
        factor(
                "laminar f at Re 1000 by Churchill",
                "64/Re",
                0.064,
                Friction.churchill(1000, 1e-3),
                Tolerance.relative(1e-5));
    }

    private static void factor(String quantity, String source, double expected, double computed, Tolerance tolerance) {
        published.check(
                quantity,
                source,
                expected,
                computed,
                tolerance,
                "the same formula to its constants' digits, or its stated accuracy");
    }

    @Test
    void bAsphaltedCastIron() {
        String source = "White, Fluid Mechanics, example 6.6 (after Moody 1944)";
        double bore = 0.5 * FOOT;
        double rho = 1000;
        double mu = 1.1e-5 * FOOT * FOOT * rho;
        double flow = 6 * FOOT * Math.PI / 4 * bore * bore * rho;
        double f = Friction.colebrook(Friction.reynolds(flow, bore, mu), 0.0008);
        published.check("f", source, 0.0198, f, Tolerance.relative(0.005), "iterated there with three digits");
        double head = f * 200 / 0.5 * 36 / (2 * 32.2);
        published.check("head loss [ft]", source, 4.5, head, Tolerance.relative(0.02), "two printed digits");
        double[] drop = new double[2];
        Friction.pipe(flow, 200 * FOOT, bore, 0.0008, rho, mu, drop);
        published.check(
                "head loss by the plant's law [ft]",
                source,
                4.5,
                drop[0] / (rho * G) / FOOT,
                Tolerance.relative(0.03),
                "two printed digits, Churchill for Colebrook");
    }

    @Test
    void cOilInCastIron() {
        String source = "White, Fluid Mechanics, example 6.7 (head from memory)";
        double re = Friction.reynolds(0.2 * 900, 0.2, 900 * 1e-5);
        published.check("Re", source, 128000, re, Tolerance.relative(0.006), "three printed digits");
        double f = Friction.colebrook(re, 0.26 / 200);
        published.check("f", source, 0.0225, f, Tolerance.relative(0.011), "read from the chart");
        double v = 0.2 / (Math.PI / 4 * 0.04);
        published.check(
                "head loss [m]",
                source,
                117,
                f * 500 / 0.2 * v * v / (2 * 9.81),
                Tolerance.relative(0.015),
                "friction factor read from the chart, velocity rounded to two digits");
    }

    @Test
    void dLaminarOil() {
        String source = "White, Fluid Mechanics, example 6.4 (from memory)";
        double perFlow = Friction.laminar(1, 10, 0.06, 900 * 2e-4);
        double flow = 900 * 9.81 * 4.9 / perFlow;
        published.check("flow [m³/s]", source, 0.0076, flow, Tolerance.digit(1e-4), "two printed digits");
        published.check(
                "Re",
                source,
                810,
                Friction.reynolds(flow * 900, 0.06, 900 * 2e-4),
                Tolerance.digit(10),
                "two printed digits");
    }

    @Test
    void eSmoothPipe() {
        String source = "Crane TP-410M, example 7.1";
        double re = 100600;
        published.check(
                "f of smooth pipe at Re 100 600",
                source,
                0.0179,
                Friction.colebrook(re, 0),
                Tolerance.relative(0.006),
                "read from the chart to three digits");
        published.check(
                "the same by Churchill",
                source,
                0.0179,
                Friction.churchill(re, 0),
                Tolerance.relative(0.006),
                "read from the chart to three digits");
    }

    @Test
    void fSinglePipesOfANetworkProgram() throws IOException {
        String source = "EPANET 2.3.5, one pipe between two reservoirs";
        for (double[] row : rows()) {
            double bore = row[1] / 1000;
            double re = row[5];
            String pipe =
                    "%s mm, ε %s mm, Re %.0f".formatted(Published.digits(row[1], 3), Published.digits(row[3], 3), re);
            published.check(
                    "f in " + pipe,
                    source,
                    row[7],
                    Friction.dunlop(re, row[3] / row[1]),
                    Tolerance.relative(3e-5),
                    "worked back from its head loss through its rounded unit factors");
            double v = row[0] / 1699.0 * Math.pow(FOOT, 3) / (Math.PI / 4 * bore * bore);
            double head = Friction.dunlop(re, row[3] / row[1]) * row[2] / bore * v * v / (2 * 32.2 * FOOT);
            published.check(
                    "head loss in " + pipe + " [m]",
                    source,
                    row[6],
                    head,
                    Tolerance.relative(3e-5),
                    "its own unit factors");
            if (re < 2000 || re > 4500) {
                double[] drop = new double[2];
                double nu = row[4] * 1.1e-5 * FOOT * FOOT;
                Friction.pipe(
                        1000 * v * Math.PI / 4 * bore * bore, row[2], bore, row[3] / row[1], 1000, 1000 * nu, drop);
                published.check(
                        "head loss by the plant's law in " + pipe + " [m]",
                        source,
                        row[6],
                        drop[0] / (1000 * 32.2 * FOOT),
                        Tolerance.relative(re < 1000 ? 2e-4 : 0.03),
                        "Churchill's formula for Swamee–Jain's");
            }
        }
    }

    private static List<double[]> rows() throws IOException {
        try (BufferedReader file = new BufferedReader(new InputStreamReader(
                FrictionPublishedTest.class.getResourceAsStream("epanet-single-pipe.csv"), StandardCharsets.UTF_8))) {
            return file.lines()
                    .filter(line -> Character.isDigit(line.charAt(0)))
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        }
    }
}
