package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Spread;

/** Walks over all kinds: what each must have whatever it is. */
class KindsTest {
    /** Kinds that are only there to be joined to; weather does not break. */
    private static final Set<String> WITHOUT_FAULTS = Set.of("surroundings");

    static Stream<Kind> kinds() {
        return Kinds.all().stream();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void goesWrongInSomeWay(Kind kind) {
        String name = kind.declaration().name();
        assertThat(kind.faults().isEmpty()).as("%s has no faults", name).isEqualTo(WITHOUT_FAULTS.contains(name));
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void hasWordsForEachFaultAndNoOther(Kind kind) {
        Words words = Words.of(kind.declaration().name());
        assertThat(words.faults().keySet())
                .containsExactlyInAnyOrderElementsOf(
                        kind.faults().stream().map(Fault::name).toList());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void saysWhatProvesARepair(Kind kind) {
        Words.of(kind.declaration().name()).faults().forEach((name, words) -> {
            assertThat(words.prove()).as(name).isNotEmpty();
            assertThat(words.remedy().works()).as(name).isBetween(0.5, 1.0);
            assertThat(words.remedy().minutes()).as(name).isBetween(0.5, 240.0);
        });
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void usualValuesMakeSense(Kind kind) {
        for (Parameter p : kind.declaration().parameters()) {
            if (!p.mustBeGiven()) {
                assertThat(p.usual())
                        .as("%s of %s", p.name(), kind.declaration().name())
                        .isBetween(p.min(), p.max());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void aFaultMovesWhatItSaysAndNothingElse(Kind kind) {
        Component whole = example(kind.declaration());
        for (Fault fault : kind.faults()) {
            List<Integer> said = fault.shifts().stream()
                    .map(s -> kind.declaration().indexOf(s.parameter()))
                    .toList();
            for (double severity : new double[] {0, 0.5, 1}) {
                Component broken = fault.on(whole, severity);
                for (int i = 0; i < kind.declaration().parameters().size(); i++) {
                    String what = fault.name() + " at " + severity + ": "
                            + kind.declaration().parameters().get(i).name();
                    if (said.contains(i)) {
                        assertThat(broken.value(i)).as(what).isNotCloseTo(whole.value(i), within(1e-12));
                    } else {
                        assertThat(broken.value(i)).as(what).isEqualTo(whole.value(i));
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void faultsStayInsideWhatAPartCanBe(Kind kind) {
        Component whole = example(kind.declaration());
        for (Fault fault : kind.faults()) {
            assertThat(fault.rate()).as(fault.name()).isPositive();
            for (Fault.Shift s : fault.shifts()) {
                double from = s.apply(whole.get(s.parameter()), 0);
                double to = s.apply(whole.get(s.parameter()), 1);
                Parameter p = s.parameter();
                assertThat(List.of(from, to))
                        .as("%s of %s: %s", fault.name(), kind.declaration().name(), p.name())
                        .allMatch(v -> v >= p.min() * (1 - 1e-12) - 1e-15 && v <= p.max() * (1 + 1e-12));
            }
        }
    }

    @Test
    void namesAreUnique() {
        assertThat(Kinds.declarations()).extracting(Declaration::name).doesNotHaveDuplicates();
        for (Kind kind : Kinds.all()) {
            assertThat(kind.faults()).extracting(Fault::name).doesNotHaveDuplicates();
            assertThat(kind.declaration().ports()).extracting(p -> p.name()).doesNotHaveDuplicates();
            assertThat(kind.declaration().parameters())
                    .extracting(Parameter::name)
                    .doesNotHaveDuplicates();
        }
    }

    /** A component of usual values; what a file must give lies in the middle of its range. */
    private static Component example(Declaration kind) {
        double[] values = kind.parameters().stream()
                .mapToDouble(p -> p.mustBeGiven() ? Math.sqrt(p.min() * p.max()) : p.usual())
                .toArray();
        Spread[] spreads = new Spread[values.length];
        Arrays.fill(spreads, Spread.EXACT);
        Component.Place place = new Component.Place("example", List.of(), List.of(), "", "", List.of());
        return new Component("example", kind, values, spreads, place);
    }
}
