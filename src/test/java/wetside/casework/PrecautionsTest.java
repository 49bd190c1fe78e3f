package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** The capacitor is named where it can be touched, and nowhere else. */
class PrecautionsTest {
    private static final String CAPACITOR = "capacitor";

    private static Machine machine(String file) {
        MachineFile f = MachineFile.bundled(file, Kinds.declarations());
        return f.machine(f.newestRevision());
    }

    @Test
    void onlyWhereTheMotorIsBehindThePanelsThatComeOff() {
        Machine twin = machine("twin-boiler-lever");
        assertThat(Precautions.beforeOpening(
                        twin, twin.component("motor").place().behind()))
                .contains(CAPACITOR);
        assertThat(Precautions.beforeOpening(twin, java.util.List.of("top"))).doesNotContain(CAPACITOR);
        Machine spring = machine("spring-lever");
        assertThat(Precautions.beforeOpening(
                        spring,
                        spring.identity().panels().stream()
                                .map(Machine.Panel::id)
                                .toList()))
                .doesNotContain(CAPACITOR);
    }

    @Test
    void questionsSayItLikewise() {
        for (String file : java.util.List.of("spring-lever", "single-boiler", "thermoblock")) {
            Casework c = Installed.of(machine(file), Installation.UNKNOWN).casework(Procedures.bundled());
            assertThat(c.askings()).extracting(Asking::caution).noneMatch(s -> s.contains(CAPACITOR));
        }
        Casework twin =
                Installed.of(machine("twin-boiler-lever"), Installation.UNKNOWN).casework(Procedures.bundled());
        assertThat(twin.askings()).extracting(Asking::caution).anyMatch(s -> s.contains(CAPACITOR));
    }
}
