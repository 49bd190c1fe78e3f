package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import wetside.run.Action;
import wetside.run.Scenario;

@Timeout(120)
class RunPagesTest {
    @TempDir
    static Path folder;

    private static Opened opened;

    @BeforeAll
    static void open() {
        opened = new Opened(folder);
    }

    @AfterAll
    static void close() {
        opened.close();
    }

    private static String start() throws Exception {
        var answer = opened.post("/machines/" + opened.machine + "/run");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).matches("[0-9a-f]{24}");
        return "/runs/" + answer.body();
    }

    private static InputStream pictures(String run) throws Exception {
        return pictures(run, "");
    }

    /** @param show number of the reading in the strips, "" for those shown anyway */
    private static InputStream pictures(String run, String show) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(opened.uri(run + "/pictures?show=" + show))
                .header("Accept", "text/event-stream")
                .build();
        return opened.client
                .send(request, HttpResponse.BodyHandlers.ofInputStream())
                .body();
    }

    /** Reads on until a picture is as wanted. */
    private static String until(BufferedReader pictures, Predicate<String> wanted) throws Exception {
        for (String line = pictures.readLine(); line != null; line = pictures.readLine()) {
            if (line.startsWith("data: {") && wanted.test(line)) {
                return line;
            }
        }
        throw new AssertionError("the run ended first");
    }

    private static BufferedReader reader(InputStream in) {
        return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    private static double number(String picture, String name) {
        Matcher m = Pattern.compile("\"" + name + "\":(-?[0-9.e-]+)").matcher(picture);
        assertThat(m.find()).as(name + " in " + picture).isTrue();
        return Double.parseDouble(m.group(1));
    }

    @Test
    void aRunIsTouchedWatchedBrokenAndSaved() throws Exception {
        String run = start();
        try (InputStream in = pictures(run)) {
            BufferedReader pictures = reader(in);
            until(pictures, p -> p.contains("Cold, as it stands"));
            assertThat(opened.post(run + "/handle", "handle", "power-switch.switch", "value", "on")
                            .statusCode())
                    .isEqualTo(204);
            until(pictures, p -> p.contains("\"Power switch: on\""));
            opened.post(run + "/speed", "times", "200");
            double t = number(until(pictures, p -> number(p, "speed") == 200), "t");
            until(pictures, p -> number(p, "t") > t + 30);
            opened.post(
                    run + "/break",
                    "part",
                    "safety-valve",
                    "fault",
                    faultOf("safety-valve"),
                    "far",
                    "0.9",
                    "compare",
                    "yes");
            until(pictures, p -> p.contains("\"broken\":[\"safety-valve:") && p.contains("\"compared\":true"));
            opened.post(run + "/pause", "pause", "yes");
            until(pictures, p -> p.contains("\"paused\":true"));
            String saved = opened.get(run + "/scenario.yaml").body();
            Path file = Files.writeString(folder.resolve("saved.yaml"), saved);
            assertThat(Scenario.read(file).steps())
                    .contains(new Action.Move("power-switch.switch", "on"), new Action.Mark("end"));
        }
        assertThat(opened.post(run + "/end").statusCode()).isEqualTo(204);
        assertThat(opened.post(run + "/mend").statusCode()).isEqualTo(404);
    }

    @Test
    void aBrokenPartShowsAgainstTheSoundMachineBesideIt() throws Exception {
        String page = opened.get("/machines/" + opened.machine + "/run").body();
        String power = powerDrawn(page);
        Matcher burnt = Pattern.compile("<option value=\"(open)\" data-part=\"(element[^\"]*)\"")
                .matcher(page);
        assertThat(burnt.find()).isTrue();
        String run = start();
        try (InputStream in = pictures(run, power)) {
            BufferedReader pictures = reader(in);
            opened.post(run + "/handle", "handle", "power-switch.switch", "value", "on");
            opened.post(run + "/speed", "times", "40");
            until(pictures, p -> number(p, "t") > 30);
            opened.post(run + "/break", "part", burnt.group(2), "fault", burnt.group(1), "far", "1", "compare", "yes");
            Pattern row = Pattern.compile("\\[[0-9.e+-]+,([0-9.e+-]+),([0-9.e+-]+)\\]");
            until(pictures, p -> {
                Matcher m = row.matcher(p.substring(p.indexOf("\"rows\":")));
                return m.find() && Double.parseDouble(m.group(1)) < 50 && Double.parseDouble(m.group(2)) > 300;
            });
        }
        opened.post(run + "/end");
    }

    @Test
    void soundMachinesWithinTolerancesMakeABand() throws Exception {
        String power =
                powerDrawn(opened.get("/machines/" + opened.machine + "/run").body());
        String run = start();
        try (InputStream in = pictures(run, power)) {
            BufferedReader pictures = reader(in);
            opened.post(run + "/handle", "handle", "power-switch.switch", "value", "on");
            opened.post(run + "/speed", "times", "20");
            Pattern row = Pattern.compile("\\[[0-9.e+-]+,([0-9.e+-]+),([0-9.e+-]+)\\]");
            until(pictures, p -> {
                Matcher m = row.matcher(p.substring(p.indexOf("\"band\":")));
                while (m.find()) {
                    double low = Double.parseDouble(m.group(1));
                    double high = Double.parseDouble(m.group(2));
                    // elements differ by a few per cent within their tolerance
                    if (low > 300 && high > low * 1.01 && high < low * 1.3) {
                        return true;
                    }
                }
                return false;
            });
        }
        opened.post(run + "/end");
    }

    /** Number of the reading of the power the machine draws. */
    private static String powerDrawn(String page) {
        Matcher power = Pattern.compile("value=\"(\\d+)\" data-name=\"[^\"]*power drawn\"")
                .matcher(page);
        assertThat(power.find()).isTrue();
        return power.group(1);
    }

    private static String faultOf(String part) throws Exception {
        String page = opened.get("/machines/" + opened.machine + "/run").body();
        Matcher m = Pattern.compile("<option value=\"([^\"]+)\" data-part=\"" + part + "\"")
                .matcher(page);
        assertThat(m.find()).isTrue();
        return m.group(1);
    }

    @Test
    void whoDoesNotReadHoldsUpNobody() throws Exception {
        String run = start();
        opened.post(run + "/speed", "times", "200");
        try (InputStream stuck = pictures(run);
                InputStream in = pictures(run)) {
            BufferedReader pictures = reader(in);
            double first = number(until(pictures, p -> true), "t");
            long begun = System.nanoTime();
            until(pictures, p -> number(p, "t") > first + 60);
            assertThat((System.nanoTime() - begun) * 1e-9).isLessThan(20);
            assertThat(stuck).isNotNull();
        }
        opened.post(run + "/end");
    }

    @Test
    void badOrdersAreTold() throws Exception {
        String run = start();
        assertThat(opened.post(run + "/handle", "handle", "warp.drive", "value", "on")
                        .statusCode())
                .isEqualTo(422);
        assertThat(opened.post(run + "/handle", "handle", "power-switch.switch", "value", "half")
                        .statusCode())
                .isEqualTo(422);
        assertThat(opened.post(run + "/speed", "times", "9000").statusCode()).isEqualTo(422);
        assertThat(opened.post(run + "/break", "part", "safety-valve", "fault", "bored", "far", "1")
                        .statusCode())
                .isEqualTo(404);
        assertThat(opened.post("/runs/0123456789abcdef01234567/mend").statusCode())
                .isEqualTo(404);
        opened.post(run + "/end");
    }

    @Test
    void thereIsALimitAndAnEndedRunMakesRoom() throws Exception {
        List<String> runs = new ArrayList<>();
        while (true) {
            var answer = opened.post("/machines/" + opened.machine + "/run");
            if (answer.statusCode() == 503) {
                assertThat(answer.body()).contains("close a page");
                break;
            }
            runs.add("/runs/" + answer.body());
            assertThat(runs).hasSizeLessThanOrEqualTo(LiveRuns.MOST);
        }
        opened.post(runs.get(0) + "/end");
        runs.add(start());
        for (String run : runs.subList(1, runs.size())) {
            opened.post(run + "/end");
        }
    }
}
