package wetside.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.Installation.Feed;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Plant;

/** All procedures on the twin boiler: each can be done there, and finds what a technician expects. Common practice, no source. */
class TwinBoilerProceduresTest {
    private static final MachineFile FILE = MachineFile.bundled("twin-boiler-lever", Kinds.declarations());
    private static final Procedures ALL = Procedures.bundled();
    private static final Map<Feed, Map<String, Object>> HEALTHY = new HashMap<>();

    @Test
    void everyProcedureCanBeDoneOnSomeMachine() {
        Set<String> possible = MachineFile.names().stream()
                .map(name -> MachineFile.bundled(name, Kinds.declarations()))
                .flatMap(file -> file.machines().stream())
                .flatMap(machine -> Repertoire.of(ALL, machine).procedures().stream())
                .map(Procedure::id)
                .collect(Collectors.toSet());
        assertThat(ALL.all())
                .extracting(Procedure::id)
                .allMatch(id -> possible.stream().anyMatch(p -> p.equals(id) || p.startsWith(id + ", ")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void nearlyAllCanBeDoneOnTheTwinBoiler(String revision) {
        assertThat(new Trial(ALL, FILE.machine(revision)).procedures()).hasSizeGreaterThan(170);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TANK  | source selector points to                   | tank",
                "MAINS | source selector points to                   | mains",
                "TANK  | message after switching on                  | ready",
                "TANK  | message with the tank empty                 | tank empty",
                "TANK  | message with the tank filled and put back   | ready",
                "TANK  | brew controller lamp while heating          | steady",
                "TANK  | brew controller lamp while holding          | flashing",
                "TANK  | steam controller lamp while holding         | flashing",
                "TANK  | steam from the drain tube while heating     | plume",
                "TANK  | steam from the drain tube, hot              | none",
                "TANK  | group to the touch                          | hot",
                "TANK  | pump runs on its own                        | never",
                "TANK  | pressure rises                              | at once",
                "TANK  | pump motor sound while brewing          | runs",
                "TANK  | pump stops after brewing              | silent",
                "TANK  | water from the drain tube with the blind disc | dry",
                "TANK  | steam from the wand                         | jet",
                "TANK  | pump refills after hot water                | a few seconds",
                "TANK  | air into the wand when cold                 | none",
                "TANK  | water from the group, unplugged, lever up   | dry",
                "MAINS | water from the group, unplugged, lever up   | runs",
                "TANK  | brew switch, lever up                       | closed",
                "TANK  | brew switch, lever down                     | open",
                "TANK  | brew relay load side                        | open",
                "TANK  | probe resistance, wet                       | a few kΩ",
                "TANK  | probe resistance, level let down            | open",
                "TANK  | brew line limit, button pressed             | no click",
                "TANK  | insulation, cold                            | above 1 MΩ",
                "TANK  | protective conductor resistance             | continuity",
            })
    void aMachineThatWorksAnswers(Feed feed, String procedure, String word) {
        assertThat(healthy(feed).get(procedure)).isEqualTo(word);
    }

    @ParameterizedTest
    @CsvSource({
        "TANK, blind-disc pressure, 8.3e5, 8.8e5",
        "MAINS, blind-disc pressure, 8.8e5, 9.3e5",
        "TANK, 'pump gauge at rest, hot', 0, 0.1e5",
        "MAINS, 'pump gauge at rest, cold', 1.8e5, 2.1e5",
        "TANK, flow in 10 s, 0.05, 0.10",
        "TANK, brew warm-up time, 120, 360",
        "TANK, steam warm-up time, 240, 600",
        "TANK, 'steam gauge, hot', 1.0e5, 1.5e5",
        "TANK, group temperature, 348, 364",
        "TANK, steam recovery, 5, 60",
        "TANK, 'brew sensor resistance, cold', 10e3, 14e3",
        "TANK, brew element resistance, 43, 45",
        "TANK, power drawn while heating, 2400, 2900",
    })
    void aMachineThatWorksReads(Feed feed, String procedure, double least, double most) {
        assertThat((Double) healthy(feed).get(procedure)).isBetween(least, most);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "coupling:broken                        | TANK  | pump shaft while brewing              | still",
                "tank:float magnet upside down          | TANK  | message after switching on                | tank empty",
                "tank:float stuck down                  | TANK  | tank sensor, float lifted                 | closed",
                "tank-sensor:stuck open                 | TANK  | tank sensor, magnet held to it            | open",
                "tank:cracked                           | TANK  | water under the machine, switched off     | runs",
                "strainer:clogged                       | TANK  | pump noise while brewing              | rattles",
                "motor:capacitor weak                   | TANK  | pump starts                               | hums",
                "motor:winding open                     | TANK  | pump motor sound while brewing        | silent",
                "over-pressure:set low                  | TANK  | water from the drain tube with the blind disc | runs",
                "breaker:stuck shut                     | TANK  | air into the wand when cold               | air hisses in",
                "breaker:leaks when seated              | TANK  | steam from the drain tube, hot            | plume",
                "drain-tube:slipped off                 | TANK  | steam from the machine while heating      | plume",
                "brew-sensor:open                       | TANK  | brew display message                      | sensor open",
                "brew-limit-line:tripped                | TANK  | brew line limit, button pressed           | clicks",
                "brew-limit-line:tripped                | TANK  | brew display message                      | none",
                "steam-relay:stuck on                   | TANK  | steam relay load side                     | shorted",
                "board:pump output stuck on             | TANK  | brew relay load side                      | open",
                "probe:bridged by crust or dirt         | TANK  | probe resistance, level let down          | a few kΩ",
                "probe:scaled                           | TANK  | message after switching on                | filling steam boiler",
                "board:probe input always wet           | TANK  | filling starts with the probe wire off    | ready",
                "group:brew valve seal worn             | MAINS | drips from the group between shots        | runs thinly",
                "cock:left shut                         | MAINS | mains cock stands                         | shut",
                "selector:set to the other source       | MAINS | source selector points to                 | tank",
                "selector:leaks between the two         | MAINS | tank fills by itself                      | yes",
                "lever:switch tab bent away             | TANK  | brew switch, pressed by hand              | closed",
                "brew-switch:never closes               | TANK  | switch tab with the lever up              | presses it",
                "earth-lead:off its stud                | TANK  | protective conductor resistance           | open",
                "cord:earth conductor broken            | TANK  | earth lead resistance                     | continuity",
                "steam-element:leaks to earth           | TANK  | brew element insulation, cold             | above 1 MΩ",
            })
    void aFaultIsFound(String fault, Feed feed, String procedure, String word) {
        assertThat(readings(Installed.broken(machine(feed), fault)).get(procedure))
                .isEqualTo(word);
    }

    private static Map<String, Object> healthy(Feed feed) {
        return HEALTHY.computeIfAbsent(feed, f -> readings(machine(f)));
    }

    private static Machine machine(Feed feed) {
        return Installed.of(FILE.newest(), Installation.UNKNOWN.with(feed)).machine();
    }

    /** Words for words, SI for numbers. */
    private static Map<String, Object> readings(Machine machine) {
        Trial trial = new Trial(ALL, machine);
        double[] values = trial.values(machine);
        Plant plant = Plant.of(Kinds.blueprint(machine));
        Map<String, Object> found = new HashMap<>();
        IntStream.range(0, values.length).forEach(i -> {
            Procedure p = trial.procedures().get(i);
            found.put(p.id(), read(p, values[i], plant));
        });
        return found;
    }

    private static Object read(Procedure p, double value, Plant plant) {
        if (!p.answer().isNumber()) {
            return p.answer().words().get((int) value).word();
        }
        boolean named =
                p.reading().channel().isPresent() && Trial.reading(p, plant).isChoice();
        return named ? Trial.reading(p, plant).options().get((int) value) : (Object) value;
    }
}
