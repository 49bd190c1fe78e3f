package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** What an owner is told to do is done with the case shut: common practice, no source. */
class OwnersStayOutsideTest {
    /** Behind panels, and yet the owner's remedy is at knob, keys, display or tank. */
    private static final Set<String> WORKED_FROM_OUTSIDE =
            Set.of("thermosiphon pipe", "vibratory pump", "dosing unit", "temperature controller");

    @Test
    void noRemedyOfAnOwnerReachesBehindAPanel() {
        List<String> reaching = new ArrayList<>();
        int remedies = 0;
        for (String name : MachineFile.names()) {
            MachineFile file = MachineFile.bundled(name, Kinds.declarations());
            for (Machine machine : file.machines()) {
                for (Component c : machine.components()) {
                    boolean owner = Words.of(c.kind().name()).faults().values().stream()
                            .anyMatch(f -> f.remedy().who().equals("owner"));
                    remedies += owner ? 1 : 0;
                    if (owner
                            && !c.place().behind().isEmpty()
                            && !WORKED_FROM_OUTSIDE.contains(c.kind().name())) {
                        reaching.add(name + ": " + c.name());
                    }
                }
            }
        }
        assertThat(remedies).isGreaterThan(50);
        assertThat(reaching).isEmpty();
    }
}
