package wetside.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Plant;

/** What a plumbed-in machine with a button and a brew valve adds finds what a technician expects. Common practice, no source. */
class PlumbedProceduresTest {
    private static final Machine WHOLE =
            MachineFile.bundled("twin-boiler-saturated", Kinds.declarations()).newest();
    private static final Trial ALL = new Trial(Procedures.bundled(), WHOLE);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "                                              | splash when brewing stops                | yes",
                "brew-valve:exhaust blocked=1                  | splash when brewing stops                | no",
                "                                              | brew valve hums                          | hums",
                "brew-valve:coil open                          | brew valve hums                          | silent",
                "                                              | brew button, mains contact, let out      | open",
                "brew-button:mains contact welded              | brew button, mains contact, let out      | closed",
                "                                              | brew button, mains contact, pressed      | closed",
                "brew-button:mains contact burnt               | brew button, mains contact, pressed      | open",
                "brew-button:signal contact burnt              | brew button, signal contact, pressed     | open",
                "brew-button:signal contact burnt              | pump motor sound while brewing           | silent",
                "brew-button:jammed in                         | pump sound after switching on            | runs",
                "brew-valve:seat leaks to the group            | drips from the group between shots       | runs thinly",
                "regulator:diaphragm leaks                     | leak at the pressure regulator           | runs",
                "group:flange gasket leaks                     | leak at the group's flange               | runs",
                "pre-heater:flange leaks                       | leak at the pre-heater                   | runs",
                "cold-tee:cracked                              | leak at the cold water tee               | runs",
                "water-tap:non-return to the boiler leaks      | water from the drain tube after a night  | runs thinly",
            })
    void finds(String fault, String procedure, String word) {
        Machine machine = fault == null ? WHOLE : Installed.broken(WHOLE, fault);
        assertThat(read(machine, procedure)).isEqualTo(word);
    }

    private static String read(Machine machine, String id) {
        double[] values = ALL.reading(List.of(id)).values(machine);
        int at = IntStream.range(0, values.length)
                .filter(i -> ALL.procedures().get(i).id().equals(id))
                .findFirst()
                .orElseThrow();
        Procedure p = ALL.procedures().get(at);
        if (!p.answer().isNumber()) {
            return p.answer().words().get((int) values[at]).word();
        }
        return Trial.reading(p, Plant.of(Kinds.blueprint(machine))).options().get((int) values[at]);
    }
}
