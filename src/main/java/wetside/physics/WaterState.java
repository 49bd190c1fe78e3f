package wetside.physics;

/**
 * Everything the formulation says about water in one phase at one pressure and temperature.
 *
 * @param volume specific volume v [m³/kg]
 * @param enthalpy h [J/kg], zero near the triple point of liquid water
 * @param internalEnergy u [J/kg], zero for liquid water at the triple point
 * @param entropy s [J/(kg K)]
 * @param heatCapacity at constant pressure c_p [J/(kg K)]
 * @param soundSpeed w [m/s]
 * @param expansion isobaric cubic expansion coefficient [1/K]
 * @param compressibility isothermal [1/Pa]
 */
public record WaterState(
        double volume,
        double enthalpy,
        double internalEnergy,
        double entropy,
        double heatCapacity,
        double soundSpeed,
        double expansion,
        double compressibility) {
    /** Specific gas constant of water [J/(kg K)], IAPWS R7-97. */
    public static final double GAS_CONSTANT = 461.526;

    /** Mass per volume [kg/m³]. */
    public double density() {
        return 1 / volume;
    }

    /** The exponent k of an isentropic change p v^k = const at this state. */
    public double isentropicExponent(double pressure) {
        return soundSpeed * soundSpeed / (pressure * volume);
    }

    /** From the dimensionless Gibbs energy g(pi, tau) and its derivatives, IAPWS R7-97 tables 3 and 12. */
    static WaterState of(
            double pressure,
            double temperature,
            double pi,
            double tau,
            double g,
            double gp,
            double gpp,
            double gt,
            double gtt,
            double gpt) {
        double rt = GAS_CONSTANT * temperature;
        double mixed = gp - tau * gpt;
        return new WaterState(
                pi * gp * rt / pressure,
                tau * gt * rt,
                rt * (tau * gt - pi * gp),
                GAS_CONSTANT * (tau * gt - g),
                -GAS_CONSTANT * tau * tau * gtt,
                Math.sqrt(rt * gp * gp / (mixed * mixed / (tau * tau * gtt) - gpp)),
                (1 - tau * gpt / gp) / temperature,
                -pi * gpp / (gp * pressure));
    }

    static void require(boolean inRange, String law, double pressure, double temperature) {
        if (!inRange) {
            throw new IllegalArgumentException(law + " does not hold at " + pressure + " Pa, " + temperature + " K");
        }
    }

    /** The base to a whole power, which may be negative. */
    static double power(double base, int exponent) {
        double result = 1;
        double square = base;
        for (int n = Math.abs(exponent); n > 0; n >>= 1) {
            if ((n & 1) == 1) {
                result *= square;
            }
            square *= square;
        }
        return exponent < 0 ? 1 / result : result;
    }
}
