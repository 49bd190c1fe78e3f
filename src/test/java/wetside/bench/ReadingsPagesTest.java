package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingsPagesTest {
    private static final Pattern FIELD =
            Pattern.compile("<input name=\"([^\"]+)\" value=\"\"[^>]*data-low=\"([0-9.]+)\" data-high=\"([0-9.]+)\"");

    @TempDir
    static Path folder;

    private static Opened opened;
    private static String address;
    private static String sheet;

    @BeforeAll
    static void open() throws Exception {
        opened = new Opened(folder);
        address = "/machines/" + opened.machine + "/readings";
        assertThat(opened.get(address).body()).contains("of " + Expectations.DRAWS);
        Instant patience = Instant.now().plus(Duration.ofMinutes(3));
        while (!opened.get(address + "/progress").body().equals("ready")) {
            assertThat(Instant.now()).isBefore(patience);
            Thread.sleep(200);
        }
        sheet = opened.get(address).body();
    }

    @AfterAll
    static void close() {
        opened.close();
    }

    private static Matcher field() {
        Matcher field = FIELD.matcher(sheet);
        do {
            assertThat(field.find()).isTrue();
        } while (Double.parseDouble(field.group(2)) <= 0);
        return field;
    }

    @Test
    void theSheetIsGroupedByStateWithABandForEachNumber() {
        assertThat(sheet).contains("<h2>").contains("core-band").contains("Bands: 5 to 95 %");
        assertThat(sheet).as("lines with nothing to expect").doesNotContain("class=\"reads\"></td>");
        assertThat(sheet)
                .as("a share of time is a number, also of a lamp")
                .contains("<input name=\"heating lamp lit while warming up\"");
    }

    @Test
    void ownersAreNotSentInside() throws Exception {
        String owners = opened.get(address + "?who=owner").body();
        assertThat(owners.substring(owners.indexOf("<h2>"), owners.indexOf("class=\"save\"")))
                .doesNotContain("who technician")
                .doesNotContain("who qualified");
        assertThat(owners).contains("more readings are for others");
    }

    @Test
    void whatIsOutOfRangeIsFlagged() throws Exception {
        Matcher f = field();
        double low = Double.parseDouble(f.group(2));
        double high = Double.parseDouble(f.group(3));
        assertThat(opened.post(address, f.group(1), "" + (low * 0.5)).body()).contains("▼ low");
        assertThat(opened.post(address, f.group(1), "" + (high * 2)).body()).contains("▲ high");
        assertThat(opened.post(address, f.group(1), "" + (low + high) / 2).body())
                .contains("✓")
                .doesNotContain("▼ low");
        assertThat(opened.post(address, f.group(1), "plenty").statusCode()).isEqualTo(422);
    }

    @Test
    void readingsAreKeptInAnOpenJobOfTheMachine() throws Exception {
        long job = opened.job("Weak");
        Matcher f = field();
        String low = "" + Double.parseDouble(f.group(2)) * 0.5;
        assertThat(opened.post(address, f.group(1), low, "job", "" + job, "person", "Ines")
                        .statusCode())
                .isEqualTo(303);
        assertThat(opened.get("/jobs/" + job).body()).contains("▼ low (expected ");
        assertThat(opened.post(address, f.group(1), low, "job", "999999").statusCode())
                .isEqualTo(422);
    }

    /** The first reading that is expected in bar. */
    private static String pressure() {
        Matcher f = Pattern.compile("class=\"reads\">[^<]* bar</td>.*\\s+<input name=\"([^\"]+)\"")
                .matcher(sheet);
        assertThat(f.find()).isTrue();
        return f.group(1);
    }

    private static String value(String page, String field) {
        Matcher m = Pattern.compile("name=\"" + Pattern.quote(field) + "\" value=\"([^\"]*)\"")
                .matcher(page);
        assertThat(m.find()).as(field).isTrue();
        return m.group(1);
    }

    @Test
    void whatIsTypedSurvivesAChoiceOfUnitsAndBack() throws Exception {
        String gauge = pressure();
        String job = "" + opened.job("Weak");
        String psi = opened.post(
                        address, "typed-in", "0000", gauge, "1.13", "units-pressure", "1", "job", job, "person", "Ines")
                .body();
        assertThat(value(psi, gauge)).isEqualTo("16.39");
        assertThat(psi).contains("<option value=\"" + job + "\" selected>").contains("value=\"1000\"");
        String was = Typed.was(gauge);
        String bar = opened.post(
                        address, "typed-in", "1000", gauge, "16.39", was, value(psi, was), "units-pressure", "0")
                .body();
        assertThat(value(bar, gauge)).isEqualTo("1.13");
        String corrected = opened.post(
                        address, "typed-in", "1000", gauge, "14.5", was, value(psi, was), "units-pressure", "0")
                .body();
        assertThat(value(corrected, gauge)).isEqualTo("0.9997");
        assertThat(opened.get("/jobs/" + job).body())
                .as("a choice keeps nothing")
                .doesNotContain("1.13 bar");
    }

    @Test
    void whatIsTypedSurvivesAChoiceOfWhoReads() throws Exception {
        String owners = opened.get(address + "?who=owner").body();
        Matcher f = field();
        while (owners.contains("name=\"" + f.group(1) + "\"")) {
            assertThat(f.find()).isTrue();
        }
        String shown = opened.post(address, f.group(1), "1,5", "show", "1", "who", "owner")
                .body();
        assertThat(value(shown, f.group(1))).isEqualTo("1,5");
        assertThat(shown).contains("<input type=\"hidden\" name=\"" + f.group(1) + "\"");
    }
}
