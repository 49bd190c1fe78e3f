package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import wetside.casework.CaseFile;
import wetside.machine.Installation;

/** Waters on the command line, and where a case or a machine names one. */
class WaterCommandTest {
    private static final String TAP = "examples/water/tap.yaml";

    @TempDir
    Path folder;

    @Test
    void textSaysWhatIsInItAndWhatToThink() {
        Shell.Done said = Shell.run("water", TAP);
        assertThat(said.exitCode()).isEqualTo(Wetside.FINDINGS);
        assertThat(said.out())
                .contains("9 drops of 1 °dH", "Assumed: ", "calcite index", "taste range", "As the trade");
        assertThat(said.out().lines()).allMatch(l -> l.length() <= 100);
    }

    @Test
    void jsonHoldsTheVerdictsOfAMachine() {
        Shell.Done said = Shell.run("water", TAP, "--machine", "twin-boiler-lever", "--json");
        JsonNode json = new ObjectMapper().readTree(said.out());
        assertThat(json.get("verdicts").size()).isGreaterThan(7);
        assertThat(json.get("probeBlindUnder").get("middle").asDouble()).isBetween(3.0, 60.0);
        assertThat(json.get("forecast").size()).isEqualTo(2);
    }

    @Test
    void comparesAndMakesRecipes() {
        Shell.Done compared = Shell.run("water", "compare", "examples/water/laboratory.yaml");
        assertThat(compared.exitCode()).as(compared.err()).isZero();
        assertThat(compared.out()).contains("as it comes", "softener", "half bottled", "in range");
        assertThat(compared.out().lines()).allMatch(l -> l.length() <= 100);
        Shell.Done recipe = Shell.run("water", "recipe", "--litres", "20", "--alkalinity", "40 mg/l CaCO3");
        assertThat(recipe.exitCode()).as(recipe.err()).isZero();
        assertThat(recipe.out()).contains("sodium bicarbonate", "20 l, g", "bicarbonate bottle");
        Shell.Done far = Shell.run("water", "recipe", "--calcium", "300 mg/l CaCO3");
        assertThat(far.exitCode()).isEqualTo(Wetside.FINDINGS);
        assertThat(far.out()).contains("cannot be reached", "limit of chloride");
    }

    @Test
    void pageAndPaper() throws IOException {
        Path html = folder.resolve("water.html");
        Path pdf = folder.resolve("water.pdf");
        Shell.Done said = Shell.run("water", TAP, "--html", html.toString(), "--pdf", pdf.toString());
        assertThat(said.err()).isEmpty();
        assertThat(Files.readString(html)).contains("Orrin Street tap", "calcite index: above 0", "bicarbonate");
        assertThat(Files.size(pdf)).isGreaterThan(10_000);
    }

    @Test
    void badInputIsToldWithItsPlace() throws IOException {
        Path bad = folder.resolve("bad.yaml");
        Files.writeString(bad, "wetside water: 1\nmeasured:\n  hardness: 9\n  alkalinity: 8 °dH\n");
        Shell.Done said = Shell.run("water", bad.toString());
        assertThat(said.exitCode()).isEqualTo(Wetside.BAD_INPUT);
        assertThat(said.err()).contains("bad.yaml:3:13", "the unit is missing");
        assertThat(Shell.run("water").err()).contains("say which water sheet");
        assertThat(Shell.run("water", TAP, "--altitude", "500 m").err()).contains("name it with --machine");
        assertThat(Shell.run("water", TAP, "--constants", "mine").err()).contains("standard or high-temperature");
        assertThat(Shell.run("water", "recipe", "--alkalinity", "40 mg/l").err())
                .contains("mg/l CaCO3");
        assertThat(Shell.run("water", "recipe", "--litres", "0").exitCode()).isEqualTo(Wetside.BAD_INPUT);
    }

    @Test
    void aCaseMayNameItsWater() throws IOException {
        Files.copy(Path.of(TAP), folder.resolve("tap.yaml"));
        Path file = folder.resolve("case.yaml");
        Files.writeString(file, "wetside case: 1\nmachine: twin-boiler-lever\nwater: tap.yaml\ncomplaint: cold\n");
        CaseFile read = CaseFile.read(file);
        assertThat(read.installed()
                        .installation()
                        .facts()
                        .get(Installation.Fact.CONDUCTIVITY)
                        .si())
                .isEqualTo(390e-4);
        Files.writeString(file, "wetside case: 1\nmachine: twin-boiler-lever\nwater: other.yaml\ncomplaint: cold\n");
        assertThat(Shell.run("diagnose", file.toString()).err()).contains("no water sheet other.yaml beside this case");
    }
}
