package wetside.blueprint;

import java.util.ArrayList;
import java.util.List;

/** Water, steam and air: nodes, vessels and the branches between them. Mass flows [kg/s], absolute pressures [Pa]. */
public final class FluidPlan {
    /** For branches that are always open. */
    public static final int ALWAYS = -1;

    private final Slots slots;
    private final List<Vessel> vessels = new ArrayList<>();
    private final List<TakeOff> takeOffs = new ArrayList<>();
    private final List<Opening> openings = new ArrayList<>();
    private final List<Store> stores = new ArrayList<>();
    private final List<Branch> branches = new ArrayList<>();
    private final List<NodeSlot> pressures = new ArrayList<>();
    private final List<Exchange> exchanges = new ArrayList<>();
    private final List<Loop> loops = new ArrayList<>();
    private final List<Outlet> outlets = new ArrayList<>();

    public FluidPlan(Slots slots) {
        this.slots = slots;
    }

    /**
     * A closed vessel holding water substance and air.
     *
     * @param volume      inner volume [m³]
     * @param stiffness   bulk modulus of water and shell together [Pa]
     * @param fill        share of the volume filled with water at the start
     * @param heatNode    heat node that is its content; the plant ties it to the vessel's energy
     * @param pressure    slot: absolute pressure [Pa]
     * @param temperature slot: of the content [K]
     * @param level       slot: share of the volume that is liquid
     * @param conductivity slot: of the liquid at 25 °C [S/m]
     */
    public record Vessel(
            String name,
            double volume,
            double stiffness,
            double fill,
            int heatNode,
            int pressure,
            int temperature,
            int level,
            int conductivity) {}

    /** Node {@code node} opens into vessel {@code vessel} at {@code height}, as a share of its volume from the bottom. */
    public record TakeOff(int node, int vessel, double height) {}

    /**
     * Node {@code node} is held from outside.
     *
     * @param pressure     slot [Pa]
     * @param temperature  slot [K]
     * @param conductivity slot, at 25 °C [S/m]
     * @param stock        slot: mass still there [kg], or -1 for endless; a store runs empty and then gives only air
     */
    public record Opening(int node, int pressure, int temperature, int conductivity, int stock) {}

    /**
     * A chamber at a node that holds water against a spring: what it holds follows its pressure on a straight line between
     * empty and full, and hardly at all beyond.
     *
     * <pre>
     * m(p) = m_d + m_c · (p − p_empty)/(p_full − p_empty), the fraction kept within 0 to 1
     * </pre>
     *
     * Who moves the spring moves the two pressures; what is in it stays in it. What comes in is mixed with what is there.
     *
     * @param dead     what always stays in it, m_d [kg], above 0
     * @param stroke   what it can take up, m_c [kg]
     * @param empty    slot, p_empty [Pa]; {@code full}: slot, p_full [Pa], above it
     * @param content  slot: water and air in it [kg]; {@code air}: slot, of which air [kg]
     * @param enthalpy slot: carried by the content [J]; {@code salt}: slot, mass times conductivity [kg S/m]
     */
    public record Store(
            String name,
            int node,
            double dead,
            double stroke,
            int empty,
            int full,
            int content,
            int air,
            int enthalpy,
            int salt) {}

    /**
     * Where something leaves the machine.
     *
     * @param node  held at atmospheric pressure
     * @param water slot: liquid mass flow [kg/s]
     * @param steam slot: vapour mass flow [kg/s]
     * @param total slot: liquid caught so far [kg]
     * @param temperature slot: of what comes [K]
     */
    public record Outlet(String name, int node, int water, int steam, int total, int temperature) {}

    /** Law of a branch: what flows for a pressure difference. */
    public sealed interface Law permits Passage, OneWay, Regulator, Pump {}

    /**
     * Δp = a q + b q|q|, scaled by an opening o in 0..1 as a/o and b/o².
     *
     * @param a laminar term [Pa s/kg]
     * @param b turbulent term [Pa s²/kg²]
     */
    public record Passage(double a, double b) implements Law {}

    /**
     * Opens above a pressure difference, then flows like a passage; closed it may leak.
     *
     * @param crack pressure difference at which it begins to open [Pa]
     * @param band  further rise until the spring no longer throttles [Pa], rounded with compact support
     * @param a     laminar term [Pa s/kg]
     * @param b     turbulent term [Pa s²/kg²]
     * @param leak  flow per pressure difference both ways when closed [kg/(s Pa)]
     */
    public record OneWay(double crack, double band, double a, double b, double leak) implements Law {}

    /**
     * A valve whose spring pushes against the open air, so that it holds the pressure on one of its sides whatever the
     * other does; it never lets water back.
     *
     * @param set      pressure held, above the air's [Pa]
     * @param upstream true: opens when its inlet is above the set pressure; false: when its outlet is below
     * @param gain     pressure difference it can use up, per pressure its held side is off [–]; a stiff valve has 50
     * @param a        laminar term, wide open [Pa s/kg]
     * @param b        turbulent term, wide open [Pa s²/kg²]
     */
    public record Regulator(double set, boolean upstream, double gain, double a, double b) implements Law {}

    /**
     * A positive-displacement pump with a spring bypass built in; turned off it still lets water through forwards.
     *
     * @param perRev     mass moved per turn [kg]
     * @param slip       inner leak when turning [kg/(s Pa)]
     * @param restSlip   inner leak at rest [kg/(s Pa)]
     * @param bypassSet  pressure difference at which the bypass opens [Pa]
     * @param bypassGain bypass flow per pressure beyond that [kg/(s Pa)]
     * @param inletShare share of the inlet pressure that helps hold the bypass open: 0 as if alone, 1 fully additive
     * @param restCrack  forward cracking pressure at rest [Pa]
     * @param restB      turbulent term of the forward way at rest [Pa s²/kg²]
     */
    public record Pump(
            double perRev,
            double slip,
            double restSlip,
            double bypassSet,
            double bypassGain,
            double inletShare,
            double restCrack,
            double restB)
            implements Law {}

    /**
     * @param opening slot with 0..1 for a passage, speed [rev/s] for a pump, shift of the cracking or set pressure
     *                [Pa] for a one-way branch or regulator, or {@link #ALWAYS}
     * @param flow    slot that receives the mass flow [kg/s]
     * @param stall   slot of a factor 0..1 on natural circulation through this branch (air lock), or {@link #ALWAYS}
     * @param rise    height of {@code to} above {@code from} [m]
     */
    public record Branch(String name, int from, int to, Law law, int opening, int flow, int stall, double rise) {}

    /** Pressure of {@code node} is wanted in {@code slot}. */
    public record NodeSlot(int node, int slot) {}

    /** What passes through {@code branch} exchanges heat with {@code heatNode} over {@code ua} [W/K]. */
    public record Exchange(int branch, int heatNode, double ua) {}

    /**
     * A cooler hung on a vessel by two pipes: natural circulation through {@code upper} and {@code lower}, found by
     * following passages from both nodes to the vessel.
     *
     * @param heatNode what the circulating water warms
     * @param ua       its exchange [W/K]
     * @param head     mean height between the warm and the cold leg [m]
     * @param flow     slot [kg/s]; {@code hot}, {@code cold}: slots, temperatures of leaving and returning water [K]
     */
    public record Loop(int upper, int lower, int heatNode, double ua, double head, int flow, int hot, int cold) {}

    public int vessel(String name, double volume, double stiffness, double fill, int heatNode) {
        vessels.add(new Vessel(
                name,
                volume,
                stiffness,
                fill,
                heatNode,
                slots.smooth(name + ".pressure", 0),
                slots.smooth(name + ".temperature", 0),
                slots.smooth(name + ".level", fill),
                slots.smooth(name + ".conductivity", 0)));
        return vessels.size() - 1;
    }

    public void takeOff(int node, int vessel, double height) {
        takeOffs.add(new TakeOff(node, vessel, height));
    }

    public void open(int node, int pressure, int temperature, int conductivity, int stock) {
        openings.add(new Opening(node, pressure, temperature, conductivity, stock));
    }

    /** Adds a chamber at a node; it starts with nothing but its dead content, between two pressures to be set. */
    public Store store(String name, int node, double dead, double stroke, double atmosphere) {
        Store store = new Store(
                name,
                node,
                dead,
                stroke,
                slots.smooth(name + ".pressure empty", atmosphere),
                slots.smooth(name + ".pressure full", atmosphere + 1e5),
                slots.smooth(name + ".content", dead),
                slots.smooth(name + ".air", 0),
                slots.smooth(name + ".enthalpy", 0),
                slots.smooth(name + ".salt", 0));
        stores.add(store);
        return store;
    }

    public Outlet outlet(String name, int node) {
        Outlet outlet = new Outlet(
                name,
                node,
                slots.smooth(name + ".water", 0),
                slots.smooth(name + ".steam", 0),
                slots.smooth(name + ".caught", 0),
                slots.smooth(name + ".temperature", 0));
        outlets.add(outlet);
        return outlet;
    }

    /** Adds a branch and returns it; see {@link Branch} for {@code opening}. */
    public Branch branch(String name, int from, int to, Law law, int opening) {
        return branch(name, from, to, law, opening, ALWAYS, 0);
    }

    public Branch branch(String name, int from, int to, Law law, int opening, int stall, double rise) {
        Branch branch = new Branch(name, from, to, law, opening, slots.smooth(name + ".flow", 0), stall, rise);
        branches.add(branch);
        return branch;
    }

    /** Slot that receives the absolute pressure of a node [Pa]. */
    public int pressure(int node) {
        for (NodeSlot known : pressures) {
            if (known.node() == node) {
                return known.slot();
            }
        }
        NodeSlot fresh = new NodeSlot(node, slots.smooth("node " + node + ".pressure", 0));
        pressures.add(fresh);
        return fresh.slot();
    }

    public void exchange(Branch branch, int heatNode, double ua) {
        exchanges.add(new Exchange(position(branch), heatNode, ua));
    }

    private int position(Branch branch) {
        for (int at = 0; at < branches.size(); at++) {
            if (branches.get(at) == branch) {
                return at;
            }
        }
        throw new IllegalArgumentException("no branch of this plan: " + branch.name());
    }

    public Loop loop(String name, int upper, int lower, int heatNode, double ua, double head) {
        Loop loop = new Loop(
                upper,
                lower,
                heatNode,
                ua,
                head,
                slots.smooth(name + ".circulation", 0),
                slots.smooth(name + ".hot pipe", 0),
                slots.smooth(name + ".return pipe", 0));
        loops.add(loop);
        return loop;
    }

    public Vessel vessel(int id) {
        return vessels.get(id);
    }

    public List<Vessel> vessels() {
        return vessels;
    }

    public List<TakeOff> takeOffs() {
        return takeOffs;
    }

    public List<Opening> openings() {
        return openings;
    }

    public List<Store> stores() {
        return stores;
    }

    public List<Outlet> outlets() {
        return outlets;
    }

    public List<Branch> branches() {
        return branches;
    }

    public List<NodeSlot> pressures() {
        return pressures;
    }

    public List<Exchange> exchanges() {
        return exchanges;
    }

    public List<Loop> loops() {
        return loops;
    }
}
