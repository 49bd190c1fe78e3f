package wetside.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Plant;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;

/** Breaks after which a vessel boils dry, or is flushed through, are followed in no more steps than anything else. */
class FewStepsTest {
    private static Run after(String machine, String broken, String... routines) {
        Machine whole = MachineFile.bundled(machine, Kinds.declarations()).newest();
        Map<String, Scenario> known = Repertoire.of(Procedures.bundled(), whole).routines();
        Run run = new Run(Plant.of(Kinds.blueprint(Installed.broken(whole, broken))));
        for (String routine : routines) {
            run.begin();
            run.go(known.get(routine));
        }
        return run;
    }

    @Test
    void gasInAChannelBoiledDryFollowsItsWallQuietly() {
        String[] heated = {"cold at rest", "switched on", "warm-up", "steaming"};
        for (String broken :
                new String[] {"pressure-hose:burst=0.5", "relief-tee:cracked=0.5", "outlet-tee:cracked=0.5"}) {
            Run run = after("thermoblock", broken, heated);
            // swinging between hot and cold from step to step, as gas does when its own warmth is forgotten, takes 20
            // 000
            assertThat(run.stepper().steps()).as(broken).isLessThan(1000);
            assertThat(run.plant().slot("block channel.level")).as(broken).isLessThan(0.01);
            assertThat(run.plant().slot("block channel.pressure"))
                    .as(broken)
                    .isCloseTo(run.plant().slot("surroundings.air pressure"), within(500.0));
        }
    }

    @Test
    void aVesselMayBeFlushedWithinAStep() {
        Run run = after("twin-boiler-saturated", "brew-boiler:fitting broken", "cold at rest", "switched on");
        assertThat(run.stepper().rejected()).isLessThan(20);
        assertThat(run.stepper().steps()).isLessThan(200);
        assertThat(Math.abs(run.plant().balance().waterResidual())).isLessThan(1e-6);
    }
}
