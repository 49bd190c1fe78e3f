package wetside.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Slots;

/** A chamber with a spring: what leaves it is what its pressure says it lost. */
class StoreTest {
    private static final double AIR = 101325;
    private static final double DEAD = 2e-3;
    private static final double STROKE = 45e-3;
    private static final FluidPlan.Passage PUCK = new FluidPlan.Passage(9e5 / 2.2e-3, 0);

    private final Slots slots = new Slots();
    private final FluidPlan plan = new FluidPlan(slots);
    private final FluidPlan.Store store;
    private final FluidPlan.Branch out;
    private final Hydraulics network;
    private final double[] x;

    StoreTest() {
        slots.smooth("surroundings.air pressure", AIR);
        store = plan.store("chamber", 0, DEAD, STROKE, AIR);
        plan.outlet("cup", 1);
        out = plan.branch("puck", 0, 1, PUCK, FluidPlan.ALWAYS);
        network = Hydraulics.of(plan, slots, 2);
        x = slots.firstValues();
        x[store.empty()] = AIR + 4.5e5;
        x[store.full()] = AIR + 9.5e5;
    }

    private double pressureAfter(double content, double dt) {
        x[store.content()] = content;
        assertThat(network.solve(x, dt, new VesselRow[0])).isTrue();
        return x[plan.pressure(0)] - AIR;
    }

    @Test
    void givesWhatItsPressureSaysItLost() {
        double dt = 2;
        double p = pressureAfter(DEAD + STROKE, dt);
        double left = STROKE - dt * x[out.flow()];
        assertThat(p).isCloseTo(4.5e5 + 5e5 * left / STROKE, within(1.0));
        assertThat(x[out.flow()]).isCloseTo(p / PUCK.a(), within(1e-9));
    }

    @Test
    void hasNothingMoreToGiveWhenItsPistonIsDown() {
        assertThat(pressureAfter(DEAD, 1)).isCloseTo(0, within(2e3));
        assertThat(x[out.flow()]).isCloseTo(0, within(2e-6));
    }

    @Test
    void neverGivesMoreThanItHolds() {
        double held = 1e-3;
        double dt = 10;
        pressureAfter(DEAD + held, dt);
        assertThat(dt * x[out.flow()]).isCloseTo(held, within(5e-6));
    }
}
