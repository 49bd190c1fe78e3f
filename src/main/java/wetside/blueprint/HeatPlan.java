package wetside.blueprint;

import java.util.ArrayList;
import java.util.List;

/** Heat nodes, what they hold and what joins them. Temperatures [K], heat flows [W]. */
public final class HeatPlan {
    /** The surroundings as a heat node: held at the surroundings' temperature. */
    public static final int SURROUNDINGS = -1;

    private final Slots slots;
    private final List<Capacity> capacities = new ArrayList<>();
    private final List<Conductance> conductances = new ArrayList<>();
    private final List<Immersed> immersed = new ArrayList<>();
    private final List<Source> sources = new ArrayList<>();
    private final List<NodeSlot> temperatures = new ArrayList<>();
    private final List<Regulator> regulators = new ArrayList<>();
    private final List<Sensor> sensors = new ArrayList<>();

    HeatPlan(Slots slots) {
        this.slots = slots;
    }

    /** {@code node} holds {@code capacity} [J/K] more. */
    public record Capacity(int node, double capacity) {}

    /** Heat passes between two nodes, or a node and {@link #SURROUNDINGS}, at {@code conductance} [W/K]. */
    public record Conductance(int from, int to, double conductance) {}

    /**
     * Metal in the content of a vessel: what of it the water covers passes heat at its share of {@code conductance} [W/K], the
     * rest, in steam, at hardly any. In contact with anything else than a vessel's content it counts as covered.
     *
     * @param bottom level below which none of it is covered, as a share of the vessel's volume; {@code top}: above which all is
     */
    public record Immersed(int metal, int content, double conductance, double bottom, double top) {
        /** What metal in steam passes, as a share of what it passes in water: free convection against boiling. */
        private static final double IN_STEAM = 0.02;

        /** Conductance at a level [W/K]. */
        public double at(double level) {
            double covered = Math.max(0, Math.min(1, (level - bottom) / (top - bottom)));
            return conductance * (IN_STEAM + (1 - IN_STEAM) * covered);
        }
    }

    /** The power in slot {@code power} [W] warms {@code node}. */
    public record Source(int node, int power) {}

    /** Temperature of {@code node} is wanted in {@code slot} [K]. */
    public record NodeSlot(int node, int slot) {}

    /**
     * A proportional-integral regulator with a time-proportioned output. It knows the temperature only through the
     * resistance it sees, so an open, shorted, swapped or drifting sensor acts by itself.
     *
     * @param law       temperature for a resistance seen, NaN when out of range (then the output is off)
     * @param seen      slot with the resistance seen between its terminals [Ω]
     * @param shown     slot that receives the temperature it believes [K], NaN when out of range
     * @param set       slot, set point [K]
     * @param gain      share of full output per kelvin
     * @param reset     integral time [s]
     * @param integral  slot, integral part of the output
     * @param powered   slot, above 0.5 while it has supply
     * @param duty      slot that receives the output 0..1
     * @param window    length of one pulse window [s], for lamps and pulses
     */
    public record Regulator(
            String name,
            SensorLaw law,
            int seen,
            int shown,
            int set,
            double gain,
            double reset,
            int integral,
            int powered,
            int duty,
            double window) {}

    /**
     * A resistance thermometer at a heat node: the plant keeps {@code ohms} at {@code law} of the node's temperature and
     * lets regulators look ahead through it.
     *
     * @param ohms slot [Ω], the value of a {@link CurrentPlan.Varying}
     */
    public record Sensor(int node, int ohms, ResistanceLaw law) {}

    /** Resistance [Ω] at a temperature [K]. */
    @FunctionalInterface
    public interface ResistanceLaw {
        double ohms(double temperature);
    }

    /** Temperature [K] for a resistance seen [Ω]; NaN when the instrument would call it a sensor fault. */
    @FunctionalInterface
    public interface SensorLaw {
        double temperature(double ohms);
    }

    public void capacity(int node, double capacity) {
        capacities.add(new Capacity(node, capacity));
    }

    public void conductance(int from, int to, double conductance) {
        conductances.add(new Conductance(from, to, conductance));
    }

    public void immersed(Immersed metal) {
        immersed.add(metal);
    }

    public List<Immersed> immersed() {
        return immersed;
    }

    public void source(int node, int powerSlot) {
        sources.add(new Source(node, powerSlot));
    }

    /** Slot that receives the temperature of a node [K]. */
    public int temperature(int node) {
        for (NodeSlot known : temperatures) {
            if (known.node() == node) {
                return known.slot();
            }
        }
        NodeSlot fresh = new NodeSlot(node, slots.smooth("heat " + node + ".temperature", 0));
        temperatures.add(fresh);
        return fresh.slot();
    }

    public void sensor(Sensor sensor) {
        sensors.add(sensor);
    }

    public List<Sensor> sensors() {
        return sensors;
    }

    public void regulator(Regulator regulator) {
        regulators.add(regulator);
    }

    public List<Capacity> capacities() {
        return capacities;
    }

    public List<Conductance> conductances() {
        return conductances;
    }

    public List<Source> sources() {
        return sources;
    }

    public List<NodeSlot> temperatures() {
        return temperatures;
    }

    public List<Regulator> regulators() {
        return regulators;
    }
}
