package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Contactor on the mains behind a pressure switch, as a bigger machine has it. */
class RelayTest {
    private static Workbench bench() {
        return Workbench.powered()
                .part("pressure", new PressureSwitch())
                .part("contactor", new Relay("contactor", 2, 4000, 170))
                .part("lamp", new Lamp())
                .wire("switch.line out", "pressure.1", "contactor.in 1")
                .wire("pressure.2", "contactor.coil 1")
                .wire("switch.neutral out", "contactor.coil 2", "contactor.in 2")
                .wire("contactor.out 1", "lamp.1")
                .wire("contactor.out 2", "lamp.2");
    }

    private static Trial at(double bar, Workbench bench) {
        return bench.tried()
                .set("pressure.felt", bar * 1e5)
                .move("switch.switch", "on")
                .set("pressure.felt", bar * 1e5);
    }

    @Test
    void thePressureSwitchOpensAtItsSettingAndClosesBelow() {
        Trial t = at(0, bench());
        assertThat(t.word("lamp.light")).isEqualTo("lit");
        assertThat(t.word("contactor.armature")).isEqualTo("pulled in");
        assertThat(t.set("pressure.felt", 1.25e5).word("lamp.light")).isEqualTo("dark");
        assertThat(t.set("pressure.felt", 1.1e5).word("lamp.light"))
                .as("still above its differential")
                .isEqualTo("dark");
        assertThat(t.set("pressure.felt", 1.0e5).word("lamp.light")).isEqualTo("lit");
    }

    @Test
    void weldedContactsHoldWhateverTheCoilSays() {
        Trial t = at(1.3, bench().broken("contactor", "contacts welded", 0));
        assertThat(t.word("contactor.armature")).isEqualTo("dropped");
        assertThat(t.word("lamp.light")).isEqualTo("lit");
        Trial pole = at(1.3, bench().broken("contactor", "one pole welded", 0));
        assertThat(pole.word("lamp.light")).isEqualTo("dark");
        assertThat(pole.ohms("contactor.in 1", "contactor.out 1")).isLessThan(1);
        Trial pressure = at(1.3, bench().broken("pressure", "contacts welded", 0));
        assertThat(pressure.word("lamp.light")).isEqualTo("lit");
    }

    @Test
    void anOpenCoilOrABurntContactLeavesItDark() {
        assertThat(at(0, bench().broken("contactor", "coil open", 0)).word("lamp.light"))
                .isEqualTo("dark");
        Trial burnt = at(0, bench().broken("contactor", "contacts burnt open", 1));
        assertThat(burnt.word("contactor.armature")).isEqualTo("pulled in");
        assertThat(burnt.word("lamp.light")).isEqualTo("dark");
        assertThat(at(0, bench().broken("contactor", "does not pull in", 1)).word("lamp.light"))
                .isEqualTo("dark");
    }

    @Test
    void aMeterSeesItsCoil() {
        assertThat(bench().tried().ohms("contactor.coil 1", "contactor.coil 2")).isCloseTo(4000, within(1.0));
    }
}
