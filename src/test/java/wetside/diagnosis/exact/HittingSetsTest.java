package wetside.diagnosis.exact;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class HittingSetsTest {
    @Test
    void orderOfConflictsDoesNotMatterAndEverySetIsMinimal() {
        Random random = new Random(3);
        for (int round = 0; round < 200; round++) {
            List<Set<String>> conflicts = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                Set<String> conflict = new TreeSet<>();
                while (conflict.size() < 1 + i % 3) {
                    conflict.add("p" + random.nextInt(6));
                }
                conflicts.add(conflict);
            }
            Set<Set<String>> found = HittingSets.of(conflicts);
            Collections.shuffle(conflicts, random);
            assertThat(new HashSet<>(HittingSets.of(conflicts))).isEqualTo(new HashSet<>(found));
            assertThat(new HashSet<>(found)).isEqualTo(bySearch(conflicts));
        }
    }

    private static Set<Set<String>> bySearch(List<Set<String>> conflicts) {
        Set<Set<String>> hitting = new HashSet<>();
        for (int bits = 0; bits < 64; bits++) {
            Set<String> set = new TreeSet<>();
            for (int i = 0; i < 6; i++) {
                if ((bits & 1 << i) != 0) {
                    set.add("p" + i);
                }
            }
            if (conflicts.stream().allMatch(c -> c.stream().anyMatch(set::contains))) {
                hitting.add(set);
            }
        }
        hitting.removeIf(set -> hitting.stream().anyMatch(o -> o.size() < set.size() && set.containsAll(o)));
        return hitting;
    }

    @Test
    void withoutConflictsNothingNeedBeBad() {
        assertThat(HittingSets.of(List.of())).containsExactly(Set.of());
        assertThat(Conflicts.of(Set.of("a", "b"), well -> true).diagnoses()).containsExactly(Set.of());
    }
}
