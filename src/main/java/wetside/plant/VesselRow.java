package wetside.plant;

import wetside.blueprint.FluidPlan;
import wetside.physics.Saturation;

/**
 * What the flow solver knows of one vessel during a step: its content at the start of the step, held at the temperature
 * found by the heat step. Set with {@link #at}, read after the solve.
 *
 * <pre>
 * M(p, M_a) = (V − α M_a R_a T / p_a) / (v' (1 − p_a/K)),   p_a = p − p_s(T)
 * dry:  M(p, M_a) = (p V − M_a R_a T) / (p_s v'')
 * </pre>
 */
public final class VesselRow {
    final double volume;
    final double stiffness;
    private static final double STIFF = 1e8;
    private static final double FULL = 0.99;

    private final double[] sat = new double[Saturation.SIZE];
    private double temperature;
    private double saturation;
    private double liquidVolume;
    private double vapourVolume;
    private double alpha;
    private double gasVolume;
    private boolean wet;
    double mass;
    double air;
    double assumed;
    double pressure;
    double level;
    /** Density of steam and air together [kg/m³], and the air's share of their mass. */
    double gasDensity;

    double airShare;
    /** Pressure rise per mass of steam added, by the heat it brings [Pa/kg]. */
    double boil;
    /** Slopes left by {@link #massAt}: dM/dp [kg/Pa] and dM/dMa [–]. */
    double byPressure;

    double byAir;

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
        this.assumed = assumed;
        Saturation.at(temperature, sat);
        saturation = sat[Saturation.PRESSURE];
        liquidVolume = sat[Saturation.LIQUID_VOLUME];
        vapourVolume = sat[Saturation.VAPOUR_VOLUME];
        alpha = 1 - liquidVolume / vapourVolume;
        wet = mass > volume / vapourVolume;
        pressure = pressureOf(mass);
        level = Math.min(1, Math.max(0, 1 - gasVolume / volume));
        double vapour = Math.min(mass, gasVolume / vapourVolume);
        airShare = this.air / (this.air + vapour);
        gasDensity = (this.air + vapour) / gasVolume;
        double latent = sat[Saturation.VAPOUR_ENERGY]
                - sat[Saturation.LIQUID_ENERGY]
                + saturation * (vapourVolume - liquidVolume);
        boil = wet ? sat[Saturation.PRESSURE_SLOPE] * latent / capacity : 0;
    }

    private double pressureOf(double mass) {
        double airEnergy = air * Flash.AIR_CONSTANT * temperature;
        if (!wet) {
            gasVolume = volume;
            return (mass * saturation * vapourVolume + airEnergy) / volume;
        }
        double free = volume - mass * liquidVolume;
        double beta = mass * liquidVolume / stiffness * airEnergy;
        double root = Math.sqrt(free * free + 4 * alpha * beta);
        gasVolume = free >= 0 ? (free + root) / (2 * alpha) : 2 * beta / (root - free);
        return saturation + airEnergy / gasVolume;
    }

    /**
     * Mass the vessel would hold at a pressure and with an amount of air [kg]; leaves its slopes in {@link #byPressure}
     * and {@link #byAir}. A vessel that was wet keeps boiling at its temperature, however much is asked of it in one step.
     */
    double massAt(double p, double air) {
        double energyPerAir = Flash.AIR_CONSTANT * temperature;
        double least = Math.max(Flash.LEAST_AIR, air);
        double airEnergy = least * energyPerAir;
        if (!wet) {
            byPressure = volume / (saturation * vapourVolume);
            byAir = -energyPerAir / (saturation * vapourVolume);
            return byPressure * p - airEnergy / (saturation * vapourVolume);
        }
        double over = p - saturation;
        double dry = airEnergy / volume;
        if (over < dry) {
            byPressure = alpha * volume * volume / (this.air * energyPerAir * liquidVolume);
            byAir = -byPressure * energyPerAir / volume;
            return (1 - alpha) * volume / liquidVolume + byPressure * (over - dry);
        }
        double yielding = 1 - Math.min(over, STIFF) / stiffness;
        double perMass = 1 / (liquidVolume * yielding);
        double bubble = alpha * airEnergy / over;
        double mass = (volume - bubble) * perMass;
        byPressure = bubble / over * perMass + mass / (stiffness * yielding);
        byAir = -alpha * energyPerAir / over * perMass;
        return over <= STIFF ? mass : mass * (1 + (over - STIFF) / (stiffness * yielding));
    }

    /** Pressure at the end of the step [Pa]; right for a vessel full of liquid, provisional for one with steam. */
    public double pressure() {
        return pressure;
    }

    /**
     * Where the search for the pressure begins: a full vessel stays near where it was among the flows, however much it was
     * heated; what it would hold by itself may be some millibar off, which alone would drive grams a second.
     *
     * @param last solution of the last step [Pa], 0 for none
     */
    double guess(double last) {
        return level > FULL && last > 0 ? last : pressure;
    }

    /** Share of the volume that was liquid when the step began. */
    public double level() {
        return level;
    }
}
