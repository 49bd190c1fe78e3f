package wetside.plant;

import wetside.blueprint.FluidPlan;
import wetside.physics.Saturation;

/**
 * What is in one vessel: masses of water substance and air, internal energy, salt; and what follows from them. Only the
 * masses and the energy are state; temperature, pressure and level are read off them.
 */
final class VesselState {
    static final double ZERO = 273.15;
    /** Gas constant of air [J/(kg K)] and its heat capacity at constant volume [J/(kg K)]. */
    static final double R_AIR = 287.05;

    static final double CV_AIR = 718;
    /** A bubble always remains: removes the kink where a vessel becomes full [kg]. */
    static final double LEAST_AIR = Flash.LEAST_AIR;

    private static final double LEAST_WATER = 1e-6;

    final FluidPlan.Vessel vessel;
    final VesselRow row;
    private final Flash flash;
    private final double[] s;
    double water;
    double energy;
    double air;
    double salt;
    private double mostAir = 1;
    /** Water asked of it in this step beyond what it had [kg]. */
    double missing;

    VesselState(FluidPlan.Vessel vessel) {
        this.vessel = vessel;
        row = VesselRow.of(vessel);
        flash = new Flash(vessel.volume(), vessel.stiffness());
        s = flash.saturation();
    }

    /** Fills the vessel to its starting share at rest: water, the rest air and vapour at the pressure outside. */
    void fill(double temperature, double atmosphere, double conductivity) {
        Saturation.at(temperature, s);
        double gas = vessel.volume() * (1 - vessel.fill());
        double liquid = vessel.volume() * vessel.fill() / s[Saturation.LIQUID_VOLUME];
        water = liquid + gas / s[Saturation.VAPOUR_VOLUME];
        air = Math.max(LEAST_AIR, (atmosphere - s[Saturation.PRESSURE]) * gas / (R_AIR * temperature));
        salt = liquid * conductivity;
        energy = flash.at(water, air, temperature);
    }

    /** Books a stream into the vessel (out of it when {@code mass} is negative). */
    void book(double mass, double airShare, double enthalpy, double saltPerMass) {
        water += mass * (1 - airShare);
        air = Math.max(LEAST_AIR, air + mass * airShare);
        energy += mass * enthalpy;
        salt += mass * saltPerMass;
    }

    /**
     * Finds what the content is now, all streams booked: of a vessel flushed within a step more may leave than was in it, as
     * long as enough comes in. It then follows from masses and temperature alone, as {@link #restored} has it.
     */
    void settle() {
        missing = Math.max(0, LEAST_WATER - water);
        water = Math.max(LEAST_WATER, water);
        salt = Math.max(0, salt);
        flash.solve(water, energy, air, flash.temperature());
        flash.at(water, air, flash.temperature());
    }

    /** After masses and energy were put back from a saved state. */
    void restored(double temperature) {
        flash.at(water, air, temperature);
    }

    /** Tells the water solver what is in here, held at the temperature the heat step found, some steam already felt in it. */
    void tell(double heated, double steam) {
        row.at(water, air, heated, flash.capacity(), steam);
    }

    double temperature() {
        return flash.temperature();
    }

    double pressure() {
        return flash.pressure();
    }

    double gasMass() {
        return Math.max(LEAST_AIR, flash.vapour() + air);
    }

    /** Of the gas that leaves in this step: no more air than there is. */
    double airShareOfGas() {
        return Math.min(air <= 2 * LEAST_AIR ? 0 : air / (flash.vapour() + air), mostAir);
    }

    /** Shares out the air among all that leaves during a step: {@code gas} [kg/s] for {@code dt}. */
    void offerAir(double dt, double gas) {
        double spare = Math.max(0, air - LEAST_AIR);
        mostAir = gas * dt > spare ? spare / (gas * dt) : 1;
    }

    /**
     * Energy that a kilogram more takes up here at an unchanged temperature [J/kg]: water where there is water, gas as it is
     * where all has boiled away. Among water, that of air is too little to count.
     */
    double energyPerMass(double airShare) {
        if (!flash.isDry()) {
            return (1 - airShare) * s[Saturation.LIQUID_ENERGY];
        }
        return (1 - airShare) * s[Saturation.VAPOUR_ENERGY] + airShare * CV_AIR * (flash.temperature() - ZERO);
    }

    double liquidEnthalpy() {
        return s[Saturation.LIQUID_ENERGY] + flash.pressure() * s[Saturation.LIQUID_VOLUME];
    }

    /** Of the gas as it is mixed [J/kg]. */
    double gasEnthalpy() {
        double y = airShareOfGas();
        double steam = s[Saturation.VAPOUR_ENERGY] + s[Saturation.PRESSURE] * s[Saturation.VAPOUR_VOLUME];
        return (1 - y) * steam + y * airEnthalpy(flash.temperature());
    }

    static double airEnthalpy(double temperature) {
        return CV_AIR * (temperature - ZERO) + R_AIR * temperature;
    }

    double conductivity() {
        double liquid = Math.max(LEAST_WATER, water - flash.vapour());
        return salt / liquid;
    }

    /** Heat capacity of the content at fixed masses [J/K]. */
    double heatCapacity() {
        return flash.capacity();
    }

    /** Share of the volume that is liquid. */
    double level() {
        return flash.level();
    }
}
