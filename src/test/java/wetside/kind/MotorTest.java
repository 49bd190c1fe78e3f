package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MotorTest {
    private static final double FULL = 23.8;

    private static Workbench bench() {
        return Workbench.powered()
                .part("motor", new Motor())
                .wire("switch.line out", "motor.line")
                .wire("switch.neutral out", "motor.neutral")
                .wire("cord.earth", "motor.earth");
    }

    private static Trial on(Workbench bench) {
        return bench.tried().move("switch.switch", "on");
    }

    /** Time until it turns at nine tenths of its speed [s]. */
    private static double start(Workbench bench) {
        Trial t = on(bench);
        double time = 0;
        while (t.get("motor.shaft.motion") < 0.9 * FULL && time < 60) {
            t.run(0.05);
            time += 0.05;
        }
        return time;
    }

    @Test
    void comesUpAtOnceAndRunsDownWhenSwitchedOff() {
        assertThat(start(bench())).isLessThan(1.2);
        Trial t = on(bench()).run(3);
        assertThat(t.get("motor.shaft.motion")).isCloseTo(FULL, within(0.2));
        assertThat(t.word("motor.sound")).isEqualTo("runs");
        t.move("switch.switch", "off").run(3);
        assertThat(t.get("motor.shaft.motion")).isZero();
        assertThat(t.word("motor.sound")).isEqualTo("silent");
    }

    @Test
    void aWeakOrMissingCapacitorDelaysTheStartButNotTheEndSpeed() {
        double whole = start(bench());
        double weak = start(bench().broken("motor", "capacitor weak", 0.5));
        double dead = start(bench().broken("motor", "capacitor dead", 0));
        assertThat(weak).isGreaterThan(1.5 * whole);
        assertThat(dead).isGreaterThan(2 * weak).isLessThan(30);
        double end = on(bench().broken("motor", "capacitor dead", 0)).run(40).get("motor.shaft.motion");
        assertThat(end).isCloseTo(FULL, within(0.2));
    }

    @Test
    void humsBeforeItTurns() {
        assertThat(on(bench().broken("motor", "capacitor dead", 0)).run(1).word("motor.sound"))
                .isEqualTo("hums");
        Trial seized = on(bench().broken("motor", "seized", 0)).run(20);
        assertThat(seized.word("motor.sound")).isEqualTo("hums");
        assertThat(seized.get("motor.shaft.motion")).isZero();
    }

    @Test
    void anOpenWindingIsSilent() {
        Trial t = on(bench().broken("motor", "winding open", 0)).run(5);
        assertThat(t.word("motor.sound")).isEqualTo("silent");
        assertThat(t.get("motor.shaft.motion")).isZero();
    }

    @Test
    void stiffBearingsSlowIt() {
        Trial t = on(bench().broken("motor", "bearings stiff", 0.5)).run(10);
        assertThat(t.get("motor.shaft.motion")).isBetween(0.5 * FULL, 0.9 * FULL);
        assertThat(t.word("motor.sound")).isEqualTo("labours");
    }

    @Test
    void anOhmMeterSeesTheWindingAndTheMainsSeesWhatTurns() {
        Trial t = bench().tried();
        assertThat(t.ohms("motor.line", "motor.neutral")).isCloseTo(16, within(0.2));
        t.move("switch.switch", "on").run(3);
        assertThat(Math.abs(t.get("motor winding.current"))).isCloseTo(1, within(0.05));
    }
}
