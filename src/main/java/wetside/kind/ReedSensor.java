package wetside.kind;

import static wetside.kind.Fault.log;
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

/** Reed contact behind a wall: closes while a magnet is near. */
public final class ReedSensor implements Kind {
    static final Parameter CLOSES = Parameter.usual(
            "closes at",
            Dimension.RATIO,
            0.5,
            -10,
            10,
            Spread.absolute(0.15),
            "field of the magnet, as a share of a whole one close by, from which it closes");
    static final Parameter CONTACT = Ohms.closed("contact", 0.2, "resistance of the closed contact and its wires");

    private static final Declaration DECLARATION = new Declaration(
            "reed sensor",
            List.of(
                    Port.current("1", "one wire"),
                    Port.current("2", "other wire"),
                    Port.motion("magnet", "field of the magnet where it sits: 1 with the magnet close by, 0 without")),
            List.of(CLOSES, CONTACT));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("stuck open", 0.5, set(CLOSES, 9)),
            Fault.of("stuck closed", 0.3, set(CLOSES, -9)),
            Fault.of("contact bad", 0.4, log(CONTACT, 20e3, Ohms.OPEN)));

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
        b.current()
                .add(new CurrentPlan.Contact(
                        c.id(), b.terminal(c, "1"), b.terminal(c, "2"), closed, c.get(CONTACT), Ohms.OPEN));
        int spare = b.handle(c, "spare magnet", List.of("away", "held to it"), 0);
        b.control(new Attraction(b.motion(c, "magnet"), spare, closed, c.get(CLOSES)));
    }

    private record Attraction(int magnet, int spare, int closed, double closes) implements Control {
        @Override
        public void act(double[] x, double dt) {
            x[closed] = Math.max(x[magnet], x[spare]) >= closes ? 1 : 0;
        }
    }
}
