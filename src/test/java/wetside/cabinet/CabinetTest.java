package wetside.cabinet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.drawing.Look;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Side;

/** Every machine that comes with Wetside, in each of its makings, from each side. */
class CabinetTest {
    record Case(String name, MachineFile file, Machine machine) {
        Cabinet cabinet() {
            return Cabinet.of(file, machine).orElseThrow();
        }

        @Override
        public String toString() {
            return name + ", " + machine.identity().making();
        }
    }

    static Stream<Case> machines() {
        return MachineFile.names().stream().flatMap(name -> {
            MachineFile file = MachineFile.bundled(name, Kinds.declarations());
            return file.machines().stream().map(m -> new Case(name, file, m));
        });
    }

    @ParameterizedTest
    @MethodSource("machines")
    void everyPartIsDrawnInsideTheCaseAndSeenSomewhere(Case one) {
        Cabinet cabinet = one.cabinet();
        Set<Fitted> numbered = new LinkedHashSet<>();
        CabinetDrawing drawing = new CabinetDrawing(cabinet, Optional.empty(), Set.of(), CabinetDrawing.Room.SCREEN);
        for (Side side : one.cabinet().sides()) {
            CabinetDrawing.Laid laid = drawing.lay(side, 0);
            Rect outline = laid.frame().outline();
            for (Fitted part : cabinet.parts()) {
                Rect box = laid.frame().box(part);
                assertThat(box.x()).as(part.name()).isGreaterThan(outline.x() - 1.5);
                assertThat(box.y()).as(part.name()).isGreaterThan(outline.y() - 1.5);
                assertThat(box.right()).as(part.name()).isLessThan(outline.right() + 1.5);
                assertThat(box.bottom()).as(part.name()).isLessThan(outline.bottom() + 1.5);
            }
            numbered.addAll(drawing.numbered(laid.frame().view()));
        }
        List<String> withPlace = one.machine().components().stream()
                .filter(c -> !c.place().xyz().isEmpty())
                .map(Component::id)
                .toList();
        assertThat(numbered.stream().map(Fitted::id)).as("numbered in a view").containsAll(withPlace);
    }

    @ParameterizedTest
    @MethodSource("machines")
    void everyPanelHidesWhatIsBehindIt(Case one) {
        Cabinet cabinet = one.cabinet();
        for (Machine.Panel panel : one.machine().identity().panels()) {
            List<String> said = one.machine().components().stream()
                    .filter(c -> c.place().behind().contains(panel.id()))
                    .map(Component::id)
                    .toList();
            assertThat(cabinet.hiddenBy(panel).stream().map(Fitted::id))
                    .as("behind the " + panel.name() + " with a place")
                    .containsExactlyElementsOf(said);
            assertThat(panel.sides()).as(panel.name() + " closes a side").isNotEmpty();
            for (Fitted part : cabinet.hiddenBy(panel)) {
                assertThat(panel.sides().stream()
                                .map(side -> cabinet.from(side).of(part).manner()))
                        .as(part.name() + " behind the " + panel.name())
                        .containsAnyOf(View.Manner.PLAIN, View.Manner.BEHIND);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("machines")
    void numbersAndNamesKeepApart(Case one) {
        CabinetDrawing drawing =
                new CabinetDrawing(one.cabinet(), Optional.empty(), Set.of(), CabinetDrawing.Room.SHEET);
        List<String> crossings = new ArrayList<>();
        for (Side side : one.cabinet().sides()) {
            CabinetDrawing.Laid laid = drawing.lay(side, 0);
            List<Map.Entry<Fitted, Callouts.Callout>> all =
                    List.copyOf(laid.callouts().entrySet());
            for (int i = 0; i < all.size(); i++) {
                Callouts.Callout a = all.get(i).getValue();
                assertThat(laid.frame().outline().has(a.x(), a.y()))
                        .as("numbers stand outside")
                        .isFalse();
                assertThat(a.x() - Callouts.RADIUS).isPositive();
                assertThat(a.y() - Callouts.RADIUS).as("below the heading").isGreaterThan(30);
                assertThat(a.y() + Callouts.RADIUS).isLessThan(laid.height());
                for (int k = 0; k < all.size(); k++) {
                    if (i != k) {
                        apart(
                                all.get(i).getKey() + " and " + all.get(k).getKey(),
                                a,
                                all.get(k).getValue());
                    }
                    if (i < k && cross(a, all.get(k).getValue())) {
                        crossings.add(side + ": " + all.get(i).getKey().name() + " and "
                                + all.get(k).getKey().name());
                    }
                }
            }
            legendKeepsApart(laid);
        }
        assertThat(crossings).as("leaders that cross").isEmpty();
    }

    private static void apart(String who, Callouts.Callout a, Callouts.Callout b) {
        assertThat(Math.hypot(a.x() - b.x(), a.y() - b.y())).as(who).isGreaterThan(2 * Callouts.RADIUS + 1);
        assertThat(Callouts.distance(
                        new double[] {b.x(), b.y()}, new double[] {a.x(), a.y()}, new double[] {a.partX(), a.partY()}))
                .as("leader of " + who + " and the other's number")
                .isGreaterThan(Callouts.RADIUS);
    }

    private static boolean cross(Callouts.Callout a, Callouts.Callout b) {
        return Callouts.cross(
                new double[] {a.x(), a.y()},
                new double[] {a.partX(), a.partY()},
                new double[] {b.x(), b.y()},
                new double[] {b.partX(), b.partY()});
    }

    private static void legendKeepsApart(CabinetDrawing.Laid laid) {
        double right = laid.callouts().values().stream()
                .mapToDouble(c -> c.x() + Callouts.RADIUS)
                .max()
                .orElse(0);
        double last = 0;
        for (CabinetDrawing.Line line : laid.legend()) {
            assertThat(line.x()).isGreaterThan(right);
            assertThat(line.y()).isGreaterThanOrEqualTo(last + Look.NAME);
            assertThat(line.x() + 28 + Look.width(line.words(), Look.NAME)).isLessThan(laid.width());
            assertThat(line.y()).isLessThan(laid.height());
            last = line.y();
        }
    }
}
