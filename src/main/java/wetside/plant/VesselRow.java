package wetside.plant;

import wetside.blueprint.FluidPlan;
import wetside.physics.Saturation;

/**
 * What the flow solver knows of one vessel during a step: its content at the start of the step, held at the temperature
 * found by the heat step. Set with {@link #at}, read after the solve.
 *
 * <pre>
 * M(p) = (V − α M_a R_a T / p_a) / (v' (1 − p_a/K)),   p_a = p − p_s(T)
 * </pre>
 *
 * and below the pressure at which the last water has boiled away, the ideal line M = V (p − p_a) / (p_s v'').
 */
public final class VesselRow {
    private static final double STIFF = 1e8;

    final double volume;
    final double stiffness;
    private final double[] sat = new double[Saturation.SIZE];
    private double temperature;
    private double capacity;
    private double airEnergy;
    private double saturation;
    private double liquidVolume;
    private double alpha;
    private double dryPressure;
    private double dryMass;
    private double drySlope;
    private double gasVolume;
    double mass;
    double air;
    double assumed;
    double pressure;
    double level;
    double gasDensity;
    /** Pressure rise per mass of the vessel's own gas added [Pa/kg], by the heat it brings and the air in it. */
    double perGas;
    /** Pressure rise per mass of air added [Pa/kg]. */
    double perAir;
    /** dM/dp from the last call of {@link #massAt}. */
    double slope;

    private VesselRow(double volume, double stiffness) {
        this.volume = volume;
        this.stiffness = stiffness;
    }

    public static VesselRow of(FluidPlan.Vessel vessel) {
        return new VesselRow(vessel.volume(), vessel.stiffness());
    }

    /** As {@link #at(double, double, double, double, double)}, with no gas flow foreseen in T*. */
    public void at(double mass, double air, double temperature, double capacity) {
        at(mass, air, temperature, capacity, 0);
    }

    /**
     * Content at the start of the step.
     *
     * @param mass        water substance Mⁿ [kg]
     * @param air         [kg]
     * @param temperature T* after the heat step [K]
     * @param capacity    dU/dT of the content, with what follows it within a step [J/K]
     * @param assumed     net gas flow into the vessel [kg/s] whose latent heat T* already contains
     */
    public void at(double mass, double air, double temperature, double capacity, double assumed) {
        this.mass = mass;
        this.air = Math.max(Flash.LEAST_AIR, air);
        this.temperature = temperature;
        this.capacity = capacity;
        this.assumed = assumed;
        Saturation.at(temperature, sat);
        saturation = sat[Saturation.PRESSURE];
        liquidVolume = sat[Saturation.LIQUID_VOLUME];
        double vapourVolume = sat[Saturation.VAPOUR_VOLUME];
        alpha = 1 - liquidVolume / vapourVolume;
        airEnergy = this.air * Flash.AIR_CONSTANT * temperature;
        dryPressure = saturation + airEnergy / volume;
        drySlope = volume / (saturation * vapourVolume);
        dryMass = wet(dryPressure - saturation);
        pressure = pressureAt(mass);
        level = Math.min(1, Math.max(0, 1 - gasVolume / volume));
        gasEffects(vapourVolume);
    }

    private void gasEffects(double vapourVolume) {
        double vapour = Math.min(mass, gasVolume / vapourVolume);
        double airShare = air / (air + vapour);
        double latent = sat[Saturation.VAPOUR_ENERGY]
                - sat[Saturation.LIQUID_ENERGY]
                + saturation * (vapourVolume - liquidVolume);
        double perVapour = mass > dryMass ? sat[Saturation.PRESSURE_SLOPE] * latent / capacity : 1 / drySlope;
        perAir = Flash.AIR_CONSTANT * temperature / gasVolume;
        perGas = (1 - airShare) * perVapour + airShare * perAir;
        gasDensity = (air + vapour) / gasVolume;
    }

    /** Pressure at which the vessel holds a mass [Pa]: the inverse of {@link #massAt}. */
    private double pressureAt(double mass) {
        if (mass <= dryMass) {
            gasVolume = volume;
            return dryPressure + (mass - dryMass) / drySlope;
        }
        double free = volume - mass * liquidVolume;
        double beta = mass * liquidVolume / stiffness * airEnergy;
        double root = Math.sqrt(free * free + 4 * alpha * beta);
        gasVolume = free >= 0 ? (free + root) / (2 * alpha) : 2 * beta / (root - free);
        return saturation + airEnergy / gasVolume;
    }

    /** Mass the vessel would hold at a pressure [kg]; leaves dM/dp in {@link #slope}. */
    double massAt(double p) {
        if (p <= dryPressure) {
            slope = drySlope;
            return dryMass + (p - dryPressure) * drySlope;
        }
        double over = p - saturation;
        if (over <= STIFF) {
            return wet(over);
        }
        return wet(STIFF) + (over - STIFF) * slope;
    }

    private double wet(double over) {
        double yielding = 1 - over / stiffness;
        double perMass = 1 / (liquidVolume * yielding);
        double bubble = alpha * airEnergy / over;
        double m = (volume - bubble) * perMass;
        slope = bubble / over * perMass + m / (stiffness * yielding);
        return m;
    }

    /** Pressure at the end of the step [Pa]; right for a vessel full of liquid, provisional for one with steam. */
    public double pressure() {
        return pressure;
    }

    /** Share of the volume that was liquid when the step began. */
    public double level() {
        return level;
    }
}
