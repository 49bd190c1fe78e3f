package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VibratoryPumpTest {
    private static Workbench bench() {
        return Workbench.powered()
                .part("pump", new VibratoryPump())
                .wire("switch.line out", "pump.line")
                .wire("switch.neutral out", "pump.neutral")
                .wire("cord.earth", "pump.earth");
    }

    private static Trial on(Workbench bench) {
        return bench.tried().move("switch.switch", "on").run(1);
    }

    @Test
    void strikesOnceAPeriodOfTheMains() {
        assertThat(on(bench()).get("pump.strokes")).isCloseTo(50, within(1.0));
        Workbench sixty = bench().set("pump", VibratoryPump.FREQUENCY, 60);
        assertThat(on(sixty).get("pump.strokes")).isCloseTo(60, within(1.2));
    }

    @Test
    void lowVoltageShortensItsThrow() {
        double low = on(bench().broken("socket", "low voltage", 1)).get("pump.strokes");
        assertThat(low).isBetween(30.0, 40.0);
    }

    @Test
    void takesItsRatedPowerAndShowsAnOhmMeterOnlyItsCopper() {
        assertThat(on(bench()).heating()).isCloseTo(48, within(2.0));
        assertThat(bench().tried().ohms("pump.line", "pump.neutral")).isCloseTo(190, within(1.0));
    }

    @Test
    void itsCutOutOpensWhenTheCoilIsHotAndClosesAgainByItself() {
        Trial t = on(bench());
        t.heat(380).run(0.5);
        assertThat(t.get("pump.strokes")).isLessThan(1e-6);
        assertThat(t.heat(360).run(0.5).get("pump.strokes")).isLessThan(1e-6);
        assertThat(t.heat(340).run(0.5).get("pump.strokes")).isGreaterThan(45);
    }

    @Test
    void whatItSoundsLikeComesFromCurrentAndStroke() {
        assertThat(on(bench().broken("pump", "coil or diode open", 0)).word("pump.sound"))
                .isEqualTo("silent");
        assertThat(on(bench().broken("pump", "piston stuck", 0)).word("pump.sound"))
                .isEqualTo("hums");
        Trial shorted = on(bench().broken("pump", "diode shorted", 0.5));
        assertThat(shorted.word("pump.sound")).isEqualTo("hums");
        assertThat(shorted.heating()).isGreaterThan(70);
    }
}
