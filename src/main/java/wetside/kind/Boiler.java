package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.times;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.machine.Trait;
import wetside.units.Dimension;

/**
 * A closed vessel that holds hot water and, if not full, steam and air. Whether it is a flooded brew boiler or a steam
 * boiler depends on what is screwed into it.
 */
public final class Boiler implements Kind {
    static final Parameter VOLUME =
            Parameter.required("volume", Dimension.VOLUME, 0.05e-3, 50e-3, Spread.relative(0.03), "inside");
    static final Parameter FILL = Parameter.usual(
            "filled at start", Dimension.RATIO, 0.97, 0, 1, Spread.absolute(0.02), "share of the volume that is water");
    static final Parameter STIFFNESS = Parameter.usual(
            "stiffness",
            Dimension.PRESSURE,
            0.9e9,
            0.1e9,
            2.2e9,
            Spread.relative(0.2),
            "bulk modulus of water and wall");
    static final Parameter SHELL = Parameter.usual(
            "shell heat capacity", Dimension.HEAT_CAPACITY, 600, 20, 2e4, Spread.relative(0.1), "of the metal");
    static final Parameter WALL = Parameter.usual(
            "water to shell", Dimension.THERMAL_CONDUCTANCE, 60, 5, 2000, Spread.relative(0.2), "conductance");
    static final Parameter LOSS = Parameter.usual(
            "loss", Dimension.THERMAL_CONDUCTANCE, 1, 0.05, 20, Spread.relative(0.15), "from the shell to the air");
    static final Parameter DOME = Parameter.usual(
            "dome",
            Dimension.RATIO,
            0.004,
            0,
            0.3,
            Spread.relative(0.5),
            "share of the volume above the uppermost ports, where air stays");
    static final Parameter FEED_HEIGHT = Parameter.usual(
            "feed height", Dimension.RATIO, 0.3, 0, 1, Spread.absolute(0.03), "of the feed port, share of the volume");
    static final Parameter LEAK = Leaks.outward("at a fitting");

    private static final double MIDDLE = 0.5;
    private static final double LOW = 0.12;
    private static final double DIP = 0.3;
    private static final double BOTTOM = 0.01;

    private static final Declaration DECLARATION = new Declaration(
            "boiler",
            List.of(
                    Port.fluid("feed", "cold water in").orPlugged(),
                    Port.fluid("upper", "hot pipe to a group, at the top").orPlugged(),
                    Port.fluid("lower", "return pipe from a group").orPlugged(),
                    Port.fluid("steam", "to a steam tap, at the top").orPlugged(),
                    Port.fluid("second steam", "to another steam tap, at the top")
                            .orPlugged(),
                    Port.fluid("relief", "for a safety valve, at the top").orPlugged(),
                    Port.fluid("breaker", "for a vacuum breaker, at the top").orPlugged(),
                    Port.fluid("gauge", "for a gauge's capillary, at the top").orPlugged(),
                    Port.fluid("probe", "for a level probe, at the top").orPlugged(),
                    Port.fluid("tap", "to a hot-water tap, low down").orPlugged(),
                    Port.fluid("drain", "at the bottom").orPlugged().toWaste(),
                    Port.fluid("dip", "to a group bolted on, from below the surface")
                            .orPlugged(),
                    Port.fluid("filler", "for a filler cap, at the top").orPlugged(),
                    Port.fluid("glass top", "upper end of a sight glass").orPlugged(),
                    Port.fluid("glass bottom", "lower end of a sight glass").orPlugged(),
                    Port.fluid("tube", "its water round a heat exchanger tube").orPlugged(),
                    Port.fluid("second tube", "its water round another one").orPlugged(),
                    Port.heat("water", "its content: heating elements, sensors in a pocket")
                            .orPlugged(),
                    Port.heat("shell", "its metal: limits, sensors clamped on").orPlugged()),
            List.of(VOLUME, FILL, STIFFNESS, SHELL, WALL, LOSS, DOME, FEED_HEIGHT, LEAK),
            Trait.CLOSED_VESSEL);

    private static final List<Fault> FAULTS = List.of(
            Fault.of("fitting leaks", 1.0, log(LEAK, 0.03e-3, 0.4e-3)),
            Fault.of("fitting broken", 0.1, log(LEAK, 0.8e-3, 4e-3)),
            Fault.wrongInstallation("insulation left off", 0.5, times(LOSS, 1.3, 2.2)));

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
        int water = b.heatNode(c, "water");
        int vessel = b.fluid().vessel(c.id(), c.get(VOLUME), c.get(STIFFNESS), c.get(FILL), water);
        double top = 1 - c.get(DOME);
        List.of("upper", "steam", "second steam", "relief", "breaker", "gauge", "probe")
                .forEach(p -> open(c, p, vessel, top, b));
        open(c, "feed", vessel, c.get(FEED_HEIGHT), b);
        open(c, "lower", vessel, LOW, b);
        open(c, "tap", vessel, LOW, b);
        open(c, "drain", vessel, BOTTOM, b);
        List.of("filler", "glass top").forEach(p -> open(c, p, vessel, top, b));
        open(c, "dip", vessel, DIP, b);
        open(c, "glass bottom", vessel, LOW, b);
        open(c, "tube", vessel, MIDDLE, b);
        open(c, "second tube", vessel, MIDDLE, b);
        int fitting = b.innerNode();
        b.fluid().takeOff(fitting, vessel, MIDDLE);
        Leaks.seen(c, fitting, c.get(LEAK), b);
        shell(c, water, b);
    }

    private static void open(Component c, String port, int vessel, double height, Blueprint b) {
        if (b.isJoined(c, port)) {
            b.fluid().takeOff(b.node(c, port), vessel, height);
        }
    }

    private static void shell(Component c, int water, Blueprint b) {
        int shell = b.heatNode(c, "shell");
        b.heat().capacity(shell, c.get(SHELL));
        b.heat().conductance(water, shell, c.get(WALL));
        b.heat().conductance(shell, HeatPlan.SURROUNDINGS, c.get(LOSS));
        int skin = b.heat().temperature(shell);
        b.reading(c, "shell temperature", Dimension.TEMPERATURE, 2, x -> x[skin]);
    }
}
