package wetside.plant;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Handle;
import wetside.blueprint.HeatPlan;
import wetside.blueprint.Reading;
import wetside.blueprint.Slots;
import wetside.machine.BadFile;
import wetside.machine.Medium;

/** One machine that can be run. Not shared between threads; make one per draw. */
public final class Plant {
    private static final int SETTLE_ROUNDS = 12;
    /** Water that no balance misses [kg]. */
    private static final double NEGLIGIBLE = 1e-9;
    /** Heat capacity from which a vessel's content counts fully for the length of a step: a few grams of water [J/K]. */
    private static final double MATTERS = 20;
    /** How much a bend of metal with an element in it counts at most, and against what its heat would do to the water it is in. */
    private static final double HEATED = 0.1;

    private static final double HEATED_IN_WATER = 2;

    private final Blueprint blueprint;
    private final Slots slots;
    private final VesselState[] vessels;
    private final VesselRow[] rows;
    private final HeatNodes nodes;
    private final HeatStep heat;
    private final Regulators regulators;
    private final Hydraulics hydraulics;
    private final Circuit circuit;
    private final Map<String, Circuit> alone = new HashMap<>();
    /** How contacts stood when regulators last listened. */
    private final long[] listened;

    private long awake;

    private final Carried carried;
    private final LoopFlow[] loops;
    private final Control[] controls;
    private final int[] stateSlots;
    private final HeatPlan.NodeSlot[] temperatureSlots;

    final double[] x;
    final double[] temperatures;
    final double[] slopes;
    final double[] capacities;
    private final double[] before;
    private final double[] weights;
    /** Vessel in whose content an element's metal is, or null. */
    private final VesselState[] heaters;

    /** Vessel whose content a node is, or null. */
    private final VesselState[] contents;

    private final Balance balance;
    private final JumpSearch jumps;

    private Plant(Blueprint b) {
        blueprint = b;
        slots = b.slots();
        hydraulics = Hydraulics.of(b.fluid(), slots, b.nodeCount(Medium.FLUID));
        x = slots.firstValues();
        nodes = new HeatNodes(b);
        vessels = b.fluid().vessels().stream().map(VesselState::new).toArray(VesselState[]::new);
        rows = Arrays.stream(vessels).map(v -> v.row).toArray(VesselRow[]::new);
        regulators = new Regulators(
                b.heat(),
                nodes,
                b.heat().sources().stream().mapToInt(HeatPlan.Source::power).toArray());
        heat = new HeatStep(nodes, b.heat(), regulators, b.fluid());
        circuit = Circuit.of(b.current(), b.nodeCount(Medium.CURRENT));
        listened = circuit.unlikeAny();
        carried = new Carried(b, vessels, hydraulics, nodes);
        loops = LoopFlow.all(b.fluid());
        controls = b.controls().toArray(new Control[0]);
        stateSlots = java.util.stream.IntStream.range(0, slots.size())
                .filter(slots::isState)
                .toArray();
        temperatureSlots = b.heat().temperatures().toArray(new HeatPlan.NodeSlot[0]);
        temperatures = new double[nodes.count()];
        slopes = new double[nodes.count()];
        advectedByNode = new double[nodes.count()];
        capacities = new double[nodes.count()];
        before = new double[stateSlots.length];
        balance = new Balance();
        jumps = new JumpSearch(b.controls(), stateSlots, x.length);
        weights = new double[nodes.count()];
        Arrays.fill(weights, 1);
        contents = new VesselState[nodes.count()];
        for (int v = 0; v < vessels.length; v++) {
            contents[nodes.ofVessel(v)] = vessels[v];
        }
        b.heat().sources().forEach(s -> weights[nodes.of(s.node())] = HEATED);
        heaters = new VesselState[nodes.count()];
        for (HeatPlan.Immersed i : b.heat().immersed()) {
            int v = nodes.vesselWith(nodes.of(i.content()));
            if (v >= 0 && weights[nodes.of(i.metal())] == HEATED) {
                heaters[nodes.of(i.metal())] = vessels[v];
            }
        }
        start();
    }

    /** Compiles a machine; BadFile when its lines cannot be. */
    public static Plant of(Blueprint blueprint) {
        try {
            return new Plant(blueprint);
        } catch (ImpossibleNetwork e) {
            throw BadFile.whole(
                    blueprint.machine().identity().id(),
                    "lines: " + e.getMessage() + "; a line with a bore and a length, or a part, belongs between",
                    "");
        }
    }

    private void start() {
        double ambient = x[blueprint.ambient()];
        Arrays.fill(temperatures, ambient);
        fill(ambient, 0);
        fill(ambient, Supply.conductivity(blueprint.fluid(), slots, x));
        carried.fillStores(x, x[blueprint.atmosphere()]);
        circuitChanged();
        balance.open(storedMass(), storedAir(), storedEnergy());
    }

    private void fill(double ambient, double conductivity) {
        for (VesselState v : vessels) {
            v.fill(ambient, x[blueprint.atmosphere()], conductivity);
        }
        show();
        settle();
    }

    /** Takes one step of {@code dt}, whatever its error; returns false when water and steam found no solution. */
    boolean step(double dt) {
        double ambient = x[blueprint.ambient()];
        double atmosphere = x[blueprint.atmosphere()];
        for (int v = 0; v < vessels.length; v++) {
            capacities[nodes.ofVessel(v)] = vessels[v].heatCapacity();
        }
        for (int i = 0; i < loops.length; i++) {
            int v = nodes.ofVessel(loops[i].vessel());
            int g = nodes.of(loops[i].loop().heatNode());
            heat.loop(
                    i,
                    v,
                    g,
                    loops[i].conductance(x, temperatures[v], temperatures[g], vessels[loops[i].vessel()].level()));
        }
        heat.cover(vessels);
        advection();
        heat.predict(x, temperatures, capacities, advectedByNode, slopes, ambient, dt);
        heat.fluxes(ambient);
        for (int v = 0; v < vessels.length; v++) {
            vessels[v].tell(heat.predicted[nodes.ofVessel(v)], carried.steam[v]);
        }
        boolean found = hydraulics.solve(x, dt, rows);
        carried.move(x, temperatures, atmosphere, dt);
        apply(dt);
        balance.step(dt, heat.taken, heat.lost);
        show();
        return found;
    }

    private final double[] advectedByNode;

    private void advection() {
        System.arraycopy(carried.intoHeat, 0, advectedByNode, 0, advectedByNode.length);
        for (int v = 0; v < vessels.length; v++) {
            advectedByNode[nodes.ofVessel(v)] += carried.advected[v];
        }
    }

    private void apply(double dt) {
        for (int i = 0; i < temperatures.length; i++) {
            capacities[i] = nodes.capacity(i);
            double c = capacities[i];
            double was = temperatures[i];
            temperatures[i] = c > 0 ? was + dt * (heat.heat[i] + carried.intoHeat[i]) / c : heat.predicted[i];
            slopes[i] = (temperatures[i] - was) / dt;
        }
        for (int v = 0; v < vessels.length; v++) {
            int i = nodes.ofVessel(v);
            double was = temperatures[i];
            vessels[v].energy += dt * (heat.heat[i] + carried.intoHeat[i]);
            vessels[v].settle();
            temperatures[i] = vessels[v].temperature();
            slopes[i] = (temperatures[i] - was) / dt;
        }
    }

    /** Writes what nodes and vessels are into the slots. */
    private void show() {
        for (VesselState v : vessels) {
            x[v.vessel.pressure()] = v.pressure();
            x[v.vessel.temperature()] = v.temperature();
            x[v.vessel.level()] = v.level();
            x[v.vessel.conductivity()] = v.conductivity();
        }
        for (HeatPlan.NodeSlot s : temperatureSlots) {
            x[s.slot()] = temperatures[nodes.of(s.node())];
        }
        for (LoopFlow l : loops) {
            l.show(x);
        }
        regulators.feel(x, temperatures);
        circuit.solve(x);
        regulators.believe(x);
    }

    /** True when a vessel gave more in the last step than was in it: a vessel about to boil dry, a step too long. */
    boolean overdrawn() {
        for (VesselState v : vessels) {
            if (v.missing > NEGLIGIBLE) {
                return true;
            }
        }
        return false;
    }

    /** True when what flows has changed since a saved state, by more than a share of the busiest flow. */
    boolean flowsChanged(Snapshot since, double share) {
        return carried.changed(since.x, x, share);
    }

    /** Lets the controls act after a step; true when a state changed. */
    boolean act(double dt) {
        if (dt > 0) {
            jumps.keep(x);
        }
        remember();
        for (Control c : controls) {
            c.act(x, dt);
        }
        return changed();
    }

    /** When in a step from a saved state that ended in a jump it came [s], to within {@code within}. */
    double jumpedAt(Snapshot began, double dt, double within) {
        return jumps.moment(began.x, dt, within);
    }

    /** Controls and circuit until nothing jumps any more. */
    void settle() {
        for (int round = 0; round < SETTLE_ROUNDS; round++) {
            circuit.solve(x);
            regulators.believe(x);
            if (!act(0)) {
                return;
            }
        }
    }

    /** Regulators find out anew what they hear and drive. */
    void circuitChanged() {
        regulators.listen(x, temperatures, circuit);
        circuit.isAs(listened);
        awake = regulators.awake(x);
    }

    /** The same where contacts or relays stand otherwise than when they last did. */
    void circuitMayHaveChanged() {
        if (!circuit.isAs(listened) || awake != regulators.awake(x)) {
            circuitChanged();
        }
    }

    private void remember() {
        for (int i = 0; i < stateSlots.length; i++) {
            before[i] = x[stateSlots[i]];
        }
    }

    private boolean changed() {
        for (int i = 0; i < stateSlots.length; i++) {
            if (x[stateSlots[i]] != before[i]) {
                return true;
            }
        }
        return false;
    }

    double horizon() {
        double least = Double.POSITIVE_INFINITY;
        for (Control c : controls) {
            least = Math.min(least, c.horizon(x));
        }
        return least;
    }

    Carried carried() {
        return carried;
    }

    HeatStep heatStep() {
        return heat;
    }

    VesselState[] vessels() {
        return vessels;
    }

    Hydraulics hydraulics() {
        return hydraulics;
    }

    /** Where water and steam found no balance last, in words. */
    public String worstNode() {
        return hydraulics.convergence().worst();
    }

    public Balance balance() {
        balance.close(storedMass(), storedAir(), storedEnergy(), carried, circuit.balance());
        return balance;
    }

    private double storedMass() {
        double sum = 0;
        for (VesselState v : vessels) {
            sum += v.water;
        }
        for (FluidPlan.Store s : blueprint.fluid().stores()) {
            sum += x[s.content()] - x[s.air()];
        }
        return sum;
    }

    private double storedAir() {
        double sum = 0;
        for (VesselState v : vessels) {
            sum += v.air;
        }
        for (FluidPlan.Store s : blueprint.fluid().stores()) {
            sum += x[s.air()];
        }
        return sum;
    }

    private double storedEnergy() {
        double sum = 0;
        for (VesselState v : vessels) {
            sum += v.energy;
        }
        for (FluidPlan.Store s : blueprint.fluid().stores()) {
            sum += x[s.enthalpy()];
        }
        for (int i = 0; i < temperatures.length; i++) {
            sum += nodes.capacity(i) * temperatures[i];
        }
        return sum;
    }

    public Map<String, Reading> readings() {
        return blueprint.readings();
    }

    public Map<String, Handle> handles() {
        return blueprint.handles();
    }

    /** Moves a handle; tell the {@link Stepper} afterwards. */
    public void set(Handle handle, double position) {
        x[handle.slot()] = position;
    }

    public double read(Reading reading) {
        return reading.value().at(x);
    }

    /** Any slot by name, for tests and charts; IllegalStateException when there is none. */
    public double slot(String name) {
        int slot = slots.find(name);
        if (slot < 0) {
            throw new IllegalStateException("no slot '" + name + "'");
        }
        return x[slot];
    }

    /** The same by number. */
    public double slot(int slot) {
        return x[slot];
    }

    /** Temperature of what a branch carries now [K] at a pressure [Pa]; means nothing where nothing flows. */
    public double temperature(FluidPlan.Branch branch, double pressure) {
        return carried.temperature(blueprint.fluid().branches().indexOf(branch), pressure);
    }

    /** An ohm-meter between two terminals, the plug out. */
    public double ohms(int from, int to) {
        return circuit.resistance(x, from, to);
    }

    public double ohms(int[] joined, int to) {
        return circuit.resistance(x, joined, to);
    }

    /** The same with all wires pulled off the component measured. */
    public double ohms(String component, int[] joined, int to) {
        return alone.computeIfAbsent(
                        component, c -> Circuit.of(blueprint.current().only(c), blueprint.nodeCount(Medium.CURRENT)))
                .resistance(x, joined, to);
    }

    public Blueprint blueprint() {
        return blueprint;
    }

    /** Everything that changes, for a fork. */
    public Snapshot save() {
        return new Snapshot(this);
    }

    /**
     * How much a bend of node {@code i} counts: metal with an element in it runs ahead without harm, and what is left in a
     * vessel boiled dry flutters with every drop.
     */
    double weight(int i) {
        if (heaters[i] != null) {
            return Math.min(HEATED, HEATED_IN_WATER * nodes.capacity(i) / heaters[i].heatCapacity());
        }
        VesselState v = contents[i];
        return v == null ? weights[i] : Math.min(weights[i], v.heatCapacity() / MATTERS);
    }

    /** A saved state of one plant. */
    public static final class Snapshot {
        private final double[] x;
        private final double[] temperatures;
        private final double[] slopes;
        private final double[] vessels;
        private long held;
        private double taken;
        private double lost;
        private final double[] flows;

        private Snapshot(Plant p) {
            x = p.x.clone();
            temperatures = p.temperatures.clone();
            slopes = p.slopes.clone();
            vessels = new double[4 * p.vessels.length];
            flows = new double[Carried.BOOKS + p.carried.intoHeat.length + 2 * p.vessels.length];
            store(p);
        }

        double pressure(Plant p, int v) {
            return x[p.vessels[v].vessel.pressure()];
        }

        void store(Plant p) {
            System.arraycopy(p.x, 0, x, 0, x.length);
            System.arraycopy(p.temperatures, 0, temperatures, 0, temperatures.length);
            System.arraycopy(p.slopes, 0, slopes, 0, slopes.length);
            for (int v = 0; v < p.vessels.length; v++) {
                vessels[4 * v] = p.vessels[v].water;
                vessels[4 * v + 1] = p.vessels[v].energy;
                vessels[4 * v + 2] = p.vessels[v].air;
                vessels[4 * v + 3] = p.vessels[v].salt;
            }
            held = p.circuit.held();
            taken = p.balance.taken();
            lost = p.balance.lost();
            p.carried.save(flows);
        }
    }

    void store(Snapshot s) {
        s.store(this);
    }

    /** Back to a saved state. */
    public void restore(Snapshot s) {
        System.arraycopy(s.x, 0, x, 0, x.length);
        System.arraycopy(s.temperatures, 0, temperatures, 0, temperatures.length);
        System.arraycopy(s.slopes, 0, slopes, 0, slopes.length);
        for (int v = 0; v < vessels.length; v++) {
            vessels[v].water = s.vessels[4 * v];
            vessels[v].energy = s.vessels[4 * v + 1];
            vessels[v].air = s.vessels[4 * v + 2];
            vessels[v].salt = s.vessels[4 * v + 3];
            vessels[v].restored(x[vessels[v].vessel.temperature()]);
        }
        circuit.hold(s.held);
        balance.load(s.taken, s.lost);
        carried.load(s.flows);
    }

    public List<FluidPlan.Outlet> outlets() {
        return blueprint.fluid().outlets();
    }
}
