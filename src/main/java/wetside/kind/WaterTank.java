package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.wrongInstallation;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.physics.Terms;
import wetside.units.Dimension;

/** A tank the owner fills, with a float whose magnet tells the machine that there is water. */
public final class WaterTank implements Kind {
    static final Parameter CAPACITY =
            Parameter.usual("capacity", Dimension.MASS, 2.8, 0.3, 20, Spread.relative(0.02), "water when full");
    static final Parameter START = Parameter.usual(
            "filled at start", Dimension.RATIO, 0.9, 0, 1, Spread.absolute(0.05), "share of the capacity");
    static final Parameter WARNING = Parameter.usual(
            "float drops below",
            Dimension.MASS,
            0.3,
            0.02,
            5,
            Spread.relative(0.2),
            "water left when the float is down");
    static final Parameter CONDUCTIVITY = Parameter.usual(
            "conductivity", Dimension.CONDUCTIVITY, 0.04, 1e-4, 0.5, Spread.relative(0.3), "of the water at 25 °C");
    static final Parameter MAGNET = Parameter.condition(
            "magnet reach", Dimension.RATIO, 1, 0, 1, Spread.EXACT, "share of its field that reaches the sensor");
    static final Parameter STICKS_UP =
            Parameter.condition("float held up", Dimension.NUMBER, 0, 0, 1, Spread.EXACT, "1 when it cannot sink");
    static final Parameter STICKS_DOWN =
            Parameter.condition("float held down", Dimension.NUMBER, 0, 0, 1, Spread.EXACT, "1 when it cannot rise");
    static final Parameter LEAK = Leaks.outward("through the wall or the bottom seal");

    /** Weight of the water above the outlet when full [Pa]. */
    private static final double HEAD = 2000;

    private static final Declaration DECLARATION = new Declaration(
            "water tank",
            List.of(
                    Port.fluid("out", "the opening at its bottom"),
                    Port.fluid("return", "where water comes back from above").orPlugged(),
                    Port.motion("float", "field of the float's magnet at the sensor: 1 with water, 0 without")
                            .orPlugged()),
            List.of(CAPACITY, START, WARNING, CONDUCTIVITY, MAGNET, STICKS_UP, STICKS_DOWN, LEAK));

    private static final List<Fault> FAULTS = List.of(
            wrongInstallation("float magnet upside down", 4.0, set(MAGNET, 0.2, 0)),
            Fault.of("float stuck down", 1.0, set(STICKS_DOWN, 1)),
            Fault.of("float stuck up", 0.7, set(STICKS_UP, 1)),
            Fault.of("cracked", 0.4, log(LEAK, 0.2e-3, 1.5e-3)),
            wrongInstallation("left empty", 6.0, set(START, 0.02, 0)),
            wrongInstallation("very pure water", 3.0, set(CONDUCTIVITY, 1.5e-3, 3e-4)));

    @Override
    public Declaration declaration() {
        return DECLARATION;
    }

    @Override
    public List<Fault> faults() {
        return FAULTS;
    }

    @Override
    public void build(Component c, Blueprint b) {
        double capacity = c.get(CAPACITY);
        double low = 1.4 * c.get(WARNING);
        double first = c.get(START) * capacity;
        int stock = b.slots().smooth(c.id() + ".stock", first);
        int conductivity = b.slots().smooth(c.id() + ".conductivity", c.get(CONDUCTIVITY));
        int out = b.node(c, "out");
        int pressure = b.slots().smooth(c.id() + ".pressure", 101325);
        b.control((x, dt) -> x[pressure] = x[b.atmosphere()] + HEAD * x[stock] / capacity);
        b.fluid().open(out, pressure, b.ambient(), conductivity, stock);
        back(c, b, conductivity, stock);
        Leaks.seen(c, out, c.get(LEAK), b);
        refill(c, b, stock, new double[] {capacity, low, 0});
        floating(c, b, stock);
        b.reading(c, "level", Dimension.MASS, 0.1, x -> x[stock]);
        b.choice(c, "overflow", List.of("no", "yes"), x -> x[stock] > 1.02 * capacity ? 1 : 0);
        b.reading(c, "conductivity", Dimension.CONDUCTIVITY, 0.05 * c.get(CONDUCTIVITY), x -> x[conductivity]);
    }

    /** What comes back falls in from above and is seen. */
    private static void back(Component c, Blueprint b, int conductivity, int stock) {
        int above = b.innerNode();
        b.fluid().open(above, b.atmosphere(), b.ambient(), conductivity, stock);
        FluidPlan.Passage wide = Blueprint.jet(8e-3, Terms.SHARP, Terms.Liquid.COLD);
        int flow = b.fluid()
                .branch(c.id() + " return", b.node(c, "return"), above, wide, FluidPlan.ALWAYS)
                .flow();
        if (b.isJoined(c, "return")) {
            b.choice(c, "return", Leaks.WETNESS, x -> Leaks.wetness(x[flow]));
        }
    }

    /** Moving the handle "water" pours in or out; it then goes back by itself, and the stock goes its own way. */
    private static void refill(Component c, Blueprint b, int stock, double[] amounts) {
        int handle = b.handle(c, "water", List.of("as it is", "full", "low", "empty"), 0);
        b.control((x, dt) -> {
            if (x[handle] > 0) {
                x[stock] = amounts[(int) x[handle] - 1];
                x[handle] = 0;
            }
        });
    }

    private static void floating(Component c, Blueprint b, int stock) {
        int field = b.motion(c, "float");
        double magnet = c.get(MAGNET);
        boolean up = c.get(STICKS_UP) > 0.5;
        boolean down = c.get(STICKS_DOWN) > 0.5;
        int hand = b.handle(c, "float", List.of("left alone", "lifted", "pressed down"), 0);
        b.control((x, dt) -> {
            boolean floats = up || !down && x[stock] > c.get(WARNING);
            x[field] = (x[hand] == 0 ? floats : x[hand] == 1) ? magnet : 0;
        });
    }
}
