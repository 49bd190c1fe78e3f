package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.HeatPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Machine;
import wetside.machine.Parameter;
import wetside.machine.Port;
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

    /** Safety rule, common practice, no source. */
    @ParameterizedTest
    @MethodSource("kinds")
    void whoeverRepairsIsToldWhatCanHurt(Kind kind) {
        Words.of(kind.declaration().name()).faults().forEach((name, words) -> {
            if (!words.remedy().who().equals("owner")) {
                assertThat(words.remedy().caution()).as(name).isNotBlank();
            }
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
                double from = s.apply(whole.get(s.parameter()), whole.get(s.parameter()), 0);
                double to = s.apply(whole.get(s.parameter()), whole.get(s.parameter()), 1);
                Parameter p = s.parameter();
                assertThat(List.of(from, to))
                        .as("%s of %s: %s", fault.name(), kind.declaration().name(), p.name())
                        .allMatch(v -> v >= p.min() * (1 - 1e-12) - 1e-15 && v <= p.max() * (1 + 1e-12));
            }
        }
    }

    /** A part alone, so that no neighbour stands in for a port that was forgotten. */
    @ParameterizedTest
    @MethodSource("kinds")
    void usesEveryPortItDeclares(Kind kind) {
        assumeThat(kind).isNotInstanceOfAny(Boiler.class, LevelProbe.class, SightGlass.class, HeatExchangerTube.class);
        Component part = example(kind.declaration());
        Machine.Identity alone = new Machine.Identity("bench", "bench", "first", "", List.of());
        Machine.Joins none = new Machine.Joins(List.of(), List.of(), List.of(), List.of());
        Blueprint b = new Blueprint(new Machine(alone, List.of(part), none));
        kind.build(part, b);
        for (Port port : kind.declaration().ports()) {
            assertThat(isUsed(part, port, b))
                    .as("%s of %s", port.name(), part.kind().name())
                    .isTrue();
        }
    }

    private static boolean isUsed(Component part, Port port, Blueprint b) {
        return switch (port.medium()) {
            case FLUID -> fluidNodes(b.fluid()).contains(b.node(part, port.name()));
            case CURRENT -> terminals(b.current()).contains(b.terminal(part, port.name()));
            case HEAT -> heatNodes(b.heat()).contains(b.heatNode(part, port.name()));
            case MOTION -> b.slots().find(part.id() + "." + port.name() + ".motion") >= 0;
        };
    }

    private static Set<Integer> fluidNodes(FluidPlan plan) {
        Set<Integer> used = new HashSet<>();
        plan.branches().forEach(branch -> used.addAll(List.of(branch.from(), branch.to())));
        plan.loops().forEach(loop -> used.addAll(List.of(loop.upper(), loop.lower())));
        plan.openings().forEach(opening -> used.add(opening.node()));
        plan.outlets().forEach(outlet -> used.add(outlet.node()));
        plan.pressures().forEach(pressure -> used.add(pressure.node()));
        return used;
    }

    private static Set<Integer> terminals(CurrentPlan plan) {
        Set<Integer> used = new HashSet<>();
        plan.elements().forEach(element -> used.addAll(List.of(element.from(), element.to())));
        plan.elements().forEach(element -> {
            if (element instanceof CurrentPlan.Driven driven) {
                used.addAll(List.of(driven.in(), driven.ret()));
            } else if (element instanceof CurrentPlan.Supply supply) {
                used.addAll(List.of(supply.in(), supply.ret()));
            }
        });
        plan.probes().forEach(probe -> {
            if (probe instanceof CurrentPlan.Seen seen) {
                used.addAll(List.of(seen.from(), seen.to()));
            } else if (probe instanceof CurrentPlan.Voltage voltage) {
                used.addAll(List.of(voltage.from(), voltage.to()));
            } else if (probe instanceof CurrentPlan.Share share) {
                used.addAll(List.of(share.from(), share.to()));
            }
        });
        return used;
    }

    private static Set<Integer> heatNodes(HeatPlan plan) {
        Set<Integer> used = new HashSet<>();
        plan.capacities().forEach(capacity -> used.add(capacity.node()));
        plan.conductances().forEach(way -> used.addAll(List.of(way.from(), way.to())));
        plan.immersed().forEach(metal -> used.addAll(List.of(metal.metal(), metal.content())));
        plan.temperatures().forEach(slot -> used.add(slot.node()));
        plan.sources().forEach(source -> used.add(source.node()));
        return used;
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
        Component.Place place = new Component.Place("example", List.of(), List.of(), List.of(), "", "", List.of(), "");
        return new Component("example", kind, values, spreads, place);
    }
}
