package wetside.kind;

import static wetside.kind.Fault.log;

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

/** A cap on top of a boiler through which water is poured in by hand; whatever pressure there is leaves as it is opened. */
public final class FillerCap implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore", Dimension.LENGTH, 10e-3, 2e-3, 60e-3, Spread.relative(0.05), "clear way once it is off");
    static final Parameter POUR = Parameter.usual(
            "pour", Dimension.MASS_FLOW, 0.03, 2e-3, 0.3, Spread.relative(0.2), "what a steady hand pours");
    static final Parameter CONDUCTIVITY = Parameter.usual(
            "conductivity",
            Dimension.CONDUCTIVITY,
            0.03,
            1e-4,
            0.5,
            Spread.relative(0.3),
            "of the water poured, at 25 °C");
    static final Parameter LEAK = Leaks.outward("at its gasket");

    /** Height of the water in the funnel [Pa]. */
    private static final double HEAD = 300;

    private static final Declaration DECLARATION = new Declaration(
            "filler cap",
            List.of(Port.fluid("boiler", "screwed into the top of a boiler")),
            List.of(BORE, POUR, CONDUCTIVITY, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("gasket worn", 4.0, log(LEAK, 0.08e-3, 0.8e-3)),
            Fault.wrongInstallation("not screwed home", 2.0, log(LEAK, 0.5e-3, 3e-3)));

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
        int boiler = b.node(c, "boiler");
        int off = b.handle(c, "cap", List.of("on", "off"), 0);
        int mouth = b.innerNode();
        FluidPlan.Passage way = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.BOILER);
        b.fluid().branch(c.id() + " mouth", boiler, mouth, way, off);
        FluidPlan.Outlet outlet = b.fluid().outlet(c.id(), mouth);
        Outflow.readings(c, outlet, b);
        pouring(c, boiler, off, b);
        Leaks.seen(c, boiler, c.get(LEAK), b);
    }

    /** A jug in a hand; against pressure nothing runs in, and nothing runs back into it. */
    private static void pouring(Component c, int boiler, int off, Blueprint b) {
        int hand = b.handle(c, "pouring", List.of("nothing", "water"), 0);
        int runs = b.slots().state(c.id() + ".runs", 0);
        int pressure = b.slots().smooth(c.id() + ".funnel", 101325);
        int conductivity = b.slots().smooth(c.id() + ".conductivity", c.get(CONDUCTIVITY));
        b.control((x, dt) -> {
            x[runs] = x[off] * x[hand];
            x[pressure] = x[b.atmosphere()] + HEAD;
        });
        int jug = b.innerNode();
        int lip = b.innerNode();
        b.fluid().open(jug, pressure, b.ambient(), conductivity, -1);
        double turbulent = HEAD / c.get(POUR) / c.get(POUR) / 2;
        b.fluid().branch(c.id() + " pour", jug, lip, new FluidPlan.Passage(HEAD * 0.1 / c.get(POUR), turbulent), runs);
        FluidPlan.OneWay inwards = new FluidPlan.OneWay(0, 10, HEAD * 0.1 / c.get(POUR), turbulent, 0);
        b.fluid().branch(c.id() + " funnel", lip, boiler, inwards, FluidPlan.ALWAYS);
    }
}
