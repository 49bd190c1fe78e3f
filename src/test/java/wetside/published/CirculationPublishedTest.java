package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.Circulation;
import wetside.physics.Friction;
import wetside.physics.Liquid;
import wetside.physics.Transport;
import wetside.physics.WaterState;

class CirculationPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Natural circulation");

    private static final String SOURCE =
            "Vijayan, Nucl. Eng. Des. 215, 2002, p. 139 (constants derived again; citation from memory)";
    private static final double HEIGHT = 0.3;
    private static final double LENGTH = 1.6;
    private final WaterState water = Liquid.state(9e5, 363.15);
    private final double rho = water.density();
    private final double mu = Transport.viscosity(rho, 363.15);

    @Test
    void aLaminarLoop() {
        loop("10 mm bore, 100 W", 0.010, 100, 1906.7, 4.7081, 5.053);
        loop("4 mm bore, 50 W", 0.004, 50, 539.3, 0.5327, 22.33);
    }

    private void loop(String name, double bore, double power, double re, double flow, double rise) {
        double byCorrelation = Circulation.vijayan(grashof(bore, power), LENGTH / bore, false);
        String digits = "printed digits; standard gravity rounded there";
        published.check("Re, " + name, SOURCE, re, byCorrelation, Tolerance.relative(5e-4), digits);
        double a = Friction.laminar(1 / rho, LENGTH, bore, mu);
        double drive = Circulation.drive(HEIGHT, rho, water.expansion(), 1);
        double w = Circulation.heated(a, 0, drive, power, water.heatCapacity());
        published.check(
                "flow by the momentum balance, " + name + " [g/s]",
                SOURCE,
                flow,
                w * 1e3,
                Tolerance.relative(5e-4),
                digits);
        published.check(
                "temperature rise, " + name + " [K]",
                SOURCE,
                rise,
                power / (w * water.heatCapacity()),
                Tolerance.relative(5e-4),
                digits);
        published.atMost(
                "momentum balance against the correlation, relative difference in Re, " + name,
                SOURCE,
                1e-9,
                Math.abs(Friction.reynolds(w, bore, mu) / byCorrelation - 1),
                "the same balance with constant properties: rounding only");
    }

    @Test
    void bTurbulentBranch() {
        double re = Circulation.vijayan(grashof(0.010, 300), 160, true);
        published.check(
                "Re, 10 mm bore, 300 W, turbulent branch",
                SOURCE,
                2499.3,
                re,
                Tolerance.relative(1e-3),
                "printed digits of the constant 1.956");
    }

    private double grashof(double bore, double power) {
        double area = Math.PI / 4 * bore * bore;
        return Math.pow(bore, 3)
                * rho
                * rho
                * water.expansion()
                * 9.80665
                * power
                * HEIGHT
                / (area * Math.pow(mu, 3) * water.heatCapacity());
    }
}
