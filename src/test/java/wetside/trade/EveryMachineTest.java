package wetside.trade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.casework.Casework;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.plant.Balance;
import wetside.plant.Plant;
import wetside.procedure.Procedure.Who;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;
import wetside.run.Run;
import wetside.run.Scenario;

/** What holds for every machine that comes with Wetside, in each revision and for each supply. */
class EveryMachineTest {
    private static final Procedures ALL = Procedures.bundled();

    static Stream<Arguments> machines() {
        return MachineFile.names().stream()
                .flatMap(name -> MachineFile.bundled(name, Kinds.declarations()).machines().stream())
                .map(m -> Arguments.of(m.identity().id() + ", " + m.identity().making(), m));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void hasFaultsAndProceduresToTellThemApart(String name, Machine machine) {
        Casework casework = Casework.of(machine, ALL);
        assertThat(casework.candidates()).hasSizeGreaterThan(30);
        assertThat(casework.askings()).hasSizeGreaterThan(25);
        assertThat(casework.askings()).anyMatch(a -> a.procedure().who() == Who.OWNER);
    }

    /** Each routine from the end of the one it follows, as the library runs them. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void keepsItsBooksThroughEveryRoutine(String name, Machine machine) {
        Repertoire repertoire = Repertoire.of(ALL, machine);
        Run run = new Run(Plant.of(Kinds.blueprint(machine)));
        int done = follow("", repertoire.routines(), run, run.plant().save());
        assertThat(done).isEqualTo(repertoire.routines().size()).isGreaterThan(5);
    }

    private static int follow(String after, Map<String, Scenario> routines, Run run, Plant.Snapshot from) {
        int done = 0;
        for (Scenario s : routines.values()) {
            if (s.from().orElse("").equals(after)) {
                run.plant().restore(from);
                run.begin();
                run.go(s);
                closes(s.name(), run.plant().balance());
                assertThat(run.stepper().unsolved()).as(s.name()).isZero();
                done += 1 + follow(s.name(), routines, run, run.plant().save());
            }
        }
        return done;
    }

    /** Air below half a milligram (of some grams) is let go: the last of it leaves a vessel by a floor, not by a flow. */
    private static void closes(String routine, Balance b) {
        assertThat(b.waterResidual()).as("water, %s", routine).isBetween(-1e-7, 1e-7);
        assertThat(b.airResidual()).as("air, %s", routine).isBetween(-5e-7, 5e-7);
        assertThat(b.energyResidual()).as("energy, %s", routine).isBetween(-1.0, 1.0);
        assertThat(b.chargeResidual()).as("charge, %s", routine).isBetween(-1e-6, 1e-6);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void partNumbersNameOnePart(String name, Machine machine) {
        Map<String, Set<String>> kinds = machine.components().stream()
                .filter(c -> !c.place().part().isEmpty())
                .collect(Collectors.groupingBy(
                        c -> c.place().part(), Collectors.mapping(c -> c.kind().name(), Collectors.toSet())));
        assertThat(kinds).allSatisfy((part, of) -> assertThat(of).as(part).hasSize(1));
    }

    @Test
    void revisionsDiffer() {
        for (String name : MachineFile.names()) {
            MachineFile file = MachineFile.bundled(name, Kinds.declarations());
            assertThat(file.revisionNames()).as(name).hasSize(2);
            List<Machine> machines = List.copyOf(file.machines());
            Set<String> seen = new HashSet<>();
            machines.forEach(m -> assertThat(seen.add(described(m)))
                    .as(name + ", " + m.identity().making())
                    .isTrue());
        }
    }

    private static String described(Machine m) {
        StringBuilder all = new StringBuilder();
        m.components().forEach(c -> {
            all.append(c.id()).append(c.place());
            for (int i = 0; i < c.kind().parameters().size(); i++) {
                all.append(c.value(i)).append(' ');
            }
        });
        return all.append(m.joins()).toString();
    }
}
