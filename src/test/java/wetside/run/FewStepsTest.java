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

    @Test
    void aHeaterThatCyclesOnAPressureSwitchIsFollowedInFewTries() {
        Run run = after("multi-boiler-two-group", "power-lamp:dead", "cold at rest", "switched on", "warm-up");
        long steps = run.stepper().steps();
        long rejected = run.stepper().rejected();
        run.begin();
        run.pass(600);
        // sought by halving, each switching costs fifteen steps or tries more
        assertThat(run.stepper().steps() - steps).isLessThan(110);
        assertThat(run.stepper().rejected() - rejected).isLessThan(15);
    }

    @Test
    void switchingMomentsAndDosesAreThoseOfFineSteps() {
        double[] usual = cycledAndDosed(1);
        double[] fine = cycledAndDosed(0.1);
        assertThat(usual[0]).as("first opening of the pressure switch [s]").isCloseTo(fine[0], within(6.0));
        assertThat(usual[1]).as("one dose [kg]").isCloseTo(fine[1], within(0.5e-3));
    }

    private static double[] cycledAndDosed(double fineness) {
        Machine machine = MachineFile.bundled("multi-boiler-two-group", Kinds.declarations())
                .newest();
        Map<String, Scenario> known =
                Repertoire.of(Procedures.bundled(), machine).routines();
        Run run = new Run(Plant.of(Kinds.blueprint(machine)));
        run.stepper().fineness(fineness);
        double[] seen = {Double.NaN, 0};
        run.watch((t, p) -> seen[0] = Double.isNaN(seen[0]) && p.slot("pressure-switch.closed") < 0.5 ? t : seen[0]);
        for (String routine : new String[] {"cold at rest", "switched on", "warm-up"}) {
            run.begin();
            run.go(known.get(routine));
        }
        double before = run.plant().slot("cup-left.caught");
        run.begin();
        run.go(known.get("one dose, left group"));
        seen[1] = run.plant().slot("cup-left.caught") - before;
        return seen;
    }
}
