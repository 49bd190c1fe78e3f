package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.plus;
import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** Bimetal disc that opens a contact when its face is warm enough and closes it again by itself some kelvin below. */
public final class Thermostat implements Kind {
    static final Parameter OPENS = Parameter.required(
            "opens at", Dimension.TEMPERATURE, 300, 520, Spread.absolute(3), "temperature of the disc that opens it");
    static final Parameter COOLER = Parameter.usual(
            "closes below",
            Dimension.TEMPERATURE_RISE,
            6,
            0.5,
            60,
            Spread.absolute(1.5),
            "how far below its opening temperature it closes again");
    static final Parameter CONTACT = Ohms.closed("contact", 0.01, "resistance of the closed contact");
    static final Parameter GAP = Ohms.open("gap", Ohms.OPEN, "resistance of the open contact");

    private static final Declaration DECLARATION = new Declaration(
            "thermostat",
            List.of(
                    Port.current("1", "one terminal"),
                    Port.current("2", "other terminal"),
                    Port.heat("face", "what it is screwed to")),
            List.of(OPENS, COOLER, Disc.SEATING, CONTACT, GAP));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("opens too early", 1.5, plus(OPENS, -5, -25)),
            Fault.of("opens too late", 1.0, plus(OPENS, 5, 25)),
            Fault.of("contact burnt open", 1.2, log(CONTACT, 1e5, Ohms.OPEN)),
            Fault.of("contact charred", 0.8, log(CONTACT, 1, 30)),
            Fault.of("welded", 0.6, set(GAP, 0.01)),
            Fault.of("not seated on its face", 0.8, log(Disc.SEATING, 0.08, 0.01)));

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
        int closed = b.slots().state(c.id() + ".closed", 1);
        int contact = b.current()
                .add(new CurrentPlan.Contact(
                        c.id(), b.terminal(c, "1"), b.terminal(c, "2"), closed, c.get(CONTACT), c.get(GAP)));
        Browning.of(c, b, contact);
        b.control(new Snap(Disc.on(c, b), closed, c.get(OPENS), c.get(OPENS) - c.get(COOLER)));
    }

    private record Snap(int temperature, int closed, double opens, double closes) implements Control {
        @Override
        public void act(double[] x, double dt) {
            x[closed] = x[temperature] > opens ? 0 : x[temperature] < closes ? 1 : x[closed];
        }
    }
}
