package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.shop.Reading;
import wetside.shop.Readings;

/** One choice for each quantity, on every page, for what is shown and for what is typed. */
class UnitsTest {
    /** psi, °F, US gallons, °fH. */
    private static final String COOKIE = "units=1111";

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

    private static String page(String path, String cookie) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(opened.uri(path))
                .header("Cookie", cookie)
                .build();
        return opened.client.send(request, HttpResponse.BodyHandlers.ofString()).body();
    }

    @Test
    void theChoiceIsKeptAndGoesBackToThePageItWasMadeOn() throws Exception {
        HttpResponse<String> answer = opened.post("/units", "units-pressure", "1", "back", "/machines?q=spring");
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.headers().firstValue("Location").orElse("")).endsWith("/machines?q=spring");
        assertThat(answer.headers().firstValue("Set-Cookie").orElse("")).startsWith("units=1000");
        assertThat(opened.post("/units", "back", "//elsewhere.example/")
                        .headers()
                        .firstValue("Location")
                        .orElse(""))
                .doesNotContain("elsewhere");
        assertThat(page("/jobs", "units=9x")).contains("bar · °C · l · °dH");
        assertThat(page("/jobs", COOKIE)).contains("psi · °F · gal · °fH");
    }

    @Test
    void plateCardAndWaterFollow() throws Exception {
        String card = page("/machines/" + opened.machine + "?part=safety-valve", COOKIE);
        assertThat(card).contains("459 ft").contains("29 psi").doesNotContain("2.00 bar");
        assertThat(page("/water?example=1", COOKIE))
                .contains("Hardness, °fH")
                .contains("<dd>15.2 → ")
                .contains("temperature, °F")
                .doesNotContain(" °C")
                .doesNotContain("mg/l CaCO3 (");
    }

    @Test
    void aBareNumberIsReadInTheChosenUnit() throws Exception {
        long number = opened.job("Weak steam.");
        String asked = "steam gauge at rest, cold";
        HttpRequest request = HttpRequest.newBuilder(opened.uri("/jobs/" + number + "/readings"))
                .header("Cookie", COOKIE)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString("version=1&phase=found&said=2&asked="
                        + asked.replace(" ", "+").replace(",", "%2C")))
                .build();
        HttpResponse<String> answer = opened.client.send(request, HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        Reading kept = new Readings(opened.shop, java.time.Clock.systemUTC())
                .of(new wetside.shop.Jobs(opened.shop, java.time.Clock.systemUTC())
                        .byNumber(number)
                        .orElseThrow()
                        .id())
                .get(0);
        assertThat(kept.said()).isEqualTo("0.14 bar");
        assertThat(page("/jobs/" + number, COOKIE)).contains("<b>2.0 psi</b>");
        assertThat(page("/jobs/" + number, "units=0000")).contains("<b>0.14 bar</b>");
    }

    private static String posted(String path, String cookie, String form) throws Exception {
        HttpRequest request = HttpRequest.newBuilder(opened.uri(path))
                .header("Cookie", cookie)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(form))
                .build();
        return opened.client.send(request, HttpResponse.BodyHandlers.ofString()).body();
    }

    @Test
    void adviceForTheOwnerFollowsNumbersInsideSentencesIncluded() throws Exception {
        String address = "/machines/" + opened.machine + "/water/advice.html";
        String form = "calcium=40&calcium-unit=mg%2Fl&magnesium=8&magnesium-unit=mg%2Fl&alkalinity=122"
                + "&alkalinity-unit=mg%2Fl+HCO3&ph=7.6&treatment=none&title=Tap&brewed=2&use-unit=l";
        Instant patience = Instant.now().plus(Duration.ofMinutes(2));
        String metric = posted(address, "units=0000", form);
        while (metric.contains("brewing (assumed)")) {
            // the twin is still warming the machine up
            assertThat(Instant.now()).isBefore(patience);
            Thread.sleep(200);
            metric = posted(address, "units=0000", form);
        }
        assertThat(metric).contains(" °C", "2 l brewed", "°dH", "temperature, °C");
        assertThat(posted(address, COOKIE, form))
                .contains("temperature, °F", "brewed, 0 kg as steam", "194 °F ±0.2", "°fH")
                .contains("(most 8.5)")
                .doesNotContain("°C", "°dH", " l brewed", " l heated", " l hot water", "mg/l CaCO3");
    }

    @Test
    void aWaterThatWasTypedSurvivesAChoice() throws Exception {
        String page = posted(
                "/water",
                "units=0000",
                "hardness=9&hardness-unit=%C2%B0dH&brewed=10&use-unit=l" + "&units-hardness=1&units-volume=1");
        assertThat(page)
                .contains("name=\"hardness\" value=\"9\"", "<option selected>°dH", "name=\"brewed\" value=\"2.642\"")
                .contains("bar · °C · gal · °fH");
    }
}
