package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ReadingsCommandTest {
    private static Shell.Done readings(String... more) {
        List<String> args = new ArrayList<>(List.of("readings", Shell.STAND, "--fed-from", "mains", "--draws", "8"));
        args.addAll(List.of(more));
        Shell.Done done = Shell.run(args.toArray(String[]::new));
        assertThat(done.exitCode()).as(done.err()).isZero();
        assertThat(done.out().lines())
                .allSatisfy(line -> assertThat(more)
                        .satisfiesAnyOf(
                                m -> assertThat(m).contains("--json"),
                                m -> assertThat(Lines.width(line)).isLessThanOrEqualTo(100)));
        return done;
    }

    @Test
    void anOwnerIsSentNowhereInsideAndToldHowMuchIsLeft() {
        Shell.Done owner = readings();
        assertThat(owner.out())
                .contains("The machine as it stands: plugged in, switched off, cold", "1.5", " bar")
                .doesNotContain("□", "△", "power switch line pole")
                .containsPattern("\\d+ more may be read by others: --who technician, --who qualified");
    }

    @Test
    void whoMayMoreSeesMore() {
        Shell.Done technician = readings("--who", "technician");
        Shell.Done qualified = readings("--who", "qualified");
        assertThat(technician.out()).contains("□").doesNotContain("△");
        assertThat(qualified.out()).contains("□", "△").doesNotContain("more may be read by others");
    }

    @Test
    void whatMustReadTheSameSharesALineUntilAllIsWanted() {
        assertThat(readings().out()).contains("  dry: water under the machine, switched off; ");
        Shell.Done all = readings("--all");
        assertThat(all.out())
                .doesNotContain("  dry: ")
                .contains("look for water under the machine while it is switched off");
        assertThat(all.out().lines().count())
                .isGreaterThan(readings().out().lines().count());
    }

    @Test
    void statesComeInTheOrderOfDoing() {
        assertThat(readings("--who", "qualified").out())
                .containsSubsequence(
                        "The machine as it stands",
                        "Switched off and cold",
                        "Cold, the plug out",
                        "Just switched on",
                        "Hot");
    }

    @Test
    void jsonGivesNumbersAndShares() {
        JsonNode json = JsonMapper.shared().readTree(readings("--json").out());
        assertThat(json.get("fedFrom").asString()).isEqualTo("mains");
        assertThat(json.get("draws").intValue()).isEqualTo(8);
        JsonNode gauge = named(json, "pump gauge at rest, cold");
        assertThat(gauge.get("low").doubleValue())
                .isLessThan(gauge.get("middle").doubleValue());
        assertThat(gauge.get("middle").doubleValue()).isBetween(1.5, 2.5);
        assertThat(gauge.get("unit").asString()).isEqualTo("bar");
        assertThat(named(json, "mains cock stands").get("words").get("open").doubleValue())
                .isEqualTo(1);
    }

    private static JsonNode named(JsonNode json, String reading) {
        for (JsonNode one : json.get("readings")) {
            if (one.get("reading").asString().equals(reading)) {
                return one;
            }
        }
        throw new AssertionError("no reading " + reading);
    }

    @Test
    void theSupplyChangesWhatIsExpected() {
        assertThat(readings("--supply-pressure", "4 bar").out()).containsPattern("3\\.\\d to 4\\.\\d bar");
    }
}
