package wetside.plant;

import wetside.physics.Saturation;
import wetside.physics.Water;

/**
 * Enthalpy of flowing water and back. Liquid is taken incompressible at the saturation energy of its temperature, which is
 * what the vessels use, so that nothing is gained or lost when water moves.
 */
final class Enthalpy {
    /** Mean heat capacity of liquid water in the range of these machines [J/(kg K)]; for exchangers only. */
    static final double CP = 4200;

    /**
     * Water shut in and heated passes any pressure, and beyond the critical one nothing boils. From here on the boiling line
     * is taken as it is here, at 311 °C, where no part of these machines gets [Pa].
     */
    private static final double MOST = 10e6;

    private final double[] s = new double[Saturation.SIZE];
    private final double[] boilingLine = new double[4];

    /** h = u'(T) + p v'(T) [J/kg]. */
    double ofLiquid(double temperature, double pressure) {
        Saturation.at(temperature, s);
        return s[Saturation.LIQUID_ENERGY] + pressure * s[Saturation.LIQUID_VOLUME];
    }

    /** Boiling temperature at a pressure [K]. */
    double boiling(double pressure) {
        return line(pressure)[1];
    }

    /** Share of water of enthalpy {@code h} that is vapour at {@code pressure}. */
    double vapourShare(double h, double pressure) {
        double[] l = line(pressure);
        return Math.max(0, Math.min(1, (h - l[2]) / (l[3] - l[2])));
    }

    /** Temperature of water of enthalpy {@code h} at {@code pressure} [K]; boiling water and steam stay at boiling. */
    double temperature(double h, double pressure) {
        double[] l = line(pressure);
        if (h >= l[2]) {
            return l[1];
        }
        double t = 273.15 + h / 4195;
        for (int i = 0; i < 3; i++) {
            Saturation.at(t, s);
            double f = s[Saturation.LIQUID_ENERGY] + pressure * s[Saturation.LIQUID_VOLUME] - h;
            t -= f / s[Saturation.LIQUID_ENERGY_SLOPE];
        }
        return t;
    }

    /** {p, T, h', h''} on the boiling line, kept for the last pressure asked. */
    private double[] line(double under) {
        double pressure = Math.min(under, MOST);
        if (boilingLine[0] != pressure) {
            double t = Water.saturationTemperature(pressure);
            Saturation.at(t, s);
            boilingLine[0] = pressure;
            boilingLine[1] = t;
            boilingLine[2] = s[Saturation.LIQUID_ENERGY] + pressure * s[Saturation.LIQUID_VOLUME];
            boilingLine[3] = s[Saturation.VAPOUR_ENERGY] + pressure * s[Saturation.VAPOUR_VOLUME];
        }
        return boilingLine;
    }
}
