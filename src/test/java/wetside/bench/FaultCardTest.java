package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wetside.kind.Words;
import wetside.page.Level;
import wetside.units.Display;

class FaultCardTest {
    /** Safety rule, common practice, no source. */
    @Test
    void whatIsDoneTogetherIsAsDangerousAsTheWorstOfIt() {
        Words.Remedy grind = new Words.Remedy("grind coarser", 5, 0, "owner", "", 0.97);
        Words.Remedy element =
                new Words.Remedy("replace the element", 75, 70, "technician", "let the pressure off and drain", 0.98);
        FaultView.Caution both = FaultCard.caution(List.of(grind, element), Display.METRIC, "Switch off.");
        assertThat(both.level()).isEqualTo(Level.TECHNICIAN);
        assertThat(both.how()).startsWith("Let the pressure off and drain. Local codes");
        assertThat(FaultCard.caution(List.of(grind), Display.METRIC, "Switch off."))
                .isNull();
    }
}
