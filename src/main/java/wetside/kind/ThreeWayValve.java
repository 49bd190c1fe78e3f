package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;
import static wetside.kind.Fault.times;

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

/**
 * A three-way valve: one armature between two seats. At rest it shuts the boiler and leaves the group open to the drain;
 * lifted it opens the boiler and shuts the drain. Halfway, both are half open.
 */
public final class ThreeWayValve implements Kind {
    static final Parameter BORE = Parameter.usual(
            "bore", Dimension.LENGTH, 2.5e-3, 0.5e-3, 15e-3, Spread.relative(0.1), "from the boiler, when lifted");
    static final Parameter EXHAUST = Parameter.usual(
            "exhaust bore", Dimension.LENGTH, 2e-3, 0.5e-3, 15e-3, Spread.relative(0.1), "to the drain, at rest");
    static final Parameter RISES = Parameter.condition(
            "rises to", Dimension.RATIO, 1, 0, 1, Spread.EXACT, "share of its travel the armature makes when pulled");
    static final Parameter RESTS = Parameter.condition(
            "rests at",
            Dimension.RATIO,
            0,
            0,
            1,
            Spread.EXACT,
            "share of its travel the armature stays lifted at rest");
    static final Parameter FREE = Parameter.condition(
            "exhaust free", Dimension.RATIO, 1, 1e-6, 1, Spread.EXACT, "share of the exhaust's area that is clear");
    static final Parameter SEAT = Leaks.seat("seat leak");
    static final Parameter EXHAUST_SEAT = Leaks.seat("exhaust seat leak");
    static final Parameter SHELL_LEAK = Leaks.outward("at the armature tube");

    private static final Declaration DECLARATION = new Declaration(
            "three-way solenoid valve",
            List.of(
                    Port.fluid("boiler", "hot water"),
                    Port.fluid("group", "to the group's chamber"),
                    Port.fluid("drain", "where the group's pressure goes at rest")
                            .toWaste(),
                    Coil.ONE_END,
                    Coil.OTHER_END),
            List.of(
                    BORE,
                    EXHAUST,
                    Coil.RESISTANCE,
                    Coil.PULL_IN,
                    Coil.BREAK,
                    RISES,
                    RESTS,
                    FREE,
                    SEAT,
                    EXHAUST_SEAT,
                    SHELL_LEAK),
            Trait.SHUTS);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("stuck shut", 1.0, set(RISES, 0.05, 0)),
            Fault.of("stuck open", 0.4, set(RESTS, 0.3, 1)),
            Fault.of("does not lift fully", 0.8, set(RISES, 0.7, 0.2)),
            Fault.of("seat leaks to the group", 2.0, log(SEAT, 0.04e-3, 0.5e-3)),
            Fault.of("exhaust seat leaks", 1.0, log(EXHAUST_SEAT, 0.1e-3, 0.8e-3)),
            Fault.of("exhaust blocked", 2.5, log(FREE, 0.01, 1e-6)),
            Coil.BURNT,
            Coil.SHORTED,
            Fault.of("coil weak", 0.4, times(Coil.PULL_IN, 1.6, 2.5)),
            Fault.of("armature tube leaks", 0.2, log(SHELL_LEAK, 0.03e-3, 0.3e-3)));

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
        int pulled = Coil.build(c, b);
        double rises = c.get(RISES);
        double rests = c.get(RESTS);
        int lift = b.slots().state(c.id() + ".lift", rests);
        int exhaust = b.slots().state(c.id() + ".exhaust open", 1 - rests);
        b.control((x, dt) -> {
            x[lift] = Math.max(rests, x[pulled] > 0.5 ? rises : 0);
            x[exhaust] = 1 - x[lift];
        });
        ways(c, lift, exhaust, b);
    }

    private static void ways(Component c, int lift, int exhaust, Blueprint b) {
        int boiler = b.node(c, "boiler");
        int group = b.node(c, "group");
        int drain = b.node(c, "drain");
        FluidPlan.Passage seat = Blueprint.jet(c.get(BORE), Terms.SHARP, Terms.Liquid.HOT);
        b.fluid().branch(c.id() + " to the group", boiler, group, seat, lift);
        Leaks.between(c.id() + " seat", boiler, group, c.get(SEAT), b);
        double free = c.get(EXHAUST) * Math.sqrt(c.get(FREE));
        FluidPlan.Passage out = Blueprint.jet(free, Terms.SHARP, Terms.Liquid.HOT);
        b.fluid().branch(c.id() + " to the drain", group, drain, out, exhaust);
        Leaks.between(c.id() + " exhaust seat", group, drain, c.get(EXHAUST_SEAT), b);
        Leaks.seen(c, boiler, c.get(SHELL_LEAK), b);
    }
}
