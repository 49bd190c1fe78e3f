package wetside.machine;

import java.util.List;

/**
 * One part of one machine: a kind with values, a place and the words to find it by. Immutable; a fault, a draw or a
 * revision gives a changed copy.
 */
public final class Component {
    private final String id;
    private final Declaration kind;
    private final double[] values;
    private final Spread[] spreads;
    private final Place place;

    public Component(String id, Declaration kind, double[] values, Spread[] spreads, Place place) {
        this.id = id;
        this.kind = kind;
        this.values = values.clone();
        this.spreads = spreads.clone();
        this.place = place;
    }

    /**
     * Where a part sits and how to know it.
     *
     * @param name   what a technician calls it on this machine, e.g. "steam safety valve"
     * @param xyz    its middle, metres from the left-rear-bottom corner of the case, or empty for parts outside it
     * @param size   width, depth, height [m], or empty when it is as large as its kind usually is
     * @param behind panels to take off to reach it, the outermost first
     * @param mark   how to tell it from its neighbours
     * @param part   part number for this revision, may be empty
     * @param roles   what it is on this machine for procedures, e.g. "pump gauge"
     * @param station which of several alike, e.g. "left group"; empty for what there is once
     */
    public record Place(
            String name,
            List<Double> xyz,
            List<Double> size,
            List<String> behind,
            String mark,
            String part,
            List<String> roles,
            String station) {}

    public String id() {
        return id;
    }

    public Declaration kind() {
        return kind;
    }

    public Place place() {
        return place;
    }

    public String name() {
        return place.name();
    }

    /** Whether it plays a role at a station; the station of what there is once is empty. */
    boolean plays(String role, String station) {
        return place.station().equals(station) && place.roles().contains(role);
    }

    /** Value in SI units. */
    public double get(Parameter parameter) {
        return values[kind.indexOf(parameter)];
    }

    public double value(int index) {
        return values[index];
    }

    public Spread spread(int index) {
        return spreads[index];
    }

    public Component with(Parameter parameter, double value) {
        return withValue(kind.indexOf(parameter), value);
    }

    public Component withValue(int index, double value) {
        double[] changed = values.clone();
        changed[index] = value;
        return withValues(changed);
    }

    public Component withValues(double[] changed) {
        return new Component(id, kind, changed, spreads, place);
    }

    public Component withSpread(int index, Spread spread) {
        Spread[] changed = spreads.clone();
        changed[index] = spread;
        return new Component(id, kind, values, changed, place);
    }

    public double[] values() {
        return values.clone();
    }

    @Override
    public String toString() {
        return id + " (" + kind.name() + ")";
    }
}
