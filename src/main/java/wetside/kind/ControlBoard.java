package wetside.kind;

import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/**
 * The board of a machine with a steam boiler: keeps its water level through a probe, runs the pump for brewing and
 * filling, and takes the heat away while the tank is empty or the steam boiler has no water; see {@link FillLogic}.
 */
public final class ControlBoard implements Kind {
    static final Parameter THRESHOLD = Parameter.setting(
            "probe threshold",
            Dimension.RESISTANCE,
            50e3,
            500,
            1e6,
            Spread.relative(0.15),
            "resistance below which the probe counts as wet");
    static final Parameter FILL_LIMIT = Parameter.setting(
            "longest fill", Dimension.TIME, 90, 5, 3600, Spread.relative(0.01), "after which it gives up filling");
    static final Parameter DEBOUNCE = Parameter.usual(
            "patience", Dimension.TIME, 2, 0.05, 60, Spread.relative(0.05), "how long the probe must say the same");
    static final Parameter DRAWS = Electronics.draws(90);
    static final Parameter PROBE_SERIES = Ohms.closed("probe input", 100, "resistance in series with the probe input");
    static final Parameter PROBE_ACROSS =
            Ohms.open("probe input insulation", Ohms.INSULATION, "from the probe input to its return");
    static final Parameter PUMP_ON = Ohms.closed("pump output on", 0.05, "resistance of its relay when closed");
    static final Parameter PUMP_OFF = Ohms.open("pump output off", Ohms.OPEN, "resistance of its relay when open");
    static final Parameter FILL_ON = Ohms.closed("fill output on", 0.05, "resistance of its relay when closed");
    static final Parameter FILL_OFF = Ohms.open("fill output off", Ohms.OPEN, "resistance of its relay when open");
    static final Parameter TANK_SERIES = Ohms.closed("tank input", 100, "resistance in series with the tank input");
    static final Parameter BREW_SERIES = Ohms.closed("brew input", 100, "resistance in series with the brew input");
    static final Parameter RELEASE = Ohms.closed("heat release", 2, "resistance of both heat outputs when closed");

    private static final Declaration DECLARATION = new Declaration(
            "control board",
            List.of(
                    Port.current("plus", "supply"),
                    Port.current("minus", "supply"),
                    Port.current("probe", "level probe"),
                    Port.current("probe return", "shell of the steam boiler"),
                    Port.current("tank", "closed to common while there is water in the tank"),
                    Port.current("brew", "closed to common while somebody brews"),
                    Port.current("common", "of tank and brew inputs"),
                    Port.current("line", "mains for pump and fill outputs"),
                    Port.current("pump", "to the pump motor"),
                    Port.current("fill", "to the fill solenoid"),
                    Port.current("brew heat", "passes the supply on while the brew boiler may heat")
                            .orPlugged(),
                    Port.current("steam heat", "passes the supply on while the steam boiler may heat")),
            List.of(
                    THRESHOLD,
                    FILL_LIMIT,
                    DEBOUNCE,
                    Electronics.LEAST,
                    DRAWS,
                    PROBE_SERIES,
                    PROBE_ACROSS,
                    PUMP_ON,
                    PUMP_OFF,
                    FILL_ON,
                    FILL_OFF,
                    TANK_SERIES,
                    BREW_SERIES,
                    RELEASE));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("dead", 0.8, set(Electronics.LEAST, 1000)),
            Fault.of("pump output dead", 0.7, set(PUMP_ON, Ohms.OPEN)),
            Fault.of("pump output stuck on", 0.6, set(PUMP_OFF, 0.05)),
            Fault.of("fill output dead", 0.5, set(FILL_ON, Ohms.OPEN)),
            Fault.of("fill output stuck on", 0.3, set(FILL_OFF, 0.05)),
            Fault.of("probe input dead", 0.4, set(PROBE_SERIES, Ohms.OPEN)),
            Fault.of("probe input always wet", 0.2, set(PROBE_ACROSS, 1000)),
            Fault.of("tank input dead", 0.2, set(TANK_SERIES, Ohms.OPEN)),
            Fault.of("brew input dead", 0.3, set(BREW_SERIES, Ohms.OPEN)),
            Fault.of("heat release dead", 0.3, set(RELEASE, Ohms.OPEN)),
            Fault.wrongSetting("probe threshold too low", 0.3, Fault.log(THRESHOLD, 9e3, 1e3)),
            Fault.wrongSetting("longest fill too short", 0.2, set(FILL_LIMIT, 12, 5)));

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
        Electronics.supply(c, b, c.get(DRAWS));
        FillLogic logic = FillLogic.of(c, b, inputs(c, b));
        b.control(logic);
        FillLogic.Outputs out = logic.outputs();
        Electronics.contact(c, b, "pump", "line", "pump", out.pump(), c.get(PUMP_ON), c.get(PUMP_OFF));
        Electronics.contact(c, b, "fill", "line", "fill", out.fill(), c.get(FILL_ON), c.get(FILL_OFF));
        Electronics.contact(c, b, "brew heat", "plus", "brew heat", out.brewHeat(), c.get(RELEASE), Ohms.OPEN);
        Electronics.contact(c, b, "steam heat", "plus", "steam heat", out.steamHeat(), c.get(RELEASE), Ohms.OPEN);
        b.choice(c, "message", FillLogic.MESSAGES, logic::message);
    }

    private static FillLogic.Inputs inputs(Component c, Blueprint b) {
        int common = b.terminal(c, "common");
        int shell = b.terminal(c, "probe return");
        int probe = Electronics.behind(c, b, "probe", c.get(PROBE_SERIES));
        b.current().add(new CurrentPlan.Resistor(c.id() + " probe insulation", probe, shell, c.get(PROBE_ACROSS)));
        CurrentPlan current = b.current();
        return new FillLogic.Inputs(
                current.voltage(c.id() + " supply", b.terminal(c, "minus"), b.terminal(c, "plus")),
                current.seen(c.id() + " probe", probe, shell),
                current.seen(c.id() + " tank", Electronics.behind(c, b, "tank", c.get(TANK_SERIES)), common),
                current.seen(c.id() + " brew", Electronics.behind(c, b, "brew", c.get(BREW_SERIES)), common));
    }
}
