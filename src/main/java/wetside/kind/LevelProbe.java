package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.plus;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.physics.Conductor;
import wetside.units.Dimension;

/**
 * Insulated rod into a boiler: water closes the way from the rod to the shell. Water and scale film both conduct the
 * better the more of the bare end is under. Assumes a vertical rod in a vessel of even width.
 */
public final class LevelProbe implements Kind {
    static final Parameter TIP = Parameter.setting(
            "tip at",
            Dimension.RATIO,
            0.65,
            0.02,
            0.98,
            Spread.absolute(0.02),
            "share of the boiler's volume below its tip");
    static final Parameter CELL = Parameter.usual(
            "cell constant",
            Dimension.NUMBER,
            50,
            1,
            5000,
            Spread.relative(0.15),
            "resistance times conductivity with its bare end under water [1/m]");
    static final Parameter BARE = Parameter.usual(
            "bare end",
            Dimension.RATIO,
            0.12,
            0.002,
            0.5,
            Spread.relative(0.1),
            "share of the boiler's volume between its tip and its insulation");
    static final Parameter FILM = Parameter.condition(
            "film", Dimension.RESISTANCE, 0, 0, Ohms.OPEN, Spread.EXACT, "of scale on its bare end");
    static final Parameter BRIDGE = Ohms.open("bridge", 20e6, "from the rod to the shell through its insulator");

    private static final Declaration DECLARATION = new Declaration(
            "level probe",
            List.of(
                    Port.current("rod", "its terminal"),
                    Port.current("body", "thread in the boiler"),
                    Port.fluid("boiler", "the fitting it is screwed into").intoBoiler()),
            List.of(TIP, CELL, BARE, FILM, BRIDGE));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("scaled", 2.5, log(FILM, 15e3, 1e6)),
            Fault.of("bridged by crust or dirt", 0.8, log(BRIDGE, 40e3, 500)),
            Fault.wrongSetting("rod too high", 0.3, plus(TIP, 0.1, 0.28)),
            Fault.wrongSetting("rod too low", 0.3, plus(TIP, -0.1, -0.3)));

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
        int ohms = b.slots().smooth(c.id() + ".ohms", c.get(BRIDGE));
        b.current().add(new CurrentPlan.Varying(c.id(), b.terminal(c, "rod"), b.terminal(c, "body"), ohms));
        FluidPlan.Vessel boiler = Vessels.behind(c, "boiler", b);
        b.control(new Wetting(
                boiler.level(),
                boiler.conductivity(),
                boiler.temperature(),
                ohms,
                c.get(TIP),
                c.get(CELL),
                c.get(BARE),
                c.get(FILM),
                c.get(BRIDGE)));
    }

    private record Wetting(
            int level,
            int conductivity,
            int temperature,
            int ohms,
            double tip,
            double cell,
            double bare,
            double film,
            double bridge)
            implements Control {
        /** The network is not solved anew for changes smaller than this. */
        private static final double NOTICED = 0.03;

        @Override
        public void act(double[] x, double dt) {
            double wet = Math.max(0, Math.min(1, (x[level] - tip) / bare));
            double along = film + Conductor.electrode(cell, Math.max(1e-6, x[conductivity]), x[temperature]);
            double now = 1 / (1 / bridge + wet / along);
            if (Math.abs(x[ohms] - now) > NOTICED * now) {
                x[ohms] = now;
            }
        }
    }
}
