package wetside.kind;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.Control;
import wetside.machine.Component;

/** Contacts and connectors that turn more than some watts into heat go brown, and stay so. */
final class Browning {
    /** A push-on connector or a small contact gets too hot to touch about here [W]; common practice, no source. */
    private static final double SCORCHES = 4;

    private Browning() {}

    /** Adds the reading {@code look} of a part whose element {@code element} of the current plan carries the current. */
    static void of(Component c, Blueprint b, int element) {
        int power = b.current().power(element);
        int brown = b.slots().state(c.id() + ".brown", 0);
        Control scorching = (x, dt) -> {
            // the first moment of a motor's inrush heats nothing
            if (dt > 0 && x[power] > SCORCHES) {
                x[brown] = 1;
            }
        };
        b.control(scorching);
        b.choice(c, "look", List.of("clean", "browned"), x -> x[brown]);
    }
}
