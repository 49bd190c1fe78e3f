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

    static final Parameter PINS =
            Ohms.closed("pin contact", 0.005, "between each pin of line and neutral and its socket");

    private static final Declaration DECLARATION = new Declaration(
            "power cord",
            List.of(
                    Port.current("socket line", "contact its line pin is pushed into"),
                    Port.current("socket neutral", "contact its neutral pin is pushed into"),
                    Port.current("socket earth", "contact its earth is pushed into"),
                    Port.current("plug line", "pin of the plug, to measure at").orPlugged(),
                    Port.current("plug neutral", "pin of the plug, to measure at")
                            .orPlugged(),
                    Port.current("plug earth", "earth contact of the plug, to measure at")
                            .orPlugged(),
                    Port.current("line", "end in the machine"),
                    Port.current("neutral", "end in the machine"),
                    Port.current("earth", "end in the machine")),
            List.of(LINE, NEUTRAL, EARTH, PINS));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("line conductor broken", 0.4, set(LINE, Ohms.OPEN)),
            Fault.of("neutral conductor broken", 0.4, set(NEUTRAL, Ohms.OPEN)),
            Fault.of("earth conductor broken", 0.2, set(EARTH, Ohms.OPEN)),
            Fault.wrongInstallation("plug not home", 2.0, set(PINS, Ohms.OPEN)));

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
        int volts = current.voltage(c.id() + " plug", b.terminal(c, "socket neutral"), b.terminal(c, "socket line"));
        int amps = current.amps(line);
        int leaking = current.amps(earth);
        b.reading(c, "voltage at the plug", Dimension.VOLTAGE, 1, x -> x[volts]);
        b.reading(c, "power drawn", Dimension.POWER, 5, x -> x[volts] * x[amps]);
        b.reading(c, "earth current", Dimension.CURRENT, 5e-5, x -> Math.abs(x[leaking]));
    }

    /** One conductor, and in front of it the pin that leaves its socket with the plug. */
    private static int conductor(Component c, Blueprint b, int plug, String name, double ohms) {
        int pin = b.terminal(c, "plug " + name);
        double contact = name.equals("earth") ? Ohms.CLOSED : c.get(PINS);
        b.current()
                .add(new CurrentPlan.Contact(
                        c.id() + " pin " + name, b.terminal(c, "socket " + name), pin, plug, contact, Ohms.OPEN));
        return b.current().add(new CurrentPlan.Resistor(c.id() + " " + name, pin, b.terminal(c, name), ohms));
    }
}
