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

/** The lever of a group, its cam that lifts the valves, and the tab that presses the brew switch. */
public final class Lever implements Kind {
    static final Parameter SLIP = Parameter.condition(
            "cam slip", Dimension.RATIO, 0, 0, 1, Spread.EXACT, "share of the lever's travel the cam does not follow");
    static final Parameter WEAR = Parameter.condition(
            "cam wear", Dimension.RATIO, 0, 0, 1, Spread.EXACT, "share of the valves' lift that is lost");
    static final Parameter BEND = Parameter.condition(
            "tab bent", Dimension.RATIO, 0, 0, 1, Spread.EXACT, "share of the tab's travel that misses the switch");
    static final Parameter JAM = Parameter.condition(
            "tab jammed", Dimension.RATIO, 0, 0, 1, Spread.EXACT, "how far the tab stays pressed at rest");

    private static final Declaration DECLARATION = new Declaration(
            "lever",
            List.of(
                    Port.motion("brew-cam", "lift of the brew valve, 0 to 1"),
                    Port.motion("drain-cam", "lift of the drain valve, 0 to 1"),
                    Port.motion("tab", "how far the brew switch is pressed, 0 to 1")),
            List.of(SLIP, WEAR, BEND, JAM));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("cam slipped on its spindle", 0.5, set(SLIP, 0.7, 1)),
            Fault.of("cam worn", 0.4, set(WEAR, 0.88, 0.985)),
            Fault.of("switch tab bent away", 1.0, set(BEND, 0.6, 1)),
            Fault.of("switch tab jammed", 0.5, set(JAM, 0.8, 1)));

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
        int position = b.handle(c, "position", List.of("closed", "brew", "drain"), 0);
        int brew = b.motion(c, "brew-cam");
        int drain = b.motion(c, "drain-cam");
        int tab = b.motion(c, "tab");
        double turned = 1 - c.get(SLIP);
        double lift = turned * (1 - c.get(WEAR));
        double pressed = turned * (1 - c.get(BEND));
        double rest = c.get(JAM);
        b.control((x, dt) -> {
            x[brew] = x[position] == 1 ? lift : 0;
            x[drain] = x[position] == 2 ? lift : 0;
            x[tab] = Math.max(rest, x[position] == 1 ? pressed : 0);
        });
        b.choice(c, "cam", List.of("stays behind", "turns with it"), x -> x[position] == 0 || turned > 0.5 ? 1 : 0);
        b.choice(c, "tab", List.of("clear of the switch", "touches it", "presses it"), x -> tab(x[tab]));
    }

    private static int tab(double travel) {
        return travel < 0.2 ? 0 : travel < 0.8 ? 1 : 2;
    }
}
