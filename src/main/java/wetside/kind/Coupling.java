package wetside.kind;

import static wetside.kind.Fault.set;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;

/** Joins motor and pump: a claw or a clamp ring. */
public final class Coupling implements Kind {
    static final Parameter SLIP = Parameter.condition(
            "slip", Dimension.RATIO, 0, 0, 1, Spread.EXACT, "share of the motor's turns that does not reach the pump");

    private static final Declaration DECLARATION = new Declaration(
            "coupling",
            List.of(Port.motion("motor", "the motor's shaft"), Port.motion("pump", "the pump's shaft")),
            List.of(SLIP));

    private static final List<Fault> FAULTS =
            List.of(Fault.of("slips", 0.8, set(SLIP, 0.6, 0.99)), Fault.of("broken", 0.3, set(SLIP, 1)));

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
        int motor = b.motion(c, "motor");
        int pump = b.motion(c, "pump");
        double passed = 1 - c.get(SLIP);
        b.control((x, dt) -> x[pump] = passed * x[motor]);
        b.choice(c, "pump shaft", List.of("still", "turns"), x -> x[pump] > 1 ? 1 : 0);
    }
}
