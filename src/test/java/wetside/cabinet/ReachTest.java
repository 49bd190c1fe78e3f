package wetside.cabinet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wetside.machine.MachineFile;
import wetside.machine.Side;

/** What has to come off before a part follows from where the parts are. */
class ReachTest {
    private static final String FILE = """
            wetside machine: 1
            title: Fellmoor Box
            case: {width: 300 mm, depth: 300 mm, height: 300 mm}
            panels:
              rear: {name: rear panel, minutes: 5}
              top: {name: lid, minutes: 2}
            components:
              tank:
                kind: water tank
                at: [150 mm, 60 mm, 200 mm]
                size: [200 mm, 90 mm, 150 mm]
              board:
                kind: control board
                at: [150 mm, 200 mm, 200 mm]
                size: [100 mm, 20 mm, 80 mm]
                behind: [rear]
              fuse:
                kind: fuse
                at: [FUSE, 240 mm, 200 mm]
                size: [20 mm, 20 mm, 30 mm]
                behind: [BEHIND]
                set: {rating: 4 A}
              lead:
                kind: lead
                at: [150 mm, 130 mm, 200 mm]
                size: [100 mm, 10 mm, 80 mm]
                behind: [rear]
            """;

    private static Cabinet cabinet(String x, String behind) {
        String text = FILE.replace("FUSE", x).replace("BEHIND", behind);

        MachineFile file = Boxes.read(text);
        return Cabinet.of(file, file.newest()).orElseThrow();
    }

    private static String reach(Cabinet cabinet, String id) {
        return cabinet.reach(cabinet.part(id).orElseThrow()).words();
    }

    @Test
    void whatStandsInTheWayComesOffFirstTheOutermostFirst() {
        assertThat(reach(cabinet("150 mm", "rear"), "fuse"))
                .isEqualTo("rear panel off (5 min), then lift the tank (1) out, then take the board (2) off");
    }

    @Test
    void aPartThatIsNotInTheWayStays() {
        assertThat(reach(cabinet("280 mm", "rear"), "fuse")).isEqualTo("rear panel off (5 min)");
    }

    @Test
    void theEasierOfTwoOpenedSidesIsTaken() {
        assertThat(reach(cabinet("150 mm", "rear, top"), "fuse"))
                .isEqualTo("rear panel off (5 min), then lid off (2 min)");
    }

    @Test
    void theTankIsReachedFromOutside() {
        Cabinet cabinet = cabinet("150 mm", "rear");
        assertThat(reach(cabinet, "tank")).isEqualTo("from outside");
        assertThat(cabinet.part("tank").orElseThrow().home())
                .as("its nearest wall")
                .containsExactly(Side.REAR);
    }

    @Test
    void viewsAreTrueToHandAndHideWhatIsBehind() {
        Cabinet cabinet = cabinet("280 mm", "rear");
        View rear = cabinet.from(Side.REAR);
        Fitted fuse = cabinet.part("fuse").orElseThrow();
        assertThat(rear.box(fuse).x())
                .as("right of the machine is left from the rear")
                .isLessThan(0.05);
        assertThat(cabinet.from(Side.FRONT).box(fuse).x()).isGreaterThan(0.25);
        assertThat(cabinet.from(Side.RIGHT).box(fuse).x())
                .as("the rear is on the right")
                .isLessThan(0.1);
        assertThat(cabinet.from(Side.TOP).box(fuse).y())
                .as("the front is below")
                .isGreaterThan(0.2);
        assertThat(cabinet.from(Side.BOTTOM).box(fuse).y())
                .as("on its back the front is above")
                .isLessThan(0.1);
        assertThat(cabinet.from(Side.BOTTOM).box(fuse).x()).isGreaterThan(0.25);
        assertThat(rear.of(cabinet.part("board").orElseThrow()).free()).isZero();
        assertThat(rear.of(fuse).free()).isEqualTo(1);
    }

    @Test
    void whatHasNoPlaceIsStillSaidToBeBehindItsPanel() {
        MachineFile file = Boxes.read(
                FILE.replace("FUSE", "150 mm").replace("BEHIND", "rear") + "  lamp: {kind: lamp, behind: top}\n");
        Cabinet cabinet = Cabinet.of(file, file.newest()).orElseThrow();
        assertThat(cabinet.somewhereBehind(file.newest().identity().panels().get(1)))
                .containsExactly("lamp");
        assertThat(cabinet.part("lamp")).isEmpty();
    }
}
