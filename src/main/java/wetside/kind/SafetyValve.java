package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;
import static wetside.kind.Fault.wrongInstallation;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.machine.Trait;
import wetside.physics.Terms;
import wetside.units.Dimension;

/** The last guard of a steam boiler: simmers just below its rating, lifts at it, and shuts some way below. */
public final class SafetyValve implements Kind {
    static final Parameter SET = Parameter.required(
            "set pressure", Dimension.PRESSURE, 0.3e5, 20e5, Spread.relative(0.03), "rating on its body");
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 5e-3, 1e-3, 25e-3, Spread.relative(0.05), "of the open seat");
    static final Parameter BAND = Parameter.usual(
            "accumulation", Dimension.RATIO, 0.1, 0.01, 0.5, Spread.relative(0.2), "further rise until fully open");
    static final Parameter BLOWDOWN = Parameter.usual(
            "blowdown", Dimension.RATIO, 0.06, 0, 0.4, Spread.relative(0.3), "how far below its rating it shuts again");
    static final Parameter SIMMER = Parameter.usual(
            "simmer",
            Dimension.RATIO,
            0.04,
            0,
            0.3,
            Spread.relative(0.4),
            "how far below its rating it begins to weep");
    static final Parameter SPRING =
            Parameter.condition("spring", Dimension.RATIO, 1, 0.2, 5, Spread.EXACT, "force left, as a share of new");
    static final Parameter LEAK = Leaks.seat("leak");

    /** What passes while it only simmers, as an orifice [m]. */
    private static final double SIMMER_BORE = 0.6e-3;

    private static final Declaration DECLARATION = new Declaration(
            "safety valve",
            List.of(
                    Port.fluid("in", "the boiler"),
                    Port.fluid("out", "where it blows to").toWaste()),
            List.of(SET, BORE, BAND, BLOWDOWN, SIMMER, SPRING, LEAK),
            Trait.RELIEF);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("spring tired", 0.7, set(SPRING, 0.75, 0.42)),
            Fault.of("weeps after a lift", 1.5, log(LEAK, 0.08e-3, 0.6e-3)),
            Fault.of("stuck shut", 0.1, set(SPRING, 2.5, 5)),
            wrongInstallation("lower rating fitted", 0.5, times(SET, 0.9, 0.7)));

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
        int in = b.node(c, "in");
        int out = b.node(c, "out");
        double opens = c.get(SET) * c.get(SPRING);
        b.reading(c, "rating", Dimension.PRESSURE, 0.02e5, x -> c.get(SET));
        int shift = lifting(c, in, out, opens, b);
        double band = c.get(BAND) * c.get(SET);
        FluidPlan.Passage seat = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.BOILER);
        b.fluid().branch(c.id(), in, out, new FluidPlan.OneWay(opens, band, seat.a(), seat.b(), 0), shift);
        double weeps = opens * (1 - c.get(SIMMER));
        FluidPlan.Passage seep = Blueprint.jet(SIMMER_BORE, Terms.SHARP, Terms.Liquid.BOILER);
        FluidPlan.OneWay simmer = new FluidPlan.OneWay(weeps, 0.02 * opens, seep.a(), seep.b(), 0);
        b.fluid().branch(c.id() + " simmer", in, out, simmer, FluidPlan.ALWAYS);
        Leaks.between(c.id() + " seat", in, out, c.get(LEAK), b);
    }

    /** Once lifted it stays up until the pressure has fallen by the blowdown. */
    private static int lifting(Component c, int in, int out, double opens, Blueprint b) {
        double down = c.get(BLOWDOWN) * opens;
        int shift = b.slots().state(c.id() + ".shift", 0);
        int inside = b.fluid().pressure(in);
        int outside = b.fluid().pressure(out);
        b.control((x, dt) -> {
            double over = x[inside] - x[outside] - opens;
            if (over > 0.01 * opens) {
                x[shift] = -down;
            } else if (over < -down) {
                x[shift] = 0;
            }
        });
        return shift;
    }
}
