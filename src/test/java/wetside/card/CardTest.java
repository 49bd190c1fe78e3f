package wetside.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import wetside.cabinet.Cabinet;
import wetside.casework.Installed;
import wetside.diagnosis.Who;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.page.Block;
import wetside.page.HtmlSheet;
import wetside.page.Sheet;
import wetside.procedure.Procedures;

/** Cards of the lever machine: what is on them is the twin's and the file's. */
class CardTest {
    private static final MachineFile FILE = MachineFile.bundled("twin-boiler-lever", Kinds.declarations());
    private static final int DRAWS = 4;

    private static Cards cards(String revision) {
        Machine machine = FILE.machine(revision);
        return new Cards(FILE, Installed.of(machine, Installation.UNKNOWN), Procedures.bundled());
    }

    private static final Cards NEWEST = cards("B");

    private static Card card(String id, Who who) {
        return NEWEST.card(id, who, DRAWS);
    }

    @Test
    void anOverPressureValveSetLowIsSeenAtTheDrainTube() {
        Card card = card("over-pressure", Who.TECHNICIAN);
        assertThat(card.lookAlike().orElseThrow().other().id()).isEqualTo("brew-check");
        Card.Failure low = card.fails().stream()
                .filter(f -> f.name().equals("set low"))
                .findFirst()
                .orElseThrow();
        assertThat(low.notices()).anySatisfy(n -> {
            assertThat(n.asking().procedure().says()).contains("drain tube");
            assertThat(n.normally().words()).isEqualTo("dry");
            assertThat(n.then().words()).isNotEqualTo("dry");
        });
        assertThat(card.fails().stream().mapToDouble(Card.Failure::share).sum()).isCloseTo(1, within(1e-9));
        assertThat(card.checks())
                .anySatisfy(c -> assertThat(c.expected().words()).isEqualTo("dry"));
    }

    @Test
    void theRevisionsDifferInTheSafetyValve() {
        assertThat(Makings.of(FILE, FILE.machine("A"), "safety-valve"))
                .containsExactly(
                        new Card.Making("revision A", "FM-2411", "", true),
                        new Card.Making("revision B", "FM-2412", "set pressure 2.50 bar", false));
        assertThat(Makings.of(FILE, FILE.machine("B"), "brew-drain"))
                .containsExactly(
                        new Card.Making("revision A", "", "not there", false),
                        new Card.Making("revision B", "FM-3412", "", true));
    }

    @Test
    void twinPartsAreToldApartByPlaceAndMark() {
        Cabinet cabinet = NEWEST.cabinet().orElseThrow();
        LookAlike other = LookAlike.of(cabinet.part("brew-limit-line").orElseThrow(), cabinet)
                .orElseThrow();
        assertThat(other.other().id()).isEqualTo("brew-limit-neutral");
        assertThat(other.sameKind()).isTrue();
        assertThat(other.differs())
                .containsExactly(
                        "it sits 30 mm to the right, seen from the front",
                        "it is the disc with a button on the brew boiler, blue wires",
                        "the same part, FM-4210: either fits");
    }

    @Test
    void anOwnersCardLeadsNowhereInside() {
        Machine machine = FILE.machine("B");
        Cards cards = NEWEST;
        for (String id : List.of("brew-check", "tank-seat")) {
            Card card = cards.card(id, Who.OWNER, DRAWS);
            boolean inside = !machine.component(id).place().behind().isEmpty();
            assertThat(card.reach().isPresent() && inside).as(id).isFalse();
            assertThat(card.fitted().isPresent() && inside).as(id).isFalse();
            assertThat(card.checks()).as(id).allSatisfy(c -> {
                assertThat(c.asking().question().effort().who()).isEqualTo(Who.OWNER);
                assertThat(c.asking().question().effort().panels()).isEmpty();
            });
            String page = HtmlSheet.of(
                    new CardSheet(card, Installed.of(machine, Installation.UNKNOWN), cards.cabinet()).sheet());
            if (inside) {
                assertThat(page).doesNotContain("panel off", " off. ").contains("Leave it to a");
            }
        }
    }

    @Test
    void theSheetHoldsTheDrawingAndWhatComesOffFirst() {
        Cards cards = NEWEST;
        Card card = cards.card("steam-element", Who.ELECTRICIAN, DRAWS);
        assertThat(card.reach().orElseThrow().first()).extracting(f -> f.id()).containsExactly("board");
        Sheet sheet =
                new CardSheet(card, Installed.of(FILE.machine("B"), Installation.UNKNOWN), cards.cabinet()).sheet();
        List<Block> blocks =
                sheet.sections().stream().flatMap(s -> s.blocks().stream()).collect(Collectors.toList());
        assertThat(blocks)
                .anySatisfy(b -> assertThat(b).isInstanceOfSatisfying(Block.Drawings.class, d -> {
                    assertThat(d.drawings()).hasSize(2);
                    assertThat(d.drawings().get(0).caption()).contains("66\u00a0control board");
                }));
        assertThat(card.checks()).anySatisfy(c -> {
            assertThat(c.direct()).isTrue();
            assertThat(c.expected().words()).endsWith("Ω");
        });
    }
}
