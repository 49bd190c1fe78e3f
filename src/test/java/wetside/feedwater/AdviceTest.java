package wetside.feedwater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wetside.analysis.WaterSheet;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;
import wetside.run.Scenario;
import wetside.water.ConstantSet;
import wetside.water.Cycles;

class AdviceTest {
    private static Installed lever;
    private static MachineFacts facts;

    @BeforeAll
    static void machine() {
        MachineFile file = MachineFile.find("twin-boiler-lever", Kinds.declarations());
        lever = Installed.of(
                file.machine(file.newestRevision(), file.supplyAt(java.util.OptionalDouble.empty())),
                Installation.UNKNOWN);
        facts = MachineFacts.of(lever);
    }

    private static Advice advice(String name) {
        return Advice.of(WaterSheet.read(Path.of("examples/water/" + name)), facts, ConstantSet.STANDARD);
    }

    private static Verdict.Grade grade(Advice a, String concern) {
        return a.verdicts().stream()
                .filter(v -> v.concern().equals(concern))
                .findFirst()
                .orElseThrow()
                .grade();
    }

    @Test
    void theTwinGivesTheTemperatures() {
        assertThat(facts.hot()).extracting(Hot::name).containsExactly("brew boiler", "steam boiler");
        assertThat(facts.hot().get(0).kelvin()).isCloseTo(273.15 + 96, within(1.5));
        assertThat(facts.hot().get(1).kelvin()).isCloseTo(273.15 + 124, within(1.5));
        assertThat(facts.hot().get(1).surface()).isCloseTo(0.025, within(1e-9));
    }

    @Test
    void theProbeIsBlindBelowAConductivityThatTheTwinShows() {
        Blindness b = facts.blindness().orElseThrow();
        List<Scenario> on = Repertoire.of(Procedures.bundled(), lever.machine()).leadingTo("switched on");
        assertThat(b.clean().middle()).isBetween(3e-4, 60e-4);
        assertThat(Blindness.sees(lever.machine(), on, 1.1 * b.clean().middle()))
                .isTrue();
        assertThat(Blindness.sees(lever.machine(), on, 0.9 * b.clean().middle()))
                .isFalse();
        assertThat(b.filmed()).isGreaterThan(b.clean().high());
    }

    @Test
    void threeWatersAreTalkedAboutDifferently() {
        Advice hard = advice("laboratory.yaml");
        Advice pure = advice("membrane.yaml");
        assertThat(grade(hard, "scale, steam boiler")).isEqualTo(Verdict.Grade.ACT);
        assertThat(grade(hard, "level probe")).isEqualTo(Verdict.Grade.GOOD);
        assertThat(grade(pure, "scale, steam boiler")).isEqualTo(Verdict.Grade.GOOD);
        assertThat(grade(pure, "level probe")).isNotEqualTo(Verdict.Grade.GOOD);
        assertThat(grade(pure, "copper and brass")).isNotEqualTo(Verdict.Grade.GOOD);
        assertThat(hard.forecasts().get(0).falls().middle())
                .isGreaterThan(pure.forecasts().get(0).falls().high());
        assertThat(hard.verdicts())
                .allMatch(v -> !v.value().isEmpty() && !v.reason().isEmpty());
    }

    @Test
    void everyRangeHoldsItsMiddle() {
        for (String name : new String[] {"tap.yaml", "softened.yaml", "spring.yaml"}) {
            for (Forecast f : advice(name).forecasts()) {
                assertThat(f.falls().low()).isLessThanOrEqualTo(f.falls().middle());
                assertThat(f.falls().high()).isGreaterThanOrEqualTo(f.falls().middle());
                assertThat(f.falls().low()).isGreaterThanOrEqualTo(-1e-12);
            }
        }
    }

    @Test
    void oneVesselForBothHasOneDateAndTwoGroupsShareTheWater() {
        MachineFile single = MachineFile.find("single-boiler", Kinds.declarations());
        MachineFacts one = MachineFacts.of(Installed.of(
                single.machine(single.newestRevision(), single.supplyAt(java.util.OptionalDouble.empty())),
                Installation.UNKNOWN));
        Advice a = Advice.of(WaterSheet.read(Path.of("examples/water/tap.yaml")), one, ConstantSet.STANDARD);
        assertThat(a.heated()).hasSize(2);
        assertThat(a.forecasts()).hasSize(1);
        Forecast f = a.forecasts().get(0);
        assertThat(f.years().middle() * f.element().middle()).isCloseTo(Forecast.MARK, within(1e-9));
        assertThat(a.heated().get(1).kelvin()).isGreaterThan(a.heated().get(0).kelvin() + 20);
        // all the lime there is in what passes: 0.8 + 0.12 + 0.3 l on 330 days
        double most = 1.22 * 330 * 0.1001 * a.waters().middle().alkalinity() / 2;
        assertThat(f.falls().middle()).isBetween(0.2 * most, most);
    }

    @Test
    void drainOffComesInTimeForTheLimit() {
        Concentration c = advice("tap.yaml").boiler().orElseThrow();
        assertThat(c.settles()).isCloseTo(Cycles.settled(0.12, 0.3), within(1e-9));
        double t = Cycles.time(3, 1.2, 0.5, 0.1);
        double settles = Cycles.settled(0.5, 0.1);
        assertThat(settles - (settles - 1) * Math.exp(-0.1 * t / 1.2)).isCloseTo(3, within(1e-9));
        assertThat(Cycles.time(3, 1.2, 0.5, 1e-7)).isCloseTo(Cycles.time(3, 1.2, 0.5, 0), within(1e-4));
        assertThat(Cycles.time(3, 1.2, 0.5, 0.5)).isInfinite();
    }

    @Test
    void treatmentsTakeScaleAwayAndCostSomething() {
        Comparison c =
                Comparison.of(WaterSheet.read(Path.of("examples/water/laboratory.yaml")), facts, ConstantSet.STANDARD);
        Map<String, Comparison.Entry> by = new java.util.HashMap<>();
        c.entries().forEach(e -> by.put(e.conditioning().name(), e));
        double raw = by.get("as it comes").advice().heated().get(1).potential().middle();
        for (String name : new String[] {"softener", "cartridge", "membrane", "minerals"}) {
            assertThat(by.get(name).advice().heated().get(1).potential().middle())
                    .isLessThan(0.3 * raw);
            assertThat(by.get(name).expense().total()).isPositive();
        }
        assertThat(by.get("as it comes").expense().total()).isZero();
        // 4.8 m³ a year, 6.6 degrees taken out, 24 000 litre-degrees a cartridge at 85
        assertThat(by.get("cartridge").expense().total()).isCloseTo(4805 * 6.57 / 24000 * 85, within(5.0));
    }

    @Test
    void aBlendThatCannotReachSaysWhy() {
        Comparison c = Comparison.of(
                WaterSheet.read(Path.of("examples/water/softened.yaml")), MachineFacts.NONE, ConstantSet.STANDARD);
        assertThat(c.entries())
                .filteredOn(e -> e.conditioning().name().equals("membrane"))
                .allMatch(e -> e.conditioning().note().contains("the nearest blend leaves calcium hardness"));
    }
}
