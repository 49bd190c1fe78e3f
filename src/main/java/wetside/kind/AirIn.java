package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.machine.Component;

/** Holes on the suction side: they let air in under suction, and water out under line pressure. */
final class AirIn {
    private AirIn() {}

    static void through(Component c, int node, double bore, Blueprint b) {
        Leaks.between(c.id() + " air gap", b.floor().node(), node, bore, b);
    }
}
