package wetside.kind;

import static wetside.kind.Fault.log;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/**
 * A glass tube beside a boiler, joined to its steam above and its water below. Its column stands where both pressures balance:
 * steam that condenses in the glass has to come in through the upper way, and what that costs lifts the column; what stands
 * below its place has to come in through the lower way, and that takes time.
 */
public final class SightGlass implements Kind {
    static final Parameter HEIGHT = Parameter.usual(
            "boiler height", Dimension.LENGTH, 0.16, 0.03, 1, Spread.relative(0.05), "inside, from bottom to top");
    static final Parameter FROM =
            Parameter.usual("seen from", Dimension.RATIO, 0.2, 0, 0.9, Spread.absolute(0.01), "level at its lower end");
    static final Parameter TO =
            Parameter.usual("seen to", Dimension.RATIO, 0.95, 0.1, 1, Spread.absolute(0.01), "level at its upper end");
    static final Parameter BORE =
            Parameter.usual("bore", Dimension.LENGTH, 7e-3, 2e-3, 25e-3, Spread.relative(0.05), "of the glass");
    static final Parameter UPPER = Parameter.condition(
            "upper way", Dimension.LENGTH, 2.5e-3, 0.05e-3, 10e-3, Spread.EXACT, "bore of the way to the steam");
    static final Parameter LOWER = Parameter.condition(
            "lower way", Dimension.LENGTH, 2.5e-3, 0.005e-3, 10e-3, Spread.EXACT, "bore of the way to the water");
    static final Parameter LEAK = Leaks.outward("at its gaskets");

    private static final Declaration DECLARATION = new Declaration(
            "sight glass",
            List.of(
                    Port.fluid("top", "screwed into the boiler above its water").intoBoiler(),
                    Port.fluid("bottom", "screwed into the boiler below").intoBoiler()),
            List.of(HEIGHT, FROM, TO, BORE, UPPER, LOWER, LEAK));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("upper way clogged", 1.5, log(UPPER, 0.25e-3, 0.08e-3)),
            Fault.of("lower way clogged", 2.5, log(LOWER, 0.06e-3, 0.01e-3)),
            Fault.of("gaskets leak", 2.5, log(LEAK, 0.05e-3, 0.6e-3)));

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
        FluidPlan.Vessel boiler = Vessels.behind(c, "bottom", b);
        int column = b.slots().smooth(c.id() + ".column", boiler.fill());
        b.control(new Column(boiler, column, b.ambient(), b.atmosphere(), c));
        double from = c.get(FROM);
        double to = Math.max(from + 0.05, c.get(TO));
        b.reading(c, "level", Dimension.RATIO, 0.03, x -> share(x[column], from, to));
        b.choice(
                c,
                "shows",
                List.of("empty", "low", "in the middle", "high", "full"),
                x -> word(share(x[column], from, to)));
        Leaks.seen(c, b.node(c, "bottom"), c.get(LEAK), b);
    }

    private static double share(double column, double from, double to) {
        return Math.max(0, Math.min(1, (column - from) / (to - from)));
    }

    private static int word(double share) {
        return share <= 0.01 ? 0 : share < 0.3 ? 1 : share < 0.75 ? 2 : share < 0.99 ? 3 : 4;
    }

    /** Moves the column towards where it balances, no faster than water passes the lower way. */
    private record Column(
            FluidPlan.Vessel boiler,
            int column,
            int ambient,
            int atmosphere,
            double height,
            double area,
            double upper,
            double lower)
            implements Control {
        /** Loss of a hand's breadth of warm glass [W/K], and heat steam gives as it condenses [J/kg]. */
        private static final double LOSS = 0.02;

        private static final double LATENT = 2.2e6;
        private static final double WEIGHT = 950 * 9.81;
        private static final double DISCHARGE = 0.62;

        Column(FluidPlan.Vessel boiler, int column, int ambient, int atmosphere, Component c) {
            this(
                    boiler,
                    column,
                    ambient,
                    atmosphere,
                    c.get(HEIGHT),
                    hole(c.get(BORE)),
                    hole(c.get(UPPER)),
                    hole(c.get(LOWER)));
        }

        private static double hole(double bore) {
            return Math.PI / 4 * bore * bore;
        }

        @Override
        public void act(double[] x, double dt) {
            if (dt <= 0) {
                return;
            }
            double condenses = LOSS * Math.max(0, x[boiler.temperature()] - x[ambient]) / LATENT;
            double steam = x[boiler.pressure()] / (462 * x[boiler.temperature()]);
            boolean hot = x[boiler.pressure()] > x[atmosphere] + 0.05e5;
            double lost = hot ? Math.pow(condenses / (DISCHARGE * upper), 2) / (2 * steam) : 0;
            double balanced = Math.min(1, x[boiler.level()] + lost / (WEIGHT * height));
            double off = (balanced - x[column]) * height;
            double speed = DISCHARGE * lower / area * Math.sqrt(2 * 9.81 * Math.abs(off));
            double step = Math.min(Math.abs(off), speed * dt);
            x[column] += Math.signum(off) * step / height;
        }
    }
}
