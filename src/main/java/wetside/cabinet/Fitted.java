package wetside.cabinet;

import java.util.List;
import java.util.Set;
import wetside.machine.Body;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Side;

/**
 * A part with its place in the case.
 *
 * @param number its number on every drawing of the machine
 * @param behind panels to take off to reach it, the outermost first; none when it is reached from outside
 * @param home   the sides it is looked for from: those of its panels, else the walls it is nearest to
 */
public record Fitted(int number, Component component, Body body, List<Machine.Panel> behind, Set<Side> home) {
    public String id() {
        return component.id();
    }

    public String name() {
        return component.name();
    }

    /** How far it is from a side of the case that is {@code room} metres long along that axis. */
    double distance(Side side, double room) {
        return side.isFar() ? room - body.high().get(side.axis()) : body.low().get(side.axis());
    }

    /** Its face towards a side: greater is nearer to who looks from there [m]. */
    double near(Side side) {
        return side.isFar() ? body.high().get(side.axis()) : -body.low().get(side.axis());
    }

    /** Its face away from a side, on the same scale. */
    double far(Side side) {
        return side.isFar() ? body.low().get(side.axis()) : -body.high().get(side.axis());
    }
}
