package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A small evaluation of the small machine. */
class EvaluateCommandTest {
    @TempDir
    Path folder;

    private static JsonNode played(String... more) {
        String[] args = new String[6 + more.length];
        String[] base = {"evaluate", Shell.STAND, "--draws", "16", "--json", "--seed=3"};
        System.arraycopy(base, 0, args, 0, base.length);
        System.arraycopy(more, 0, args, base.length, more.length);
        Shell.Done done = Shell.run(args);
        assertThat(done.exitCode()).as(done.err()).isZero();
        return JsonMapper.builder().build().readTree(done.out());
    }

    @Test
    void ourPlanMendsMostMachinesAndCostsLessThanGuessing() {
        JsonNode all = played("--cases", "40", "--policies", "likeliest,random");
        assertThat(all.get("jobs").asInt()).isEqualTo(40);
        JsonNode plan = all.get("policies").get("plan").get("all");
        assertThat(plan.get("firstThree").asDouble()).isGreaterThan(0.85);
        assertThat(plan.get("brier").asDouble()).isBetween(0.0, 0.6);
        for (String other : new String[] {"likeliest", "random"}) {
            JsonNode ratio = all.get("policies").get(other).get("oursCosts");
            assertThat(ratio.get(0).asDouble()).as(other).isLessThan(1);
        }
        JsonNode sorts = all.get("policies").get("plan").get("bySort");
        int jobs = 0;
        for (JsonNode sort : sorts) {
            jobs += sort.get("jobs").asInt();
        }
        assertThat(jobs).isEqualTo(40);
        assertThat(sorts.has("nothing wrong")).isTrue();
    }

    @Test
    void theSameSeedPlaysTheSameJobsWhateverElsePlays() {
        JsonNode few = played("--cases", "6", "--policies", "chart");
        JsonNode more = played("--cases", "8", "--policies", "gain");
        for (int i = 0; i < 6; i++) {
            JsonNode one = few.get("played").get(i);
            JsonNode other = more.get("played").get(i);
            assertThat(one.get("truth")).isEqualTo(other.get("truth"));
            assertThat(one.get("outcomes").get("plan"))
                    .isEqualTo(other.get("outcomes").get("plan"));
        }
    }

    @Test
    void tellsWhatItHasAndDrawsIt() throws IOException {
        Path svg = folder.resolve("honest.svg");
        Shell.Done done = Shell.run(
                "evaluate",
                Shell.STAND,
                "--draws",
                "16",
                "--cases",
                "5",
                "--policies",
                "chart",
                "--svg",
                svg.toString());
        assertThat(done.exitCode()).as(done.err()).isZero();
        assertThat(done.out()).contains("5 jobs", "Until fixed", "Our plan, by what was wrong", "calibration error");
        assertThat(done.out().lines().mapToInt(String::length).max().orElseThrow())
                .isLessThanOrEqualTo(100);
        assertThat(Files.readString(svg)).contains("<svg", "How honest the shares are");
        Shell.Done none = Shell.run("evaluate", Shell.STAND, "--draws", "16", "--cases", "5", "--minutes", "1e-9");
        assertThat(none.out()).contains("0 jobs of 5");
    }

    @Test
    void onlySoundMachinesWhereAskedFor() {
        JsonNode sound = played("--cases", "5", "--policies", "plan", "--healthy", "1");
        sound.get("played")
                .forEach(job -> assertThat(job.get("sort").asString()).isEqualTo("nothing wrong"));
        JsonNode broken = played("--cases", "5", "--policies", "plan", "--healthy", "0");
        broken.get("played")
                .forEach(job -> assertThat(job.get("sort").asString()).isNotEqualTo("nothing wrong"));
        assertThat(broken.get("incomplete").asBoolean()).isFalse();
        assertThat(broken.get("notPlayed").size()).isZero();
        assertThat(broken.get("two").get("were").asDouble()).isZero();
        assertThat(broken.get("calibrationAtEnd").get("error").asDouble()).isBetween(0.0, 1.0);
    }

    @Test
    void severalMachinesStandSideBySide() {
        String[] args = {
            "evaluate", Shell.STAND, Shell.STAND, "--draws", "8", "--cases", "3", "--policies", "likeliest", "--courses"
        };
        Shell.Done done = Shell.run(args);
        assertThat(done.exitCode()).as(done.err()).isZero();
        String[] parts = done.out().split("All machines, our plan");
        assertThat(parts).hasSize(2);
        assertThat(parts[0].split("3 jobs, seed 1")).hasSize(3);
        assertThat(parts[1].lines().filter(l -> l.contains("Stand"))).hasSize(4);
        args[args.length - 1] = "--json";
        JsonNode json = JsonMapper.builder().build().readTree(Shell.run(args).out());
        assertThat(json.get("machines").size()).isEqualTo(2);
        assertThat(json.get("incomplete").asBoolean()).isFalse();
        assertThat(json.get("machines").get(0)).isEqualTo(json.get("machines").get(1));
    }

    @Test
    void jobsGoneWrongAreToldStepByStep() {
        String told = Shell.run(
                        "evaluate",
                        Shell.STAND,
                        "--draws",
                        "8",
                        "--cases",
                        "4",
                        "--pairs",
                        "1",
                        "--healthy",
                        "0",
                        "--who",
                        "owner",
                        "--policies",
                        "plan",
                        "--courses",
                        "--seed",
                        "4")
                .out();
        assertThat(told).contains("Gone wrong", "; truth ");
        assertThat(told.lines().filter(l -> l.startsWith("  job "))).isNotEmpty();
    }

    @Test
    void badOptionsAreToldApart() {
        assertThat(Shell.run("evaluate", Shell.STAND, "--healthy", "-1").err()).contains("share from 0 to 1");
        assertThat(Shell.run("evaluate", "all", "--svg", "x.svg").err()).contains("one machine");
        assertThat(Shell.run("evaluate", Shell.STAND, "--policies", "wisest").err())
                .contains("wisest", "plan");
        assertThat(Shell.run("evaluate", Shell.STAND, "--draws", "9").exitCode())
                .isEqualTo(Wetside.BAD_INPUT);
        assertThat(Shell.run("evaluate", Shell.STAND, "--pairs", "2").err()).contains("share from 0 to 1");
    }
}
