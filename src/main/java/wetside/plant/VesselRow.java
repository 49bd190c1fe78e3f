package wetside.plant;

import wetside.blueprint.FluidPlan;

/**
 * What the flow solver knows of one vessel during a step: its content at the start of the step, held at the temperature
 * found by the heat step. Set with {@link #at}, read after the solve.
 */
public final class VesselRow {
    final double volume;
    final double stiffness;
    double mass;
    double air;
    double temperature;
    double capacity;
    double pressure;
    double level;

    private VesselRow(double volume, double stiffness) {
        this.volume = volume;
        this.stiffness = stiffness;
    }

    public static VesselRow of(FluidPlan.Vessel vessel) {
        return new VesselRow(vessel.volume(), vessel.stiffness());
    }

    /**
     * Content at the start of the step.
     *
     * @param mass        water substance Mⁿ [kg]
     * @param air         [kg]
     * @param temperature T* after the heat step [K]
     * @param capacity    dU/dT of the content, with what follows it within a step [J/K]
     */
    public void at(double mass, double air, double temperature, double capacity) {
        this.mass = mass;
        this.air = air;
        this.temperature = temperature;
        this.capacity = capacity;
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
