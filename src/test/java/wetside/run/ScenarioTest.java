package wetside.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.machine.BadFile;

class ScenarioTest {
    @TempDir
    Path folder;

    @Test
    void aFileHoldsOneScenario() throws IOException {
        Scenario scenario = Scenario.read(file("""
                wetside scenario: 1
                from: warm-up
                says: "hot, left alone"
                steps:
                  - {set: lever.position, to: brew}
                  - wait: 10 s
                  - {until: brew gauge.reading, above: 9 bar, at most: 1 min}
                  - mark: done
                """));
        assertThat(scenario.from()).contains("warm-up");
        assertThat(scenario.says()).isEqualTo("hot, left alone");
        assertThat(scenario.steps())
                .containsExactly(
                        new Action.Move("lever.position", "brew"),
                        new Action.Wait(10),
                        new Action.Until("brew gauge.reading", Action.Test.ABOVE, "9 bar", 60),
                        new Action.Mark("done"));
    }

    @Test
    void aMistakeIsShownWhereItStands() throws IOException {
        Path file = file("wetside scenario: 1\nsteps:\n  - wait: soon\n  - jump: high\n");
        assertThatThrownBy(() -> Scenario.read(file))
                .isInstanceOf(BadFile.class)
                .hasMessageContaining("morning.yaml:3:11")
                .hasMessageContaining("morning.yaml:4:5")
                .hasMessageContaining("a step is one of set, wait, until, mark");
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("morning.yaml"), text);
    }
}
