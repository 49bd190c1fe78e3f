package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static wetside.kind.Ohms.OPEN;

import org.junit.jupiter.api.Test;

/** Thermostat, thermal fuse, rocker switch and interval timer on the workbench. */
class SnapDiscTest {
    private static final double WARM = 273.15 + 100;

    @Test
    void aThermostatOpensWarmAndClosesSomeKelvinBelow() {
        Trial t = thermostat().tried().heat(WARM + 1);
        assertThat(t.ohms("stat.1", "stat.2")).isGreaterThan(OPEN / 10);
        t.heat(WARM - 3);
        assertThat(t.ohms("stat.1", "stat.2")).as("between opening and closing").isGreaterThan(OPEN / 10);
        t.heat(WARM - 7);
        assertThat(t.ohms("stat.1", "stat.2")).isLessThan(0.1);
        assertThat(thermostat()
                        .broken("stat", "welded", 1)
                        .tried()
                        .heat(WARM + 60)
                        .ohms("stat.1", "stat.2"))
                .isLessThan(0.1);
    }

    private static Workbench thermostat() {
        return Workbench.powered().part("stat", new Thermostat()).set("stat", Thermostat.OPENS, WARM);
    }

    @Test
    void aThermalFuseNeverComesBack() {
        Workbench bench = Workbench.powered().part("fuse", new ThermalFuse()).set("fuse", ThermalFuse.MELTS, WARM);
        Trial t = bench.tried().heat(WARM - 5);
        assertThat(t.ohms("fuse.1", "fuse.2")).isLessThan(0.1);
        t.heat(WARM + 1).heat(293.15);
        assertThat(t.ohms("fuse.1", "fuse.2")).isGreaterThan(OPEN / 10);
    }

    @Test
    void aRockerChangesOver() {
        Trial t = Workbench.powered().part("rocker", new RockerSwitch()).tried();
        assertThat(t.ohms("rocker.in", "rocker.off")).isLessThan(0.2);
        assertThat(t.ohms("rocker.in", "rocker.on")).isGreaterThan(OPEN / 10);
        t.move("rocker.switch", "on");
        assertThat(t.ohms("rocker.in", "rocker.on")).isLessThan(0.2);
        assertThat(t.ohms("rocker.in", "rocker.off")).isGreaterThan(OPEN / 10);
    }

    @Test
    void anIntervalTimerPulsesWhileItHasSupply() {
        Trial t = Workbench.powered()
                .part("timer", new IntervalTimer())
                .wire("switch.line out", "timer.feed")
                .wire("switch.neutral out", "timer.neutral")
                .tried();
        assertThat(closedShare(t)).isZero();
        t.move("cord.plug", "in").move("switch.switch", "on");
        assertThat(closedShare(t)).isBetween(0.12, 0.22);
    }

    private static double closedShare(Trial t) {
        double closed = 0;
        for (int k = 0; k < 480; k++) {
            closed += t.run(0.05).get("timer.closed") / 480;
        }
        return closed;
    }
}
