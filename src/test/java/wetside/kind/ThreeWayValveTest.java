package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** One armature between two seats: what is shut at rest is open when pulled, and what stops halfway is half open both ways. */
class ThreeWayValveTest {
    private static Workbench valve() {
        return Workbench.powered()
                .part("valve", new ThreeWayValve())
                .wire("switch.line out", "valve.a")
                .wire("switch.neutral out", "valve.b");
    }

    private static Trial on(Workbench bench) {
        return bench.tried().move("cord.plug", "in").move("switch.switch", "on");
    }

    @Test
    void restsOnTheDrainAndLiftsToTheBoiler() {
        Trial t = valve().tried();
        assertThat(t.get("valve.lift")).isZero();
        assertThat(t.get("valve.exhaust open")).isOne();
        t.move("cord.plug", "in").move("switch.switch", "on");
        assertThat(t.get("valve.lift")).isOne();
        assertThat(t.get("valve.exhaust open")).isZero();
        assertThat(t.word("valve.sound")).isEqualTo("hums");
    }

    @Test
    void staysDownWithoutItsPull() {
        assertThat(on(valve().broken("valve", "coil open", 1)).get("valve.lift"))
                .isZero();
        Trial weak = on(valve().broken("valve", "coil weak", 0.5));
        assertThat(weak.get("valve.lift")).isZero();
        assertThat(weak.word("valve.sound")).isEqualTo("silent");
        assertThat(on(valve().broken("valve", "stuck shut", 1)).get("valve.exhaust open"))
                .isOne();
    }

    @Test
    void halfwayBothWaysAreHalfOpen() {
        Trial t = on(valve().broken("valve", "does not lift fully", 0.4));
        assertThat(t.get("valve.lift")).isCloseTo(0.5, within(1e-9));
        assertThat(t.get("valve.exhaust open")).isCloseTo(0.5, within(1e-9));
        assertThat(valve().broken("valve", "stuck open", 1).tried().get("valve.lift"))
                .isOne();
    }
}
