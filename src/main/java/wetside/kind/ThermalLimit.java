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

/**
 * Bimetal disc that opens a contact when its face gets too hot and stays open until its button is pressed cold. The
 * button is trip-free: held down while hot it does nothing.
 */
public final class ThermalLimit implements Kind {
    static final Parameter TRIPS = Parameter.required(
            "trips at", Dimension.TEMPERATURE, 310, 620, Spread.absolute(4), "temperature of the disc that opens it");
    static final Parameter COOLER = Parameter.usual(
            "resets below",
            Dimension.TEMPERATURE_RISE,
            30,
            2,
            200,
            Spread.absolute(5),
            "how far below its tripping temperature the button works again");
    static final Parameter CONTACT = Ohms.closed("contact", 0.01, "resistance of the closed contact");
    static final Parameter GAP = Ohms.open("gap", Ohms.OPEN, "resistance of the open contact");
    static final Parameter STARTS = Parameter.condition(
            "closed at first", Dimension.NUMBER, 1, 0, 1, Spread.EXACT, "1 when found closed, 0 when found tripped");

    private static final Declaration DECLARATION = new Declaration(
            "thermal limit",
            List.of(
                    Port.current("1", "one terminal"),
                    Port.current("2", "other terminal"),
                    Port.heat("face", "what it is screwed to")),
            List.of(TRIPS, COOLER, Disc.SEATING, CONTACT, GAP, STARTS));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("tripped", 4.0, set(STARTS, 0)),
            Fault.of("trips too early", 0.8, plus(TRIPS, -34, -65)),
            Fault.of("contact burnt open", 0.5, log(CONTACT, 1e5, Ohms.OPEN)),
            Fault.of("contact charred", 0.4, log(CONTACT, 1, 30)),
            Fault.of("welded", 0.1, set(GAP, 0.01)),
            Fault.of("not seated on the boiler", 0.3, log(Disc.SEATING, 0.05, 0.005)));

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
        int closed = b.slots().state(c.id() + ".closed", Math.round(c.get(STARTS)));
        int button = b.handle(c, "button", List.of("left alone", "pressed"), 0);
        int clicked = b.slots().state(c.id() + ".clicked", 0);
        int contact = b.current()
                .add(new CurrentPlan.Contact(
                        c.id(), b.terminal(c, "1"), b.terminal(c, "2"), closed, c.get(CONTACT), c.get(GAP)));
        Browning.of(c, b, contact);
        double reset = c.get(TRIPS) - c.get(COOLER);
        b.control(new Snap(Disc.on(c, b), closed, button, clicked, c.get(TRIPS), reset));
        b.choice(c, "button feel", List.of("no click", "clicks"), x -> x[clicked]);
    }

    private record Snap(int temperature, int closed, int button, int clicked, double trips, double resets)
            implements Control {
        @Override
        public void act(double[] x, double dt) {
            if (x[closed] > 0.5 && x[temperature] > trips) {
                x[closed] = 0;
                x[clicked] = 0;
            }
            if (x[button] > 0.5) {
                boolean sets = x[closed] < 0.5 && x[temperature] < resets;
                x[clicked] = sets ? 1 : 0;
                x[closed] = sets ? 1 : x[closed];
                x[button] = 0;
            }
        }
    }
}
