package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.page.Level;
import wetside.procedure.Procedures;
import wetside.shop.Entry;

/** In which order a repaired machine is proved, and who may do which part of it: common practice, no source. */
class ProofTest {
    private static final Casework CASEWORK = Installed.of(
                    MachineFile.bundled("twin-boiler-lever", Kinds.declarations())
                            .newest(),
                    Installation.UNKNOWN)
            .casework(Procedures.bundled());

    private static List<Proof.Item> after(String finding) {
        return Proof.of(Optional.of(CASEWORK), finding, List.of()).items();
    }

    @Test
    void earthAndInsulationAreProvedBeforeTheMachineGetsCurrent() {
        assertThat(after("pump: worn vanes"))
                .extracting(Proof.Item::what)
                .containsExactly(
                        "cold leak check",
                        "protective conductor resistance",
                        "insulation resistance",
                        "blind-disc pressure",
                        "water flow in 10 s",
                        "hot leak check",
                        "labels and covers back, owner shown");
    }

    @Test
    void measuresOfProtectionAndAtLivePartsAreForTheElectricianWhateverTheyProve() {
        assertThat(after("socket: no earth"))
                .filteredOn(i -> i.level() == Level.QUALIFIED)
                .extracting(Proof.Item::what)
                .contains("residual current device tested", "protective conductor resistance");
        assertThat(after("brew-element: leaks to earth"))
                .filteredOn(i -> i.level() == Level.QUALIFIED)
                .extracting(Proof.Item::what)
                .contains("insulation resistance", "protective-conductor current")
                .doesNotContain("cold leak check");
        assertThat(after("dc-supply: weak"))
                .filteredOn(i -> i.level() == Level.QUALIFIED)
                .extracting(Proof.Item::what)
                .contains("low voltage under load, by a qualified electrician");
    }

    @Test
    void aFindingIsSaidInWordsAndWhatWasWrittenBehindItStays() {
        Entry kept = new Entry(
                1, 1, Instant.EPOCH, "finding", "Ines", "brew-element: leaks to earth. Flange green. Wet.", "", null);
        Optional<Casework> casework = Optional.of(CASEWORK);
        assertThat(Found.said(casework, kept).words()).isEqualTo("brew element: leaks to earth. Flange green. Wet.");
        assertThat(Found.words(casework, "somebody's own words")).isEqualTo("somebody's own words");
    }
}
