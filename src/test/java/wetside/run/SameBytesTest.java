package wetside.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Plant;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;

/** The same machine and scenario give the same numbers to the last bit, forked or not. */
class SameBytesTest {
    private final Machine machine = new Draws(
                    MachineFile.bundled("twin-boiler-lever", Kinds.declarations())
                            .newest(),
                    7)
            .machine(3);
    private final Map<String, Scenario> routines =
            Repertoire.of(Procedures.bundled(), machine).routines();

    private Run warm() {
        Run run = new Run(Plant.of(Kinds.blueprint(machine)));
        for (String routine : new String[] {"cold at rest", "switched on", "warm-up"}) {
            run.go(routines.get(routine));
        }
        return run;
    }

    private double[] blind(Run run) {
        run.begin();
        run.go(routines.get("blind disc"));
        return run.plant().readings().values().stream()
                .mapToDouble(r -> run.plant().read(r))
                .toArray();
    }

    @Test
    void twoRunsAreAlike() {
        assertThat(Arrays.equals(blind(warm()), blind(warm()))).isTrue();
    }

    @Test
    void aForkGoesOnAsIfNothingHadBeenBetween() {
        Run run = warm();
        Plant.Snapshot fork = run.plant().save();
        double[] first = blind(run);
        run.go(routines.get("hot water"));
        run.plant().restore(fork);
        assertThat(Arrays.equals(blind(run), first)).isTrue();
    }

    @Test
    void drawsAreLatinHypercubesInEveryBlock() {
        Draws draws = new Draws(machine, 1);
        for (int block = 0; block < 3; block++) {
            boolean[] hit = new boolean[Draws.BLOCK];
            for (int k = 0; k < Draws.BLOCK; k++) {
                hit[(int) (draws.severity("any", block * Draws.BLOCK + k) * Draws.BLOCK)] = true;
            }
            assertThat(hit).doesNotContain(false);
        }
    }
}
