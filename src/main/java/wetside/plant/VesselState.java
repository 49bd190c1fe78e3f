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
    static final double LEAST_AIR = 1e-7;

    private static final double LEAST_WATER = 1e-6;

    final FluidPlan.Vessel vessel;
    final Flash flash = new Flash();
    double water;
    double energy;
    double air;
    double salt;

    VesselState(FluidPlan.Vessel vessel) {
        this.vessel = vessel;
    }

    /** Fills the vessel to its starting share at rest: water, the rest air and vapour at the pressure outside. */
    void fill(double temperature, double atmosphere, double conductivity) {
        double[] s = new double[Saturation.SIZE];
        Saturation.at(temperature, s);
        double vl = s[Saturation.LIQUID_VOLUME];
        double gas = vessel.volume() * (1 - vessel.fill());
        double liquid = vessel.volume() * vessel.fill() / vl;
        double vapour = gas / s[Saturation.VAPOUR_VOLUME];
        water = liquid + vapour;
        air = Math.max(LEAST_AIR, (atmosphere - s[Saturation.PRESSURE]) * gas / (R_AIR * temperature));
        energy = liquid * s[Saturation.LIQUID_ENERGY]
                + vapour * s[Saturation.VAPOUR_ENERGY]
                + air * CV_AIR * (temperature - ZERO);
        salt = liquid * conductivity;
        flash.solve(water, energy, air, vessel.volume(), vessel.stiffness(), temperature);
    }

    /** Books a stream into the vessel (out of it when {@code mass} is negative). */
    void book(double mass, double airShare, double enthalpy, double saltPerMass) {
        water = Math.max(LEAST_WATER, water + mass * (1 - airShare));
        air = Math.max(LEAST_AIR, air + mass * airShare);
        energy += mass * enthalpy;
        salt = Math.max(0, salt + mass * saltPerMass);
    }

    void settle() {
        flash.solve(water, energy, air, vessel.volume(), vessel.stiffness(), flash.temperature());
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

    double airShareOfGas() {
        return air <= 2 * LEAST_AIR ? 0 : air / (flash.vapour() + air);
    }

    double liquidEnergy() {
        return flash.liquidEnergy();
    }

    double liquidEnthalpy() {
        return flash.liquidEnergy() + flash.pressure() * flash.liquidVolume();
    }

    /** Of the gas as it is mixed [J/kg]. */
    double gasEnthalpy() {
        double y = airShareOfGas();
        double steam = flash.vapourEnergy() + flash.saturationPressure() * flash.vapourVolume();
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
        return flash.heatCapacity();
    }

    /** Share of the volume that is liquid. */
    double level() {
        return (water - flash.vapour()) * flash.liquidVolume() / vessel.volume();
    }
}
