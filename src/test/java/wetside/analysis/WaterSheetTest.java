package wetside.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wetside.machine.BadFile;
import wetside.water.Composition;
import wetside.water.Conductivity;
import wetside.water.ConstantSet;
import wetside.water.Equilibrium;

class WaterSheetTest {
    private static final String DROPS = "hardness: 9 drops of 1 °dH\n  alkalinity: 8 drops of 1 °dH\n  ";

    private static WaterSheet sheet(String measured) {
        return WaterSheet.of("test.yaml", "wetside water: 1\nmeasured:\n  " + measured + "\n");
    }

    @Test
    void missingIonsAreCompletedToChargeAndConductivity() {
        WaterSheet s = sheet(DROPS + "conductivity: 420 µS/cm ± 2 %");
        for (Composition c : s.waters().drawn()) {
            assertThat(c.cations() - c.anions()).isCloseTo(0, within(1e-9));
            assertThat(c.sodium()).isNotNegative();
            assertThat(c.chloride()).isNotNegative();
        }
        assertThat(Conductivity.atRoom(s.waters().middle())).isCloseTo(420e-4, within(1e-4));
        assertThat(s.assumed()).anyMatch(a -> a.contains("calcium")).anyMatch(a -> a.contains("pH"));
    }

    @Test
    void theTruthLiesWithinTheRanges() {
        SplittableRandom r = new SplittableRandom(3);
        int inside = 0;
        int all = 0;
        for (int i = 0; i < 25; i++) {
            double ca = r.nextDouble(0.3e-3, 2e-3);
            double mg = ca * r.nextDouble(0.2, 0.5);
            double alk = 2 * (ca + mg) * r.nextDouble(0.5, 0.95);
            double na = r.nextDouble(0.2e-3, 1e-3);
            double no3 = r.nextDouble(0.02e-3, 0.1e-3);
            double rest = 2 * (ca + mg) + na - alk - no3;
            double cl = rest * r.nextDouble(0.35, 0.6);
            Composition open = new Composition(ca, mg, na, 0, cl, (rest - cl) / 2, no3, 1e-4, alk, alk);
            Composition truth = Equilibrium.at(ConstantSet.STANDARD, 298.15).sampled(open, 7.6);
            WaterSheet s = sheet(String.format(
                    java.util.Locale.ROOT,
                    "hardness: %.5f mmol/l\n  alkalinity: %.5f meq/l\n  conductivity: %.2f µS/cm\n  pH: 7.6",
                    1e3 * (ca + mg),
                    1e3 * alk,
                    1e4 * Conductivity.atRoom(truth)));
            Heated h = Heated.of(s.waters(), ConstantSet.STANDARD, 370);
            Equilibrium at = Equilibrium.at(ConstantSet.STANDARD, 370);
            double falls = Heated.potential(at, truth);
            inside += falls >= h.potential().low() && falls <= h.potential().high() ? 1 : 0;
            all++;
        }
        assertThat(inside).isGreaterThanOrEqualTo(all - 3);
    }

    @Test
    void moreMeasuredIsNarrower() {
        Ranged rough = falls(sheet(DROPS + "conductivity: 390 µS/cm"));
        Ranged fine = falls(sheet("hardness: 8.5 °dH ± 1 %\n  calcium: 45 mg/l ± 1 %\n  alkalinity: 7.5 °dH ± 1 %\n"
                + "  conductivity: 390 µS/cm\n  pH: 7.6 ± 0.05"));
        assertThat(fine.high() - fine.low()).isLessThan(0.5 * (rough.high() - rough.low()));
        assertThat(rough.mainly()).contains("pH (assumed)");
    }

    private static Ranged falls(WaterSheet s) {
        return Heated.of(s.waters(), ConstantSet.STANDARD, 370).potential();
    }

    @Test
    void theSheetOnItsPageIsASheet() throws java.io.IOException {
        String page = java.nio.file.Files.readString(java.nio.file.Path.of("docs/water-sheet.md"));
        String yaml = page.substring(page.indexOf("```yaml\n") + 8, page.indexOf("```\n\n| line"));
        assertThat(WaterSheet.of("page.yaml", yaml).treatments()).hasSize(5);
        for (String name : Content.names()) {
            assertThat(page).contains("`" + name + "`");
        }
    }

    @Test
    void theSameSheetGivesTheSameWaters() {
        assertThat(sheet(DROPS + "pH: 7.6").waters().drawn())
                .isEqualTo(sheet(DROPS + "pH: 7.6").waters().drawn());
    }

    @Test
    void aDropTestLiesBetweenTwoDrops() {
        Measured m = Measured.parse("9 drops of 1 °dH", Content.HARDNESS);
        assertThat(Content.HARDNESS.shown(m.at(0), "°dH")).isCloseTo(8, within(1e-9));
        assertThat(Content.HARDNESS.shown(m.at(1), "°dH")).isCloseTo(9, within(1e-9));
    }

    @Test
    void measuredConductivityGoesToTheInstallation() {
        var known = sheet(DROPS + "conductivity: 390 µS/cm ± 4 %").known();
        assertThat(known.si()).isCloseTo(390e-4, within(1e-9));
        assertThat(known.spread().at(known.si(), 2)).isCloseTo(390e-4 * 1.04, within(3e-5));
    }

    /** Each with what its message must say. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hardness: 9 °dH | alkalinity is missing",
                "alkalinity: 9 °dH | hardness (or calcium) is missing",
                "hardness: 9; alkalinity: 8 °dH | the unit is missing: hardness is written in °dH",
                "hardness: 160 mg/l; alkalinity: 8 °dH | of what? write mg/l CaCO3",
                "hardness: 9 °dH; alkalinity: 2.5 mmol/l | may mean acid capacity or calcium carbonate",
                "hardness: -3 °dH; alkalinity: 8 °dH | no negative hardness",
                "hardness: 900 °dH; alkalinity: 8 °dH | brine",
                "hardness: '9,5 °dH'; alkalinity: 8 °dH | decimal sign is a point",
                "hardness: 9 °dH; alkalinity: 8 °dH; pH: 12 | between 4.5 and 10.5",
                "hardness: 9 °dH; alkalinity: 8 °dH; pH: 2 | between 4.5 and 10.5",
                "hardness: 9 °dH; alkalinity: 8 °dH; magnesium: 60 mg/l | more than the whole hardness",
                "hardness: 9 °dH; alkalinity: 8 °dH; calcium: 20 mg/l; magnesium: 3 mg/l | calcium and magnesium together",
                "hardness: 20 °dH; alkalinity: 15 °dH; conductivity: 200 µS/cm | conduct",
                "hardness: some; alkalinity: 8 °dH | is no hardness",
                "hardnes: 9 °dH; alkalinity: 8 °dH | is not known here",
                "hardness: 9 °dH; alkalinity: 8 °dH; conductivity: 300 | the unit is missing",
            })
    void whatCannotBeIsSaid(String measured, String message) {
        assertThatThrownBy(() -> sheet(measured.replace("; ", "\n  ")))
                .isInstanceOf(BadFile.class)
                .hasMessageContaining(message)
                .hasMessageContaining("test.yaml");
    }

    private static final String WHOLE =
            "calcium: 92 mg/l\n  magnesium: 15 mg/l\n  sodium: 24 mg/l\n  potassium: 3 mg/l\n  chloride: %s\n"
                    + "  sulfate: 52 mg/l\n  nitrate: %s\n  alkalinity: %s\n  conductivity: 640 µS/cm";

    @Test
    void aSlipInAWholeAnalysisNamesItsIon() {
        assertThat(sheet(WHOLE.formatted("42 mg/l", "12 mg/l", "12.3 °dH"))
                        .waters()
                        .middle()
                        .chargeError())
                .isCloseTo(0, within(0.03));
        assertThatThrownBy(() -> sheet(WHOLE.formatted("420 mg/l", "12 mg/l", "12.3 °dH")))
                .hasMessageContaining("Suspect is chloride")
                .hasMessageContaining("decimal point");
        assertThatThrownBy(() -> sheet(WHOLE.formatted("42 mg/l", "12 mg/l", "21.9 °dH")))
                .hasMessageContaining("Suspect is alkalinity")
                .hasMessageContaining("German degrees for French");
    }
}
