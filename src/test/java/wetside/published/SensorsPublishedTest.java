package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.Conductor;
import wetside.physics.Platinum;
import wetside.physics.SiliconSensor;
import wetside.physics.Thermistor;

class SensorsPublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Sensors and wires");

    private static final double ICE = 273.15;
    private static final double[] NTCLE100 = {3.354016e-3, 2.569850e-4, 2.620131e-6, 6.383091e-8};

    @Test
    void aThermistorByFourTerms() {
        String source = "Vishay NTCLE100E3103, data-sheet coefficients, solved independently";
        double[][] table = {
            {0, 32541},
            {20, 12487},
            {25, 10000},
            {40, 5330.5},
            {60, 2490.3},
            {85, 1070.3},
            {93, 835.0},
            {100, 677.3},
            {120, 386.6},
            {125, 338.7},
            {150, 182.6},
        };
        for (double[] row : table) {
            String at = " at %.0f °C ".formatted(row[0]);
            published.check(
                    "R of 10 k, B 3977," + at + "[Ω]",
                    source,
                    row[1],
                    Thermistor.fourTermsResistance(NTCLE100, 10000, row[0] + ICE),
                    Tolerance.relative(2e-4),
                    "four printed digits");
        }
        published.check(
                "T at 1070.3 Ω [°C]",
                source,
                85,
                Thermistor.fourTerms(NTCLE100, 10000, 1070.3) - ICE,
                Tolerance.absolute(0.01),
                "four printed digits");
    }

    @Test
    void bAnotherMakersTableOfTheSameCurve() {
        double[][] table = {{30, 8057}, {55, 2986}, {60, 2488}, {65, 2083}, {90, 917.7}, {95, 788.5}, {100, 680}};
        for (double[] row : table) {
            published.check(
                    "R of a 10 k thermistor at %.0f °C [Ω]".formatted(row[0]),
                    "table in a welding machine's service manual (part not named)",
                    row[1],
                    Thermistor.fourTermsResistance(NTCLE100, 10000, row[0] + ICE),
                    Tolerance.relative(0.005),
                    "another part of the same nominal curve; the table itself allows 4.7 %");
        }
    }

    @Test
    void cThermistorByBeta() {
        double[][] table = {
            {-25, 146676},
            {-5, 44424},
            {5, 26075},
            {15, 15881},
            {25, 10000},
            {45, 4326},
            {65, 2066},
            {85, 1072},
            {95, 793},
            {105, 596},
            {125, 351},
        };
        for (double[] row : table) {
            published.check(
                    "R of 10 k, B 3974, at %.0f °C [Ω]".formatted(row[0]),
                    "thermistor table of the Zephyr project (made from B)",
                    row[1],
                    Thermistor.beta(10000, 3974, row[0] + ICE),
                    Tolerance.relative(2e-3),
                    "integer ohms, B rounded");
        }
    }

    /** °C, Ω: EPCOS B57891S0103. */
    private static final double[][] EPCOS = {
        {0, 32014},
        {10, 19691},
        {20, 12474},
        {25, 10000},
        {30, 8080},
        {40, 5372},
        {50, 3661},
        {60, 2536},
        {70, 1794},
        {80, 1290},
        {85, 1100},
        {90, 942},
        {95, 809},
        {100, 697},
        {110, 525},
        {120, 400},
        {125, 351},
    };

    @Test
    void dThermistorBySteinhartHart() {
        double[] law = steinhartHart(EPCOS[1], EPCOS[6], EPCOS[13]);
        for (double[] row : EPCOS) {
            published.check(
                    "T of 10 k at %.0f Ω [°C]".formatted(row[1]),
                    "EPCOS B57891S0103, resistance table in the Linux driver ntc_thermistor",
                    row[0],
                    Thermistor.steinhartHart(law[0], law[1], law[2], row[1]) - ICE,
                    Tolerance.absolute(0.15),
                    "three rows give the law; the rest of the table has three-digit ohms");
        }
    }

    private static double[] steinhartHart(double[] p, double[] q, double[] r) {
        double l1 = Math.log(p[1]);
        double l2 = Math.log(q[1]);
        double l3 = Math.log(r[1]);
        double y1 = 1 / (p[0] + ICE);
        double g2 = (1 / (q[0] + ICE) - y1) / (l2 - l1);
        double g3 = (1 / (r[0] + ICE) - y1) / (l3 - l1);
        double c = (g3 - g2) / (l3 - l2) / (l1 + l2 + l3);
        double b = g2 - c * (l1 * l1 + l1 * l2 + l2 * l2);
        return new double[] {y1 - l1 * (b + c * l1 * l1), b, c};
    }

    @Test
    void ePlatinum() {
        double[][] table = {
            {0, 100.0000}, {20, 107.7935}, {25, 109.7347}, {60, 123.2419}, {90, 134.7069}, {93, 135.8477},
            {100, 138.5055}, {120, 146.0680}, {125, 147.9514}, {150, 157.3251}, {165, 162.9147}, {200, 175.8560},
        };
        for (double[] row : table) {
            published.check(
                    "Pt100 at %.0f °C [Ω]".formatted(row[0]),
                    "IEC 60751:2008",
                    row[1],
                    Platinum.resistance(100, row[0] + ICE),
                    Tolerance.digit(1e-4),
                    "last digit");
        }
    }

    @Test
    void fCopperWire() {
        double[][] table = {{0.75, 26.0}, {1.0, 19.5}, {1.5, 13.3}, {2.5, 7.98}};
        for (double[] row : table) {
            published.atMost(
                    "flexible wire of %s mm² at 20 °C [Ω/km]".formatted(Published.digits(row[0], 3)),
                    "IEC 60228 class 5, largest allowed",
                    row[1],
                    Conductor.copper(1000, row[0] * 1e-6, 293.15),
                    "solid copper of the nominal section lies below");
        }
        published.check(
                "1 mm² of copper, 1 km, 20 °C [Ω]",
                "IEC 60028: 58 MS/m",
                1000 / 58.0,
                Conductor.copper(1000, 1e-6, 293.15),
                Tolerance.relative(1e-4),
                "five digits of 0.017241");
    }

    @Test
    void gSiliconPtc() {
        String source = "KTY81-110 data sheet, typical";
        published.check(
                "R100/R25 of a silicon PTC",
                source,
                1.696,
                SiliconSensor.resistance(1000, 100 + ICE) / 1000,
                Tolerance.absolute(0.001),
                "printed to three digits");
        published.check(
                "R−55/R25 of a silicon PTC",
                source,
                0.490,
                SiliconSensor.resistance(1000, -55 + ICE) / 1000,
                Tolerance.absolute(0.001),
                "printed to three digits");
        double[][] table = {{0, 815}, {20, 961}, {40, 1122.5}, {60, 1298.5}, {80, 1490}, {100, 1696}};
        for (double[] row : table) {
            published.check(
                    "R of a silicon PTC at %.0f °C [Ω]".formatted(row[0]),
                    "KTY81-110 table in an open repository",
                    row[1],
                    SiliconSensor.resistance(1000, row[0] + ICE),
                    Tolerance.relative(0.002),
                    "two coefficients for the whole range");
        }
    }
}
