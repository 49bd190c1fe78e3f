package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wetside.trade.Bench.broken;
import static wetside.trade.Bench.set;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Balance;

/** What a plumbed-in machine with a saturated group must show by itself. Common practice, no source. */
class SaturatedTest {
    private static final double WARM = 40 * 60;
    private static final double NIGHT = 8 * 3600;

    @SafeVarargs
    private static Bench machine(UnaryOperator<Machine>... changes) {
        return Bench.of("twin-boiler-saturated", changes);
    }

    private static Bench brew(Bench b, String holds) {
        return b.turn("group.holds", holds).turn("brew-button.button", "in");
    }

    private static Bench stop(Bench b) {
        return b.turn("brew-button.button", "out");
    }

    private static double brewBoiler(Bench b) {
        return b.slot("brew-boiler.temperature") - 273.15;
    }

    private static double head(Bench b) {
        return b.celsius("group.head temperature");
    }

    @Test
    void theHeadStaysWithinAboutADegreeOfItsBoilerFarNearerThanACirculatingGroup() {
        Bench b = machine().on().after(WARM);
        double boiler = brewBoiler(b);
        assertThat(boiler - head(b)).isBetween(0.3, 1.5);
        assertThat(boiler - b.celsius("group.temperature")).isBetween(1.0, 4.0);
        double atTheScreen = boiler - brew(b, "puck").after(20).celsius("cup.temperature");
        assertThat(atTheScreen).isBetween(0.0, 1.8);
        Bench lever = Bench.onTank().on().after(WARM);
        double leverBoiler = brewBoiler(lever);
        lever.turn("group.holds", "puck").turn("lever.position", "brew").after(20);
        assertThat(leverBoiler - lever.celsius("cup.temperature")).isGreaterThan(3 * atTheScreen);
    }

    @Test
    void isReadySoonerThanAHeavyCirculatingGroup() {
        Bench b = machine().on();
        double minutes = b.until("group.temperature", 273.15 + 85, 3600) / 60;
        assertThat(minutes).isBetween(5.0, 15.0);
        Bench lever = Bench.onTank().on();
        assertThat(lever.until("group.temperature", 273.15 + 75, 3600) / 60).isGreaterThan(1.5 * minutes);
    }

    @Test
    void recoversWithinAMinuteOfAShot() {
        Bench b = machine().on().after(WARM);
        double boiler = brewBoiler(b);
        double head = head(b);
        for (int shot = 0; shot < 3; shot++) {
            brew(b, "puck").after(30);
            assertThat(b.read("cup.flow")).isBetween(1.5e-3, 3e-3);
            stop(b).after(45);
            assertThat(brewBoiler(b)).isCloseTo(boiler, within(0.7));
            assertThat(head(b)).isCloseTo(head, within(0.7));
        }
    }

    @Test
    void warmedBrewWaterSagsLess() {
        Bench newer = machine().on().after(WARM);
        MachineFile file = MachineFile.bundled("twin-boiler-saturated", Kinds.declarations());
        Bench older = Bench.on(file.machine("A")).on().after(WARM);
        assertThat(sag(older)).isBetween(1.5, 4.0).isGreaterThan(2 * sag(newer));
    }

    private static double sag(Bench b) {
        double before = brewBoiler(b);
        return before - brewBoiler(brew(b, "puck").after(30));
    }

    @Test
    void aNarrowedNeckLeavesTheHeadBehindWhileTheDisplayIsRight() {
        Bench b = machine(broken("group", "neck narrowed by scale", 1)).on().after(WARM);
        assertThat(b.celsius("brew-controller.display")).isCloseTo(93, within(1.0));
        assertThat(head(b)).isLessThan(80);
    }

    @ParameterizedTest
    @ValueSource(doubles = {3e5, 7e5})
    void behindTheRegulatorTheBlindDiscReadsTheSameWhateverTheMains(double mains) {
        Bench b = machine(set("mains", "pressure", mains)).on();
        assertThat(b.bar("pump-gauge.needle")).isCloseTo(2.5, within(0.15));
        assertThat(brew(b, "blind disc").after(12).bar("pump-gauge.needle")).isCloseTo(9.05, within(0.15));
    }

    @Test
    void aCreepingRegulatorLetsTheMainsThroughAtRestAndLiftsTheBlindDisc() {
        Bench b = machine(set("mains", "pressure", 7e5), broken("regulator", "creeps", 0.8))
                .after(600);
        assertThat(b.bar("pump-gauge.needle")).isGreaterThan(6.5);
        assertThat(brew(b.on(), "blind disc").after(12).bar("pump-gauge.needle"))
                .isGreaterThan(9.6);
    }

    @Test
    void aCloggedRegulatorShowsOnlyWhileWaterRuns() {
        UnaryOperator<Machine> clogged = broken("regulator", "seat or sieve clogged", 0.9);
        Bench b = machine(clogged).on().after(WARM);
        assertThat(b.bar("pump-gauge.needle")).isCloseTo(2.5, within(0.2));
        double flow = brew(b, "nothing").after(8).read("cup.flow");
        double whole = brew(machine().on().after(WARM), "nothing").after(8).read("cup.flow");
        assertThat(flow).isLessThan(0.6 * whole);
    }

    @Test
    void lettingGoOfTheButtonLetsThePressureOffThroughTheThreeWayValve() {
        assertThat(letOff(machine().on().after(300))).isBetween(5e-3, 12e-3);
        assertThat(letOff(
                        machine(broken("brew-valve", "exhaust blocked", 1)).on().after(300)))
                .isLessThan(1e-4);
    }

    /** Water from the let-off pipe in the first two seconds after brewing against the blind disc. */
    private static double letOff(Bench b) {
        return stop(brew(b, "blind disc").after(12)).growth("group-drain.caught", 2);
    }

    @Test
    void mixedHotWaterDoesNotBoilAndUnmixedDoes() {
        Bench b = machine().on().after(WARM).turn("water-tap.opened", "100 %").after(10);
        assertThat(b.celsius("water-spout.temperature")).isBetween(75.0, 93.0);
        Bench blocked = machine(broken("water-tap", "cold way blocked by scale", 1))
                .on()
                .after(WARM)
                .turn("water-tap.opened", "100 %")
                .after(10);
        assertThat(blocked.celsius("water-spout.temperature")).isGreaterThan(98);
    }

    @Test
    void aLeakingNonReturnFillsTheSteamBoilerOvernight() {
        Bench sound = machine().after(NIGHT);
        assertThat(sound.slot("steam-boiler.level")).isCloseTo(0.62, within(0.01));
        Bench leaks = machine(broken("water-tap", "non-return to the boiler leaks", 0.2))
                .after(NIGHT);
        assertThat(leaks.slot("steam-boiler.level")).isGreaterThan(0.8);
        Bench shut = machine(
                        broken("water-tap", "non-return to the boiler leaks", 0.2), set("cock", "position at start", 0))
                .after(NIGHT);
        assertThat(shut.slot("steam-boiler.level")).isCloseTo(0.62, within(0.02));
    }

    @ParameterizedTest
    @ValueSource(strings = {"230 V", "120 V"})
    void aMorningKeepsItsBooksInEveryMaking(String supply) {
        MachineFile file = MachineFile.bundled("twin-boiler-saturated", Kinds.declarations());
        for (String revision : new String[] {"A", "B"}) {
            Bench b = Bench.on(file.machine(revision, supply)).on().after(WARM);
            stop(brew(b, "puck").after(30)).after(30);
            b.turn("steam-tap.opened", "100 %").after(20).turn("steam-tap.opened", "0 %");
            b.turn("water-tap.opened", "100 %").after(15).turn("water-tap.opened", "0 %");
            b.after(300);
            assertThat(b.celsius("brew-controller.display")).isCloseTo(93, within(1.0));
            assertThat(b.bar("steam-gauge.needle")).isBetween(1.1, 1.5);
            assertThat(b.word("house-breaker.lever")).isEqualTo("on");
            Balance books = b.run().plant().balance();
            assertThat(books.waterResidual()).isCloseTo(0, within(1e-7));
            assertThat(books.energyResidual() / books.heatTaken()).isCloseTo(0, within(1e-6));
            assertThat(books.chargeResidual()).isCloseTo(0, within(1e-9));
        }
    }
}
