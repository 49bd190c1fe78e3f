package wetside.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.cabinet.Cabinet;
import wetside.cabinet.CabinetDrawing;
import wetside.cabinet.Fitted;
import wetside.kind.Kinds;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Side;

/** What a card says without the twin, of every part of every machine. */
class EveryPartTest {
    static List<String> machines() {
        return MachineFile.names();
    }

    @ParameterizedTest
    @MethodSource("machines")
    void makingsSettingsAndWords(String name) {
        MachineFile file = MachineFile.bundled(name, Kinds.declarations());
        Machine machine = file.newest();
        for (Component c : machine.components()) {
            assertThat(Makings.of(file, machine, c.id()))
                    .as(c.id())
                    .hasSize(file.machines().size())
                    .filteredOn(Card.Making::own)
                    .singleElement()
                    .satisfies(own -> assertThat(own.differs()).isEmpty());
            assertThat(Settings.of(c)).as(c.id()).allSatisfy(s -> {
                assertThat(s.value()).doesNotContain("NaN");
                assertThat(s.source()).isIn("by the machine file", "usual for its kind");
            });
            assertThat(Words.of(c.kind().name()).whatFor()).as(c.id()).isNotBlank();
        }
    }

    @ParameterizedTest
    @MethodSource("machines")
    void everyPartIsPointedOutFromTwoSidesAndToldFromAnother(String name) {
        MachineFile file = MachineFile.bundled(name, Kinds.declarations());
        Cabinet cabinet = Cabinet.of(file, file.newest()).orElseThrow();
        for (Fitted part : cabinet.parts()) {
            List<Side> sides = CardSheet.sides(cabinet, part);
            assertThat(sides.get(0).axis())
                    .as(part.name())
                    .isNotEqualTo(sides.get(1).axis());
            CabinetDrawing drawing =
                    new CabinetDrawing(cabinet, Optional.of(part), Set.of(part.id()), CabinetDrawing.Room.HALF);
            String svg = drawing.bare(sides.get(0));
            assertThat(svg).as(part.name()).contains(">" + part.number() + "</text>");
            LookAlike.of(part, cabinet).ifPresent(other -> {
                assertThat(other.other()).as(part.name()).isNotEqualTo(part);
                assertThat(other.differs())
                        .as(part.name() + " and " + other.other().name())
                        .isNotEmpty();
            });
        }
    }
}
