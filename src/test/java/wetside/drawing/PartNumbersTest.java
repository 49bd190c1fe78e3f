package wetside.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.kind.Kinds;
import wetside.machine.MachineFile;

class PartNumbersTest {
    static List<String> machines() {
        return MachineFile.names();
    }

    @ParameterizedTest
    @MethodSource("machines")
    void countsFromOneWithoutGapsInTheOrderOfTheFile(String name) {
        MachineFile file = MachineFile.bundled(name, Kinds.declarations());
        List<Integer> seen = new ArrayList<>();
        file.newest()
                .components()
                .forEach(c -> PartNumbers.of(file.newest()).of(c.id()).ifPresent(seen::add));
        for (int i = 0; i < seen.size(); i++) {
            assertThat(seen.get(i)).isEqualTo(i + 1);
        }
        assertThat(new HashSet<>(seen)).hasSameSizeAs(seen);
    }

    @ParameterizedTest
    @MethodSource("machines")
    void aPartKeepsItsNumberFromRevisionToRevision(String name) {
        MachineFile file = MachineFile.bundled(name, Kinds.declarations());
        PartNumbers numbers = PartNumbers.of(file);
        file.revisionNames()
                .forEach(r -> file.machine(r).components().stream()
                        .filter(c -> !c.kind().ports().isEmpty())
                        .forEach(c -> assertThat(numbers.of(c.id())).as(c.id()).isPresent()));
        assertThat(new HashSet<>(numbers.all().values())).hasSize(numbers.all().size());
    }

    @Test
    void theRoomIsNoPart() {
        MachineFile file = MachineFile.bundled("twin-boiler-lever", Kinds.declarations());
        assertThat(PartNumbers.of(file).of("room")).isEmpty();
        assertThat(PartNumbers.of(file).of("mains")).hasValue(1);
    }
}
