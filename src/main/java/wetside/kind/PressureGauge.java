package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** A round gauge on a thin copper capillary. */
public final class PressureGauge implements Kind {
    static final Parameter RANGE =
            Parameter.required("range", Dimension.PRESSURE, 0.5e5, 60e5, Spread.EXACT, "full scale of its dial");
    static final Parameter LAG = Parameter.usual(
            "lag", Dimension.TIME, 0.3, 0.05, 20000, Spread.relative(0.4), "time until two thirds of a change show");
    static final Parameter ZERO = Parameter.usual(
            "zero shift",
            Dimension.RATIO,
            0,
            -1,
            1,
            Spread.absolute(0.012),
            "reading without pressure, share of the range");
    static final Parameter GAIN = Parameter.usual(
            "scale error", Dimension.RATIO, 0, -0.5, 0.5, Spread.absolute(0.02), "share of the pressure read too much");
    static final Parameter FRICTION = Parameter.usual(
            "friction",
            Dimension.RATIO,
            0.002,
            0,
            1,
            Spread.relative(0.5),
            "share of the range it takes to move the needle");
    static final Parameter LEAK = Leaks.outward("at the capillary's union");

    private static final Declaration DECLARATION = new Declaration(
            "pressure gauge",
            List.of(Port.fluid("in", "end of the capillary")),
            List.of(RANGE, LAG, ZERO, GAIN, FRICTION, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("reads high", 0.8, set(ZERO, 0.05, 0.25)),
            Fault.of("reads low", 0.8, set(ZERO, -0.05, -0.25)),
            Fault.of("needle sticks", 1.0, set(FRICTION, 0.12, 1)),
            Fault.wrongInstallation("capillary kinked", 0.4, log(LAG, 60, 20000)),
            Fault.of("capillary union leaks", 0.5, log(LEAK, 0.03e-3, 0.3e-3)));

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
        int pressure = b.fluid().pressure(in);
        double range = c.get(RANGE);
        int felt = b.slots().smooth(c.id() + ".felt", 0);
        int needle = b.slots().smooth(c.id() + ".needle", 0);
        double play = c.get(FRICTION) * range;
        b.control((x, dt) -> {
            x[felt] += (x[pressure] - x[b.atmosphere()] - x[felt]) * -Math.expm1(-dt / c.get(LAG));
            double shown = x[felt] * (1 + c.get(GAIN)) + c.get(ZERO) * range;
            double moved = Math.max(shown - play, Math.min(shown + play, x[needle]));
            x[needle] = Math.max(0, Math.min(range, moved));
        });
        b.reading(c, "needle", Dimension.PRESSURE, 0.008 * range, x -> x[needle]);
        Leaks.seen(c, in, c.get(LEAK), b);
    }
}
