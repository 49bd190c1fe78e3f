package wetside.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wetside.kind.Kinds;
import wetside.machine.MachineFile;

/** What lines carry, as a technician would say, found without being told. */
class MediaTest {
    @ParameterizedTest
    @CsvSource({
        "twin-boiler-lever, pump, gauge-tee, WATER",
        "twin-boiler-lever, steam-boiler, steam-tap, STEAM",
        "twin-boiler-lever, steam-boiler, safety-valve, STEAM",
        "twin-boiler-lever, safety-valve, safety-vent, DRAIN",
        "twin-boiler-lever, over-pressure, drain-tee, DRAIN",
        "twin-boiler-lever, group, group-drain, DRAIN",
        "twin-boiler-lever, group, cup, WATER",
        "twin-boiler-lever, steam-boiler, water-tap, WATER",
        "twin-boiler-lever, steam-boiler, steam-gauge, SENSING",
        "twin-boiler-lever, gauge-tee, pump-gauge, SENSING",
        "twin-boiler-lever, steam-boiler, probe, SENSING",
        "twin-boiler-lever, brew-boiler, group, WATER",
        "twin-boiler-lever, board, motor, CURRENT",
        "twin-boiler-lever, brew-controller, brew-relay, SENSING",
        "twin-boiler-lever, brew-controller, brew-sensor, SENSING",
        "twin-boiler-lever, board, probe, SENSING",
        "twin-boiler-lever, dc-supply, board, CURRENT",
        "single-boiler, boiler, steam-tap, STEAM",
        "single-boiler, over-pressure, tank, WATER",
        "thermoblock, outlet-tee, steam-tap, STEAM",
        "exchanger-two-group, steam-boiler, steam-tee, SENSING",
    })
    void isWhatATechnicianWouldSay(String machine, String from, String to, Layer expected) {
        Optional<Way> way = way(machine, from, to);
        assertThat(way).as("%s to %s", from, to).isPresent();
        assertThat(way.orElseThrow().layer()).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({
        "twin-boiler-lever, brew-boiler, group, upper, true",
        "twin-boiler-lever, group, brew-boiler, lower, true",
        "twin-boiler-lever, over-pressure, drain-tee, out, true",
        "twin-boiler-lever, tank, tank-seat, out, true",
    })
    void flowsAsItIsMeantTo(String machine, String from, String to, String port, boolean forward) {
        Way way = ways(machine).stream()
                .filter(w ->
                        w.from().component().equals(from) && w.to().component().equals(to))
                .filter(w -> w.from().port().equals(port) || w.to().port().equals(port))
                .findFirst()
                .orElse(null);
        assertThat(way != null).isEqualTo(forward);
    }

    private static List<Way> ways(String machine) {
        Owned owned =
                new Owned(MachineFile.bundled(machine, Kinds.declarations()).newest());
        return Ways.of(owned, new Media(owned));
    }

    private static Optional<Way> way(String machine, String a, String b) {
        return ways(machine).stream()
                .filter(w -> w.from().component().equals(a)
                                && w.to().component().equals(b)
                        || w.from().component().equals(b) && w.to().component().equals(a))
                .findFirst();
    }
}
