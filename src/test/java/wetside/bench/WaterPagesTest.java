package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.analysis.Conditioning;
import wetside.analysis.WaterSheet;
import wetside.feedwater.Advice;
import wetside.feedwater.MachineFacts;
import wetside.feedwater.WaterDrawings;
import wetside.shop.MachineWaters;
import wetside.shop.Register;
import wetside.units.Dimension;
import wetside.units.Display;
import wetside.water.ConstantSet;

class WaterPagesTest {
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

    private static String entered(String path, String... fields) throws Exception {
        HttpResponse<String> answer = opened.post(path, fields);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        return answer.body();
    }

    private static String trouble(String page, String field) {
        Matcher m = Pattern.compile("id=\"err-" + field + "\"[^>]*>([^<]*)</p>").matcher(page);
        assertThat(m.find()).as(field).isTrue();
        return m.group(1);
    }

    private static String[] tap(String... more) {
        String[] tap = {
            "title", "Orrin Street tap", "hardness", "9", "hardness-unit", "drops of 1 °dH", "alkalinity", "8",
            "alkalinity-unit", "drops of 1 °dH", "conductivity", "390", "conductivity-unit", "µS/cm", "ph", "7,6 ± 0.2"
        };
        String[] all = Arrays.copyOf(tap, tap.length + more.length);
        System.arraycopy(more, 0, all, tap.length, more.length);
        return all;
    }

    @Test
    void anEmptyPageAsksForTwoDropTestsAndAccusesNobody() throws Exception {
        String page = opened.get("/water").body();
        assertThat(page).contains("Two drop tests are enough").contains("They come with hardness and alkalinity");
        assertThat(trouble(page, "hardness")).isEmpty();
    }

    @Test
    void dropsGiveCompositionCurveAndVerdicts() throws Exception {
        String page = entered("/water", tap());
        assertThat(page)
                .contains("Calcium")
                .contains("steam boiler (assumed)")
                .contains("Scale, brewing (assumed)")
                .contains("Taste range")
                .contains("Orrin Street tap")
                .doesNotContain("class=\"before\"");
        assertThat(trouble(page, "ph")).as("a comma is a decimal sign").isEmpty();
    }

    @Test
    void aTreatmentMovesTheMarksAndKeepsWhereTheyWere() throws Exception {
        String page = entered("/water", tap("treatment", "softening", "leak", "2"));
        assertThat(page)
                .contains("class=\"before\"")
                .contains("; dashed: treated")
                .contains("salt, a year");
        Matcher falls =
                Pattern.compile("mg/l that can fall: ([\\d.]+) → ([\\d.]+)").matcher(page);
        assertThat(falls.find()).isTrue();
        assertThat(Double.parseDouble(falls.group(2))).isLessThan(0.2 * Double.parseDouble(falls.group(1)));
    }

    @Test
    void theNearestShareIsFoundAndSaid() throws Exception {
        String page = entered("/water", tap("treatment", "decarbonising", "done", "90", "bypass", "0", "nearest", "1"));
        Matcher bypass = Pattern.compile("name=\"bypass\"[^>]*value=\"(\\d+)\"").matcher(page);
        assertThat(bypass.find()).isTrue();
        assertThat(Integer.parseInt(bypass.group(1))).isBetween(10, 90);
    }

    @Test
    void whatCannotBeIsToldAtItsFieldAndNothingIsLost() throws Exception {
        String page = entered(
                "/water",
                "hardness",
                "9 furlongs",
                "alkalinity",
                "8",
                "alkalinity-unit",
                "°dH",
                "ph",
                "17",
                "treatment",
                "reverse-osmosis",
                "bypass",
                "33");
        assertThat(trouble(page, "hardness")).contains("furlongs");
        assertThat(trouble(page, "ph")).contains("between 4.5 and 10.5");
        assertThat(trouble(page, "alkalinity")).isEmpty();
        assertThat(page)
                .contains("value=\"9 furlongs\"")
                .contains("33 %")
                .contains("They come with hardness and alkalinity");
        String lone = entered("/water", "hardness", "9", "hardness-unit", "°dH");
        assertThat(trouble(lone, "alkalinity")).contains("missing");
    }

    @Test
    void anAnalysisThatCannotBeIsToldWithTheIonAtFault() throws Exception {
        String page = entered(
                "/water",
                "hardness",
                "9",
                "hardness-unit",
                "°dH",
                "magnesium",
                "200",
                "magnesium-unit",
                "mg/l",
                "alkalinity",
                "8",
                "alkalinity-unit",
                "°dH");
        assertThat(trouble(page, "magnesium")).contains("more than the whole hardness");
        assertThat(page).containsPattern("<details open[^>]*><summary>From a laboratory");
    }

    @Test
    void markupInANameStaysText() throws Exception {
        assertThat(entered("/water", tap("remarks", "x"))).doesNotContain("<script>alert");
        assertThat(entered(
                        "/water",
                        "title",
                        "\"<script>alert(1)</script>",
                        "hardness",
                        "9",
                        "hardness-unit",
                        "°dH",
                        "alkalinity",
                        "8",
                        "alkalinity-unit",
                        "°dH"))
                .doesNotContain("<script>alert")
                .contains("Calcium");
    }

    @Test
    void aMachinesWaterIsKeptAndItsConductivityUsed() throws Exception {
        String address = "/machines/" + opened.machine + "/water";
        HttpResponse<String> kept = opened.post(address, tap("person", "Ines", "keep", "1"));
        assertThat(kept.statusCode()).isEqualTo(303);
        assertThat(opened.get(address).body()).contains("Kept by Ines").contains("value=\"7,6 ± 0.2\"");
        assertThat(new Register(opened.shop).machine(opened.machine).waterConductivity())
                .isEqualTo(0.039);
        var installed = Models.installed(new Register(opened.shop).machine(opened.machine));
        assertThat(installed
                        .installation()
                        .facts()
                        .get(wetside.machine.Installation.Fact.CONDUCTIVITY)
                        .si())
                .isCloseTo(0.039, org.assertj.core.data.Offset.offset(1e-6));
        assertThat(new MachineWaters(opened.shop, Clock.systemUTC())
                        .of(opened.machine)
                        .orElseThrow()
                        .sheet())
                .contains("hardness: \"9 drops of 1 °dH\"");
        assertThat(opened.get(address + "/advice.html").body())
                .contains("Orrin Street tap")
                .contains("water advice");
        assertThat(opened.get(address + "/advice.pdf").body()).startsWith("%PDF");
    }

    @Test
    void adviceWithoutAWaterIsRefusedWithReason() throws Exception {
        HttpResponse<String> answer = opened.post("/water/advice.html", "title", "x");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("the least is hardness and alkalinity");
        assertThat(opened.get("/machines/file/spring-lever/water/advice.pdf").statusCode())
                .isEqualTo(404);
    }

    /** Time of the processor, so that a busy computer does not fail it. */
    @Test
    void chemistryOfASliderTakesAtMostFiftyMilliseconds() {
        WaterSheet sheet = WaterSheet.of(
                "tap", "wetside water: 1\nmeasured: {hardness: 9 drops of 1 °dH, alkalinity: 8 drops of 1 °dH}\n");
        Advice raw = Advice.of(sheet, MachineFacts.NONE, ConstantSet.STANDARD);
        var index = WaterDrawings.index(raw.waters(), ConstantSet.STANDARD);
        var clock = java.lang.management.ManagementFactory.getThreadMXBean();
        double[] taken = new double[40];
        for (int i = 0; i < taken.length; i++) {
            long start = clock.getCurrentThreadCpuTime();
            Conditioning how = Conditioning.reverseOsmosis("", 0.96, i / 40.0, "");
            Advice treated = Advice.treated(
                    sheet.waters().treated(how.treat()),
                    sheet.range(),
                    sheet.use(),
                    MachineFacts.NONE,
                    ConstantSet.STANDARD);
            String curve =
                    WaterDrawings.curve(raw, index, Optional.of(treated), Display.METRIC.unit(Dimension.TEMPERATURE));
            assertThat(WaterView.rows(raw, Optional.of(treated))).isNotEmpty();
            assertThat(curve).contains("dashed").contains("<path");
            taken[i] = (clock.getCurrentThreadCpuTime() - start) / 1e6;
        }
        double median =
                Arrays.stream(taken).skip(20).sorted().skip(10).findFirst().orElseThrow();
        assertThat(median).isLessThan(50);
    }
}
