package wetside.physics;

/** Resistance of a thermistor (NTC) and the temperature it stands for. */
public final class Thermistor {
    private static final double T25 = 298.15;

    private Thermistor() {}

    /**
     * Resistance by the two-parameter law.
     *
     * <pre>R = R25 exp[B (1/T − 1/298.15 K)]</pre>
     *
     * @param r25 resistance at 25 °C [Ω], above 0
     * @param beta B [K], 3000 to 4700
     * @param temperature T [K], above 0
     * @return R [Ω]
     *     <p>Validity: exact at the two temperatures B was taken from; 1 to 4 % off 100 K away.
     *     <p>Source: data-sheet practice; IEC 60539-1.
     *     <p>Checked: SensorsPublishedTest.
     */
    public static double beta(double r25, double beta, double temperature) {
        return r25 * Math.exp(beta * (1 / temperature - 1 / T25));
    }

    /**
     * Temperature by the two-parameter law.
     *
     * <pre>1/T = 1/298.15 K + ln(R/R25)/B</pre>
     *
     * @param r25 resistance at 25 °C [Ω], above 0
     * @param beta B [K]
     * @param resistance R [Ω], above 0
     * @return T [K]
     *     <p>Validity: as {@link #beta}.
     *     <p>Source: {@link #beta} turned round.
     *     <p>Checked: SensorsTest.
     */
    public static double betaTemperature(double r25, double beta, double resistance) {
        return 1 / (1 / T25 + Math.log(resistance / r25) / beta);
    }

    /**
     * Temperature by the three-parameter law.
     *
     * <pre>1/T = a + b ln R + c (ln R)³</pre>
     *
     * @param a [1/K]
     * @param b [1/K]
     * @param c [1/K]
     * @param resistance R [Ω], above 0
     * @return T [K]
     *     <p>Validity: within some 0.02 K over 100 K.
     *     <p>Source: Steinhart and Hart, Deep-Sea Research 15, 1968, p. 497.
     *     <p>Checked: SensorsPublishedTest.
     */
    public static double steinhartHart(double a, double b, double c, double resistance) {
        double log = Math.log(resistance);
        return 1 / (a + b * log + c * log * log * log);
    }

    /**
     * Temperature by a maker's four-parameter law.
     *
     * <pre>1/T = A + B x + C x² + D x³,   x = ln(R/R25)</pre>
     *
     * @param law A, B, C, D [1/K]
     * @param r25 resistance at 25 °C [Ω], above 0
     * @param resistance R [Ω], above 0
     * @return T [K]
     *     <p>Validity: −40 to 150 °C.
     *     <p>Source: Vishay BCcomponents NTC data sheets.
     *     <p>Checked: SensorsPublishedTest.
     */
    public static double fourTerms(double[] law, double r25, double resistance) {
        double x = Math.log(resistance / r25);
        return 1 / (law[0] + x * (law[1] + x * (law[2] + x * law[3])));
    }

    /**
     * Resistance by the same four-parameter law.
     *
     * <pre>x: A + B x + C x² + D x³ = 1/T,   R = R25 e^x</pre>
     *
     * Makers print a second set of four for this direction; solving the first keeps the two consistent.
     *
     * @param law A, B, C, D [1/K]
     * @param r25 resistance at 25 °C [Ω], above 0
     * @param temperature T [K], 230 to 430
     * @return R [Ω]
     *     <p>Validity: as {@link #fourTerms}.
     *     <p>Source: {@link #fourTerms} turned round by Newton.
     *     <p>Checked: SensorsPublishedTest.
     */
    public static double fourTermsResistance(double[] law, double r25, double temperature) {
        double wanted = 1 / temperature;
        double x = (wanted - law[0]) / law[1];
        for (int turn = 0; turn < 30; turn++) {
            double value = law[0] + x * (law[1] + x * (law[2] + x * law[3])) - wanted;
            double step = value / (law[1] + x * (2 * law[2] + 3 * x * law[3]));
            x -= step;
            if (Math.abs(step) < 1e-13) {
                break;
            }
        }
        return r25 * Math.exp(x);
    }
}
