package wetside.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wetside.drawing.PartNumbers;
import wetside.drawing.Theme;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;
import wetside.run.Action;
import wetside.run.Scenario;

/** What a coloured map says during a shot: the same as the machine's own instruments. */
class MeasuredTest {
    private static Machine machine;
    private static Measured measured;
    private static List<Way> ways;

    @BeforeAll
    static void shot() {
        machine = MachineFile.bundled("twin-boiler-lever", Kinds.declarations()).newest();
        measured = Measured.cold(machine);
        List<Scenario> chain = Repertoire.of(Procedures.bundled(), machine).leadingTo("shot");
        chain.subList(0, chain.size() - 1).forEach(measured.run()::go);
        for (Action a : chain.get(chain.size() - 1).steps()) {
            measured.run().go(a);
            if (a instanceof Action.Mark m && m.name().equals("poured")) {
                break;
            }
        }
        ways = Ways.of(measured.owned(), new Media(measured.owned()));
    }

    private static Way way(String from, String to) {
        return ways.stream()
                .filter(w ->
                        w.from().component().equals(from) && w.to().component().equals(to))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void pressureAtTheTeeIsWhatTheGaugeShows() {
        double needle = measured.run().plant().read(measured.run().reading("pump gauge.needle")) / 1e5;
        assertThat(measured.pressure(way("gauge-tee", "pump-gauge").from())).isCloseTo(needle, within(0.3));
        assertThat(needle).isGreaterThan(4);
    }

    @Test
    void waterGetsHotterOnItsWayAndFlowsIntoTheCup() {
        assertThat(measured.temperature(way("tank", "tank-seat"))).isBetween(15.0, 30.0);
        assertThat(measured.temperature(way("group", "cup"))).isBetween(75.0, 97.0);
        assertThat(measured.flow(way("group", "cup"))).isGreaterThan(Measured.STILL);
        assertThat(measured.flow(way("tank", "tank-seat"))).isGreaterThan(Measured.STILL);
    }

    @Test
    void whatStandsStillHasNoTemperatureAndIsNotGivenOne() {
        assertThat(measured.temperature(way("safety-valve", "safety-vent"))).isNaN();
        assertThat(measured.flow(way("safety-valve", "safety-vent"))).isZero();
    }

    @Test
    void colouredMapsAreAsTidyAsPlainOnes() {
        MachineFile file = MachineFile.bundled("twin-boiler-lever", Kinds.declarations());
        for (Measured.Quantity q : Measured.Quantity.values()) {
            MachineMap map = MachineMap.of(measured.by(q), PartNumbers.of(file), MachineMap.WET);
            assertThat(Geometry.of(map)).isEmpty();
            Sheet shown = map.fitting(774, 537);
            assertThat(Geometry.of(shown)).isEmpty();
            assertThat(map.shown(shown, 774, 537)).isGreaterThanOrEqualTo(12);
            assertThat(map.svg(Theme.DARK)).contains(q == Measured.Quantity.PRESSURE ? " bar<" : " °C<");
        }
    }

    @Test
    void theScaleMeetsTheDesignAtItsPoints() {
        assertThat(Scale.PRESSURE.colour(0)).isEqualTo("#DAE5EC");
        assertThat(Scale.PRESSURE.colour(12)).isEqualTo("#112E58");
        assertThat(Scale.PRESSURE.thickness(12)).isEqualTo(5);
        assertThat(Scale.PRESSURE.thickness(0)).isEqualTo(1.5);
        assertThat(Scale.TEMPERATURE.colour(90)).isEqualTo("#CDB878");
        assertThat(Scale.TEMPERATURE.colour(200)).isEqualTo("#7A1E2C");
    }
}
