package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.machine.Component;

/** Holes on the suction side: they let air in, not water out. */
final class AirIn {
    private AirIn() {}

    /** A hole to the open air: a store that holds no water gives air. */
    static void through(Component c, int node, double bore, Blueprint b) {
        if (bore > 0) {
            int air = b.innerNode();
            int none = b.slots().smooth(c.id() + ".water in the air", 0);
            int pure = b.slots().smooth(c.id() + ".conductivity of air", 0);
            b.fluid().open(air, b.atmosphere(), b.ambient(), pure, none);
            Leaks.between(c.id() + " air", air, node, bore, b);
        }
    }
}
