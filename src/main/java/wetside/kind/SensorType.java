package wetside.kind;

import wetside.blueprint.HeatPlan;
import wetside.physics.Platinum;
import wetside.physics.SiliconSensor;
import wetside.physics.Thermistor;

/** Tables a temperature controller can be set to. */
enum SensorType {
    NTC_10K {
        @Override
        double temperature(double ohms) {
            return Thermistor.betaTemperature(10e3, 3977, ohms);
        }
    },
    NTC_50K {
        @Override
        double temperature(double ohms) {
            return Thermistor.betaTemperature(50e3, 3950, ohms);
        }
    },
    PT1000 {
        @Override
        double temperature(double ohms) {
            return Platinum.temperature(1000, ohms);
        }

        @Override
        boolean falls() {
            return false;
        }
    },
    PTC_1K {
        @Override
        double temperature(double ohms) {
            return SiliconSensor.temperature(1000, ohms);
        }

        @Override
        boolean falls() {
            return false;
        }
    };

    /** Outside these the instrument speaks of a sensor fault [K]. */
    private static final double LEAST = 263.15;

    private static final double MOST = 438.15;

    abstract double temperature(double ohms);

    /** Resistance falls as it warms. */
    boolean falls() {
        return true;
    }

    /** Temperature [K], NaN when no sensor of this type could have that resistance in any machine. */
    double believed(double ohms) {
        if (!(ohms > 1) || ohms > 1e8) {
            return Double.NaN;
        }
        double t = temperature(ohms);
        return t >= LEAST && t <= MOST ? t : Double.NaN;
    }

    /** True when a resistance out of range is too high rather than too low. */
    boolean isOpen(double ohms) {
        return ohms > (falls() ? 2e3 : 1e3);
    }

    HeatPlan.SensorLaw law(double error) {
        return ohms -> believed(ohms) + error;
    }

    static SensorType of(double setting) {
        return values()[(int) Math.max(0, Math.min(values().length - 1, Math.round(setting)))];
    }
}
