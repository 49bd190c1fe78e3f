package wetside.kind;

import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.units.Dimension;

/** Plug, flexible cord and its inlet: three conductors that part together when the plug is pulled. */
public final class PowerCord implements Kind {
    static final Parameter LINE = Ohms.closed("line conductor", 0.03, "brown conductor and its contacts");
    static final Parameter NEUTRAL = Ohms.closed("neutral conductor", 0.03, "blue conductor and its contacts");
    static final Parameter EARTH = Ohms.closed("earth conductor", 0.05, "green-yellow conductor and its contacts");

    private static final Declaration DECLARATION = new Declaration(
            "power cord",
            List.of(
                    Port.current("plug line", "pin in the socket"),
                    Port.current("plug neutral", "pin in the socket"),
                    Port.current("plug earth", "earth contact of the plug"),
                    Port.current("line", "end in the machine"),
                    Port.current("neutral", "end in the machine"),
                    Port.current("earth", "end in the machine")),
            List.of(LINE, NEUTRAL, EARTH));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("line conductor broken", 0.4, set(LINE, Ohms.OPEN)),
            Fault.of("neutral conductor broken", 0.4, set(NEUTRAL, Ohms.OPEN)),
            Fault.of("earth conductor broken", 0.2, set(EARTH, Ohms.OPEN)),
            Fault.wrongInstallation("plug not home", 2.0, set(LINE, Ohms.OPEN), set(NEUTRAL, Ohms.OPEN)));

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
        int plug = b.handle(c, "plug", List.of("out", "in"), 1);
        int line = conductor(c, b, plug, "line", c.get(LINE));
        conductor(c, b, plug, "neutral", c.get(NEUTRAL));
        int earth = conductor(c, b, plug, "earth", c.get(EARTH));
        CurrentPlan current = b.current();
        int volts = current.voltage(c.id() + " plug", b.terminal(c, "plug neutral"), b.terminal(c, "plug line"));
        int amps = current.amps(line);
        int leaking = current.amps(earth);
        b.reading(c, "voltage at the plug", Dimension.VOLTAGE, 1, x -> x[volts]);
        b.reading(c, "power drawn", Dimension.POWER, 5, x -> x[volts] * x[amps]);
        b.reading(c, "earth current", Dimension.CURRENT, 5e-5, x -> Math.abs(x[leaking]));
    }

    private static int conductor(Component c, Blueprint b, int plug, String name, double ohms) {
        return b.current()
                .add(new CurrentPlan.Contact(
                        c.id() + " " + name,
                        b.terminal(c, "plug " + name),
                        b.terminal(c, name),
                        plug,
                        ohms,
                        Ohms.OPEN));
    }
}
