package wetside.blueprint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Port;
import wetside.physics.Terms;
import wetside.units.Dimension;

/**
 * What all kinds of one machine have written down together. Ports joined by wires, plain fittings, contacts without a
 * conductance or linkages are one node here; pipes and contacts with a conductance are elements between nodes.
 */
public final class Blueprint {
    private final Machine machine;
    private final Slots slots = new Slots();
    private final FluidPlan fluid = new FluidPlan(slots);
    private final HeatPlan heat = new HeatPlan(slots);
    private final CurrentPlan current = new CurrentPlan(slots);
    private final List<Control> controls = new ArrayList<>();
    private final Map<String, Reading> readings = new LinkedHashMap<>();
    private final Map<String, Handle> handles = new LinkedHashMap<>();
    private final Map<Medium, PortNodes> nodes = new HashMap<>();
    private final Map<Integer, Integer> shafts = new HashMap<>();
    private final int atmosphere = slots.smooth("surroundings.air pressure", 101325);
    private final int ambient = slots.smooth("surroundings.air temperature", 293.15);
    private final FluidPlan.Outlet floor;
    private final List<FluidPlan.Outlet> covered = new ArrayList<>();
    private final Set<Machine.End> joined = new HashSet<>(256);

    public Blueprint(Machine machine) {
        this.machine = machine;
        for (Medium medium : Medium.values()) {
            nodes.put(medium, new PortNodes(machine, medium));
        }
        for (Machine.Line line : machine.joins().lines()) {
            joined.add(line.from());
            joined.add(line.to());
        }
        machine.joins().lines().stream()
                .filter(l -> Double.isNaN(l.bore()))
                .forEach(l -> nodes.get(Medium.FLUID).merge(l.from(), l.to()));
        mergeAll(Medium.CURRENT, machine.joins().wires());
        mergeAll(Medium.HEAT, machine.joins().contacts());
        mergeAll(Medium.MOTION, machine.joins().linkages());
        floor = fluid.outlet("under the machine", nodes.get(Medium.FLUID).fresh());
        pipes();
        contacts();
    }

    private void mergeAll(Medium medium, List<Machine.Join> joins) {
        joins.stream()
                .filter(j -> Double.isNaN(j.conductance()))
                .forEach(j -> nodes.get(medium).merge(j.from(), j.to()));
    }

    private void pipes() {
        for (Machine.Line line : machine.joins().lines()) {
            if (!Double.isNaN(line.bore())) {
                fluid.branch(
                        "line " + line.from() + " to " + line.to(),
                        nodes.get(Medium.FLUID).of(line.from()),
                        nodes.get(Medium.FLUID).of(line.to()),
                        pipe(line.bore(), line.length(), 1.5, Terms.Liquid.COLD),
                        FluidPlan.ALWAYS,
                        FluidPlan.ALWAYS,
                        line.rise());
            }
        }
    }

    private void contacts() {
        for (Machine.Join contact : machine.joins().contacts()) {
            if (!Double.isNaN(contact.conductance())) {
                heat.conductance(
                        nodes.get(Medium.HEAT).of(contact.from()),
                        nodes.get(Medium.HEAT).of(contact.to()),
                        contact.conductance());
            }
        }
    }

    /** A pipe as a passage: laminar term, and a turbulent term from its length and bends. */
    public static FluidPlan.Passage pipe(double bore, double length, double bends, Terms.Liquid water) {
        return new FluidPlan.Passage(
                Terms.pipeLaminar(bore, length, water), Terms.pipeTurbulent(bore, length, bends, water));
    }

    /** A hole as a passage. */
    public static FluidPlan.Passage jet(double bore, double dischargeCoefficient, Terms.Liquid water) {
        double b = Terms.jet(bore, dischargeCoefficient, water);
        return new FluidPlan.Passage(Terms.jetLaminar(b), b);
    }

    public Machine machine() {
        return machine;
    }

    /** Fluid node of a port. */
    public int node(Component c, String port) {
        return nodes.get(Medium.FLUID).of(end(c, port, Medium.FLUID));
    }

    /** A fluid node inside a component, joined to no port. */
    public int innerNode() {
        return nodes.get(Medium.FLUID).fresh();
    }

    /** Terminal of a port. */
    public int terminal(Component c, String port) {
        return nodes.get(Medium.CURRENT).of(end(c, port, Medium.CURRENT));
    }

    public int innerTerminal() {
        return nodes.get(Medium.CURRENT).fresh();
    }

    /** Heat node of a port. */
    public int heatNode(Component c, String port) {
        return nodes.get(Medium.HEAT).of(end(c, port, Medium.HEAT));
    }

    public int innerHeatNode() {
        return nodes.get(Medium.HEAT).fresh();
    }

    /** Slot shared by all motion ports linked to this one: a speed [rev/s] or a position. */
    public int motion(Component c, String port) {
        int node = nodes.get(Medium.MOTION).of(end(c, port, Medium.MOTION));
        return shafts.computeIfAbsent(node, n -> slots.smooth(c.id() + "." + port + ".motion", 0));
    }

    /** True when a fluid port is joined to something; an open port is plugged. */
    public boolean isJoined(Component c, String port) {
        return joined.contains(new Machine.End(c.id(), port));
    }

    private Machine.End end(Component c, String port, Medium medium) {
        Port declared = c.kind().port(port).orElseThrow(() -> new IllegalStateException(c + " has no port " + port));
        if (declared.medium() != medium) {
            throw new IllegalStateException(c + "." + port + " carries " + declared.medium() + ", not " + medium);
        }
        return new Machine.End(c.id(), port);
    }

    public int nodeCount(Medium medium) {
        return nodes.get(medium).count();
    }

    public Slots slots() {
        return slots;
    }

    public FluidPlan fluid() {
        return fluid;
    }

    public HeatPlan heat() {
        return heat;
    }

    public CurrentPlan current() {
        return current;
    }

    public void control(Control control) {
        controls.add(control);
    }

    public List<Control> controls() {
        return controls;
    }

    /** A number a person can read; {@code error} is the instrument's standard deviation in SI. */
    public void reading(Component c, String what, Dimension dimension, double error, Reading.Value value) {
        put(new Reading(c.id() + "." + what, dimension, List.of(), value, error));
    }

    /** One of several words a person can answer; {@code value} gives the index. */
    public void choice(Component c, String what, List<String> options, Reading.Value value) {
        put(new Reading(c.id() + "." + what, Dimension.NUMBER, options, value, 0));
    }

    private void put(Reading reading) {
        if (readings.put(reading.channel(), reading) != null) {
            throw new IllegalStateException("reading '" + reading.channel() + "' declared twice");
        }
    }

    public Map<String, Reading> readings() {
        return readings;
    }

    /** A handle with named positions; returns its slot. */
    public int handle(Component c, String what, List<String> options, int first) {
        int slot = slots.state(c.id() + "." + what, first);
        handles.put(c.id() + "." + what, new Handle(c.id() + "." + what, slot, options, 0, options.size() - 1));
        return slot;
    }

    /** A handle that takes any number in a range; returns its slot. */
    public int handle(Component c, String what, double least, double most, double first) {
        int slot = slots.state(c.id() + "." + what, first);
        handles.put(c.id() + "." + what, new Handle(c.id() + "." + what, slot, List.of(), least, most));
        return slot;
    }

    public Map<String, Handle> handles() {
        return handles;
    }

    /** Slot: air pressure [Pa]. */
    public int atmosphere() {
        return atmosphere;
    }

    /** Slot: air temperature [K]. */
    public int ambient() {
        return ambient;
    }

    /** Where leaks go: the bench under the machine. */
    public FluidPlan.Outlet floor() {
        return floor;
    }

    /** An outlet behind a panel: what leaves it is seen from outside as coming from the machine. */
    public void cover(FluidPlan.Outlet outlet) {
        covered.add(outlet);
    }

    /** Outlets behind panels; whole once every component is built. */
    public List<FluidPlan.Outlet> covered() {
        return covered;
    }
}
