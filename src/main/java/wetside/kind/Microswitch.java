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

/** Switch pressed by a cam. */
public final class Microswitch implements Kind {
    static final Parameter CLOSES = Parameter.setting(
            "closes at",
            Dimension.RATIO,
            0.4,
            -10,
            10,
            Spread.absolute(0.1),
            "share of the cam's travel at which it closes");
    static final Parameter CONTACT = Ohms.closed("contact", 0.03, "resistance of the closed contact");

    private static final Declaration DECLARATION = new Declaration(
            "microswitch",
            List.of(
                    Port.current("1", "one terminal"),
                    Port.current("2", "other terminal"),
                    Port.motion("cam", "travel of what presses it, 0 to 1")),
            List.of(CLOSES, CONTACT));

    private static final List<Fault> FAULTS = List.of(
            Fault.of("never closes", 0.8, set(CLOSES, 9)),
            Fault.of("stuck closed", 0.6, set(CLOSES, -9)),
            Fault.of("contact burnt", 0.6, log(CONTACT, 20e3, Ohms.OPEN)),
            Fault.wrongSetting("arm bent away", 0.8, set(CLOSES, 1.02, 1.6)));

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
        int closed = b.slots().state(c.id() + ".closed", 0);
        b.current()
                .add(new CurrentPlan.Contact(
                        c.id(), b.terminal(c, "1"), b.terminal(c, "2"), closed, c.get(CONTACT), Ohms.OPEN));
        int hand = b.handle(c, "arm", List.of("left alone", "pressed"), 0);
        b.control(new Press(b.motion(c, "cam"), hand, closed, c.get(CLOSES)));
    }

    private record Press(int cam, int hand, int closed, double closes) implements Control {
        /** Travel a finger gives it, as a share of the cam's. */
        private static final double FINGER = 2;

        @Override
        public void act(double[] x, double dt) {
            x[closed] = Math.max(x[cam], FINGER * x[hand]) >= closes ? 1 : 0;
        }
    }
}
