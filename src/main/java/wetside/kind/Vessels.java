package wetside.kind;

import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;

/** Finds the boiler behind a port, for parts that look into it: a level probe, a sight glass. */
final class Vessels {
    private Vessels() {}

    /** The vessel a fluid port is screwed into with {@link wetside.machine.Port#intoBoiler}. */
    static FluidPlan.Vessel behind(Component c, String port, Blueprint b) {
        int node = b.node(c, port);
        return b.fluid().takeOffs().stream()
                .filter(t -> t.node() == node)
                .findFirst()
                .map(t -> b.fluid().vessel(t.vessel()))
                .orElseThrow(() -> new IllegalStateException(c + "." + port + " is screwed into no boiler"));
    }
}
