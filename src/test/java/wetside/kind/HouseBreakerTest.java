package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HouseBreakerTest {
    private static Workbench house() {
        return new Workbench()
                .part("socket", new Socket())
                .part("breaker", new Breaker())
                .part("cord", new PowerCord())
                .part("switch", new PowerSwitch())
                .part("lamp", new Lamp())
                .part("element", new HeatingElement())
                .set("element", HeatingElement.POWER, 1600)
                .part("earth", new ProtectiveConductor())
                .wire("socket.line", "breaker.line in")
                .wire("socket.neutral", "breaker.neutral in")
                .wire("breaker.line out", "cord.socket line")
                .wire("breaker.neutral out", "cord.socket neutral")
                .wire("socket.earth", "cord.socket earth")
                .wire("cord.line", "switch.line in")
                .wire("cord.neutral", "switch.neutral in")
                .wire("switch.line out", "element.1", "lamp.1")
                .wire("switch.neutral out", "element.2", "lamp.2")
                .wire("cord.earth", "earth.supply")
                .wire("earth.case", "element.earth");
    }

    private static Trial on(Workbench bench) {
        return bench.tried().move("switch.switch", "on").run(1);
    }

    @Test
    void carriesASoundMachine() {
        Trial t = on(house()).run(600);
        assertThat(t.word("breaker.lever")).isEqualTo("on");
        assertThat(t.word("lamp.light")).isEqualTo("lit");
        assertThat(t.heating()).isGreaterThan(1400);
    }

    @Test
    void fallsOnAnEarthedLeakAndFallsAgainWhenSet() {
        Trial t = on(house().broken("element", "leaks to earth", 0.6));
        assertThat(t.word("breaker.lever")).isEqualTo("off");
        assertThat(t.word("lamp.light")).isEqualTo("dark");
        t.move("breaker.lever", "on").run(1);
        assertThat(t.word("breaker.lever")).isEqualTo("off");
        t.move("cord.plug", "out").move("breaker.lever", "on").run(1);
        assertThat(t.word("breaker.lever")).isEqualTo("on");
    }

    @Test
    void doesNotSeeALeakThatHasNoWayToEarth() {
        Trial t = on(house().broken("element", "leaks to earth", 0.6).broken("earth", "off its stud", 0));
        assertThat(t.word("breaker.lever")).isEqualTo("on");
    }

    @Test
    void fallsAtOnceOnAShortToTheSheath() {
        Trial t = house().broken("element", "shorted to the sheath", 0)
                .set("breaker", Breaker.RESIDUAL, 1e3)
                .set("breaker", Breaker.RATING, 2)
                .tried()
                .move("switch.switch", "on");
        assertThat(t.word("breaker.lever")).isEqualTo("off");
    }

    @Test
    void fallsSomeWhileAfterAnOverload() {
        Trial t = on(house().set("breaker", Breaker.RATING, 4));
        assertThat(t.word("breaker.lever")).isEqualTo("on");
        assertThat(t.run(120).word("breaker.lever")).isEqualTo("off");
    }

    @Test
    void nothingWorksWithoutVoltageAndTheLampSaysSo() {
        for (Workbench dead : new Workbench[] {
            house().broken("socket", "dead", 0),
            house().broken("breaker", "off or tripped", 0),
            house().broken("cord", "plug not home", 0),
            house().broken("cord", "neutral conductor broken", 0),
            house().broken("switch", "line contact burnt open", 1)
        }) {
            Trial t = on(dead);
            assertThat(t.word("lamp.light")).isEqualTo("dark");
            assertThat(t.heating()).isLessThan(1);
        }
    }

    @Test
    void aDeadLampStaysDarkWhileTheMachineHeats() {
        Trial t = on(house().broken("lamp", "dead", 0));
        assertThat(t.word("lamp.light")).isEqualTo("dark");
        assertThat(t.heating()).isGreaterThan(1400);
    }

    @Test
    void anEarthLostIsFoundWithAnOhmMeter() {
        Trial whole = house().tried().move("cord.plug", "out");
        assertThat(whole.ohms("cord.plug earth", "element.earth")).isLessThan(0.3);
        assertThat(whole.ohms("cord.plug earth", "socket.earth")).isGreaterThan(1e6);
        Trial loose = house().broken("earth", "off its stud", 0).tried().move("cord.plug", "out");
        assertThat(loose.ohms("cord.plug earth", "element.earth")).isGreaterThan(1e6);
    }

    @Test
    void aFuseMeltsOnAShortAndStaysMelted() {
        Workbench bench = Workbench.powered()
                .part("fuse", new Fuse())
                .set("fuse", Fuse.RATING, 0.5)
                .part("lamp", new Lamp())
                .part("short", new Lead())
                .set("short", Lead.OHMS, 20)
                .part("feeler", new Microswitch())
                .wire("switch.line out", "fuse.1")
                .wire("fuse.2", "lamp.1", "feeler.1")
                .wire("feeler.2", "short.1")
                .wire("short.2", "switch.neutral out", "lamp.2");
        Trial t = on(bench);
        assertThat(t.word("lamp.light")).isEqualTo("lit");
        t.set("feeler.cam.motion", 1).run(2).set("feeler.cam.motion", 0).run(1);
        assertThat(t.word("lamp.light")).isEqualTo("dark");
    }
}
