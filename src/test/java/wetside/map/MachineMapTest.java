package wetside.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.drawing.PartNumbers;
import wetside.drawing.Theme;
import wetside.kind.Kinds;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** Every bundled machine, in every revision and supply, in each set of layers. */
class MachineMapTest {
    private static final List<Set<Layer>> SETS = List.of(
            MachineMap.WET,
            MachineMap.WIRED,
            EnumSet.of(Layer.WATER),
            EnumSet.of(Layer.STEAM),
            EnumSet.of(Layer.DRAIN),
            EnumSet.of(Layer.CURRENT),
            EnumSet.of(Layer.SENSING),
            EnumSet.of(Layer.WATER, Layer.STEAM),
            EnumSet.allOf(Layer.class));

    private static final double ACROSS = 774;
    private static final double DOWN = 537;

    static Stream<Arguments> machines() {
        return MachineFile.names().stream().flatMap(name -> {
            MachineFile file = MachineFile.bundled(name, Kinds.declarations());
            return file.revisionNames().stream()
                    .map(r -> Arguments.of(name + " " + r, file.machine(r), PartNumbers.of(file)));
        });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void nothingOverlapsAndNoLineRunsThroughAnything(String name, Machine machine, PartNumbers numbers) {
        for (Set<Layer> layers : SETS) {
            MachineMap map = MachineMap.of(machine, numbers, layers);
            if (!map.isEmpty()) {
                assertThat(Geometry.of(map)).as("%s, %s", name, layers).isEmpty();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void everyKindHasASymbolWithAllItsPorts(String name, Machine machine, PartNumbers numbers) {
        for (Set<Layer> layers : List.of(MachineMap.WET, MachineMap.WIRED)) {
            assertThat(MachineMap.of(machine, numbers, layers).undrawn())
                    .as(name)
                    .isEmpty();
        }
    }

    /** A4 across or upright: small print, but print; most are at six points and more. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void isLegibleOnASheetOfA4(String name, Machine machine, PartNumbers numbers) {
        for (Set<Layer> layers : List.of(MachineMap.WET, MachineMap.WIRED)) {
            MachineMap map = MachineMap.of(machine, numbers, layers);
            assertThat(map.pointsOnPaper()).as("%s %s: points", name, layers).isGreaterThan(5.2);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void isWellFormedAndTheSameEveryTime(String name, Machine machine, PartNumbers numbers) throws Exception {
        for (Theme theme : Theme.values()) {
            String svg = MachineMap.of(machine, numbers, MachineMap.WET).svg(theme);
            assertThat(MachineMap.of(machine, numbers, MachineMap.WET).svg(theme))
                    .isEqualTo(svg);
            assertThat(DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .parse(new org.xml.sax.InputSource(new java.io.StringReader(svg)))
                            .getDocumentElement()
                            .getTagName())
                    .isEqualTo("svg");
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void everyPartHasItsNumberOnOneOfTheTwoDrawings(String name, Machine machine, PartNumbers numbers) {
        List<String> seen = new ArrayList<>();
        for (Set<Layer> layers : List.of(MachineMap.WET, MachineMap.WIRED)) {
            MachineMap map = MachineMap.of(machine, numbers, layers);
            map.sheet().parts().forEach(p -> {
                seen.add(p.glyph().part.component().id());
                p.glyph().part.inside().forEach(c -> seen.add(c.id()));
            });
            map.sheet().lines().forEach(l -> l.way().along().forEach(c -> seen.add(c.id())));
            assertThat(map.sheet().missing()).as(name).isEmpty();
        }
        Set<String> joined = new java.util.TreeSet<>();
        machine.joins().lines().forEach(l -> joined.addAll(List.of(l.from().component(), l.to().component())));
        machine.joins().wires().forEach(w -> joined.addAll(List.of(w.from().component(), w.to().component())));
        assertThat(seen).as(name).containsAll(joined);
    }

    /** As beside the cabinet on a desk of 1280 by 800, where the map is shown whole. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("machines")
    void numbersAreReadAtArmsLengthWhereTheMapIsShownWhole(String name, Machine machine, PartNumbers numbers) {
        for (Set<Layer> layers : List.of(MachineMap.WET, MachineMap.WIRED)) {
            MachineMap map = MachineMap.of(machine, numbers, layers);
            Sheet shown = map.fitting(ACROSS, DOWN);
            assertThat(map.shown(shown, ACROSS, DOWN))
                    .as("%s %s: px", name, layers)
                    .isGreaterThanOrEqualTo(shown.numbers() ? 12 : 11.5);
            assertThat(Geometry.of(shown)).as("%s, %s", name, layers).isEmpty();
            assertThat(shown.missing()).as("%s, %s", name, layers).hasSizeLessThan(2);
        }
    }

    @Test
    void emptyLayersAreTold() {
        MachineFile file = MachineFile.bundled("thermoblock", Kinds.declarations());
        assertThat(MachineMap.of(file.newest(), PartNumbers.of(file), EnumSet.noneOf(Layer.class))
                        .isEmpty())
                .isTrue();
    }
}
