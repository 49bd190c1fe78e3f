package wetside.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Plant;

/** A night may pass in long steps: nothing comes out otherwise than when somebody looks every half minute. */
class NightTest {
    private static final double NIGHT = 8 * 3600;

    private final Machine machine =
            MachineFile.bundled("twin-boiler-lever", Kinds.declarations()).newest();

    private static Run begun(Machine machine) {
        Run run = new Run(Plant.of(Kinds.blueprint(machine)));
        run.begin();
        return run;
    }

    private static Map<String, Double> readings(Run run) {
        Map<String, Double> values = new TreeMap<>();
        run.plant().readings().forEach((name, r) -> values.put(name, run.plant().read(r)));
        return values;
    }

    private static void looksTheSame(Machine machine) {
        looksTheSame(machine, 30);
    }

    private static void looksTheSame(Machine machine, double every) {
        Run slept = begun(machine);
        slept.pass(NIGHT);
        Run watched = begun(machine);
        for (int k = 0; k < NIGHT / every; k++) {
            watched.pass(every);
        }
        assertThat(slept.stepper().steps()).isLessThan(watched.stepper().steps() / 2);
        Map<String, Double> expected = readings(watched);
        readings(slept).forEach((name, value) -> {
            double other = expected.get(name);
            boolean alike =
                    Double.compare(value, other) == 0 || Math.abs(value - other) <= 1e-9 + 0.005 * Math.abs(other);
            assertThat(alike).as(name + ": " + value + " for " + other).isTrue();
        });
    }

    @Test
    void whenNothingIsWrong() {
        looksTheSame(machine);
    }

    @Test
    void whenSomethingDripsAllNight() {
        looksTheSame(Installed.broken(machine, "tank-hose:end leaks=0.1"));
    }

    @Test
    void whenABurstHoseRunsAllNight() {
        looksTheSame(
                Installed.broken(
                        MachineFile.bundled("exchanger-two-group", Kinds.declarations())
                                .newest(),
                        "mains-hose:burst"),
                1);
    }
}
