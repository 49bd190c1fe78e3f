package wetside.random;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wetside.drawing.PartNumbers;
import wetside.machine.MachineFile;
import wetside.map.Geometry;
import wetside.map.Layer;
import wetside.map.MachineMap;

/** Whatever a valid file says, its maps can be looked at. More: {@code -Drandom.maps=500}; others: {@code -Drandom.first=1000}. */
class RandomMapsTest {
    private static final long FIRST = Long.getLong("random.first", 1);
    private static final int COUNT = Integer.getInteger("random.maps", 20);
    private static final List<Set<Layer>> SETS =
            List.of(MachineMap.WET, MachineMap.WIRED, EnumSet.of(Layer.WATER), EnumSet.allOf(Layer.class));

    @Test
    void nothingOverlapsAndNoLineRunsThroughAnything() {
        List<String> failures = new ArrayList<>();
        for (long seed = FIRST; seed < FIRST + COUNT; seed++) {
            MachineFile file = RandomMachine.file(seed);
            for (Set<Layer> layers : SETS) {
                MachineMap map = MachineMap.of(file.newest(), PartNumbers.of(file), layers);
                List<String> wrong = map.isEmpty() ? List.of() : Geometry.of(map);
                if (!wrong.isEmpty()) {
                    failures.add("seed " + seed + ", " + layers + ": " + wrong);
                }
            }
        }
        assertThat(failures).isEmpty();
    }
}
