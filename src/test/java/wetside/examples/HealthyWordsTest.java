package wetside.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wetside.casework.Casework;
import wetside.casework.Expected;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;

/** Words a whole machine is described in, common practice, no source: read at the moment asked for, not the one after. */
class HealthyWordsTest {
    @Test
    void wholeMachineIsDescribedAsWhole() {
        Installed installed = Installed.of(
                MachineFile.find("machines/twin-boiler-lever.yaml", Kinds.declarations())
                        .newest(),
                Installation.UNKNOWN);
        Casework casework = installed.casework(Procedures.bundled());
        Map<String, String> words = Expected.healthy(casework, 1).stream()
                .collect(Collectors.toMap(e -> e.asking().question().id(), Expected::words));
        assertThat(words)
                .containsEntry("pump motor sound while brewing", "runs")
                .containsEntry("pump noise while brewing", "even")
                .containsEntry("pump stops after brewing", "silent")
                .containsEntry("pressure rises", "at once")
                .containsEntry("message with the tank empty", "tank empty")
                .containsEntry("message with the tank filled and put back", "ready")
                .containsEntry("steam controller lamp while heating", "steady")
                .containsEntry("steam controller lamp while holding", "flashing")
                .containsEntry("coffee temperature", "as usual");
    }
}
