package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.setting.Setting;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.Reading;
import wetside.shop.Readings;
import wetside.shop.Register;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shop;

/** What fault finding says of itself: why, why not, what nothing explains, what was normal; and while the twin runs. */
class FaultReasonsTest {
    @TempDir
    static Path folder;

    private static Shop shop;
    private static Bench bench;
    private static Browser browser;
    private static Jobs jobs;
    private static long machine;
    private static long large;
    private static Setting cache;
    private static Setting draws;

    private long number;

    @BeforeAll
    static void open() throws Exception {
        cache = new Setting("wetside.cache", folder.resolve("cache").toString());
        draws = new Setting("wetside.bench.draws", "8");
        shop = Shop.open(folder.resolve("shop"));
        bench = Bench.start(shop, Clock.systemUTC(), 0);
        browser = new Browser(bench);
        jobs = new Jobs(shop, Clock.systemUTC());
        String stand = Path.of(FaultReasonsTest.class
                        .getResource("/wetside/cli/stand.yaml")
                        .toURI())
                .toString();
        machine = machine("S 1", stand, "A", "");
        large = machine("X 1", "exchanger-two-group", "B", "230 V");
        long first = jobs.open(machine, "nothing comes", "owner");
        assertThat(within(60, "/jobs/" + first + "/fault/sharp", "ready")).startsWith("8\nready");
    }

    private static long machine(String serial, String file, String revision, String supply) {
        Register register = new Register(shop);
        long owner = register.owner("R. Osgood", "", "", "");
        return register.machine(new RegisteredMachine(
                0, serial, file, revision, supply, owner, "mains", 2e5, null, 230.0, null, null, "", "", 0));
    }

    /** The page, once it says so. */
    private static String within(int seconds, String path, String wanted) throws Exception {
        String page = browser.get(path).body();
        for (int i = 0; i < 10 * seconds && !page.contains(wanted); i++) {
            Thread.sleep(100);
            page = browser.get(path).body();
        }
        return page;
    }

    @AfterAll
    static void close() {
        bench.close();
        shop.close();
        cache.close();
        draws.close();
    }

    @BeforeEach
    void intake() throws Exception {
        number = jobs.open(machine, "The lamp is dark & nothing comes", "owner");
        browser.get(at("?who=technician"));
    }

    private String at(String rest) {
        return "/jobs/" + number + "/fault" + rest;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private String answer(String asked, String field, String value) throws Exception {
        HttpResponse<String> page = browser.post(at("/answers"), "asked", asked, field, value);
        assertThat(page.statusCode()).isEqualTo(200);
        return page.body();
    }

    private static String causes(String page) {
        return page.substring(page.indexOf("id=\"causes\""));
    }

    private static String middle(String page) {
        return page.substring(page.indexOf("id=\"step\""), page.indexOf("id=\"causes\""));
    }

    @Test
    void aCauseSaysWhyByEveryAnswerBesideWhatItShouldHaveRead() throws Exception {
        answer("power lamp", "said", "dark");
        String page = answer("pump gauge at rest, cold", "reading", "2.0");
        Matcher best = Pattern.compile("href=\"([^\"]*\\?why=[^\"]*)\"").matcher(causes(page));
        assertThat(best.find()).isTrue();
        String why = middle(browser.get(best.group(1)).body());
        assertThat(why)
                .contains("Why: ")
                .contains("Power lamp: dark")
                .containsPattern("speaks for it, (strong|some|slight)")
                .contains("How often it happens, before anything was known")
                .contains("class=\"shares")
                .doesNotContain("name=\"asked\" value=\"power lamp\"");
    }

    @Test
    void aCauseThatIsNotItSaysWhichReadingSpeaksAgainstItAndWhatWouldPartThem() throws Exception {
        answer("power lamp", "said", "lit");
        String page = answer("pump gauge at rest, cold", "reading", "0");
        assertThat(causes(page)).containsPattern("others=yes\"[^>]*>\\d+ others, together");
        String rest = middle(browser.get(at("?others=yes")).body());
        assertThat(rest).containsPattern("(?s)Works as it should</a>.{0,80}pump gauge at rest, cold: 0");
        String not =
                middle(browser.get(at("?why=" + encoded("works as it should"))).body());
        assertThat(not)
                .contains("Why not: works as it should")
                .contains("speaks most against it, beside")
                .contains("speaks against it, strong")
                .contains("class=\"rails wide\"")
                .contains("class=\"flag\"");
        // the same numbers as the session's own evidence: beside the best, the reading is drawn on both their bands
        assertThat(not.split("class=\"rails wide\"")[1]).contains("Works as it should");
        String pair = middle(
                browser.get(at("?why=" + encoded("mains: pressure too low"))).body());
        assertThat(pair).containsPattern("What would part the two:|Nothing that can still be asked|Why: ");
    }

    @Test
    void whenNoneExplainsItPairsAreOfferedRunAndShownWithBothRepairs() throws Exception {
        answer("voltage at the plug, switched off", "reading", "195");
        answer("voltage at the plug while heating", "reading", "196");
        String page = answer("pump gauge at rest, cold", "reading", "0");
        assertThat(page)
                .contains("None of the causes I know explains all of this well")
                .containsPattern("is odd beside the best of them")
                .containsPattern(">Check [^<]* again</a>")
                .contains("Try two causes at once");
        browser.post(at("/pairs"), "do", "try");
        String tried = within(60, at(""), "pairs of causes among them");
        assertThat(causes(tried)).contains("pairs of causes among them").contains("class=\"two\"");
        assertThat(causes(tried).split("class=\"mends\"")[1].split("</ul>")[0].split("<li>"))
                .hasSize(3);
        String single = browser.post(at("/pairs"), "do", "single").body();
        assertThat(causes(single)).doesNotContain("pairs of causes among them");
        assertThat(single).contains("Try two causes at once");
    }

    @Test
    void twoCausesAtOnceAreProvedAndReportedLikeOne() throws Exception {
        String file = new Register(shop).machine(machine).file();
        number = jobs.open(machine("S 2", file, "A", ""), "dark, and it drips", "owner");
        jobs.conclude(number, "lamp: dead + tap: drips", "", "Ines", Jobs.ANY);
        String page = browser.get("/jobs/" + number).body();
        Proof lamp = proof("lamp: dead");
        Proof tap = proof("tap: drips");
        assertThat(lamp.items()).isNotEqualTo(tap.items());
        for (Proof one : List.of(lamp, tap)) {
            for (Proof.Item item : one.items()) {
                assertThat(page).contains(item.what());
            }
        }
        assertThat(browser.get("/jobs/" + number + "/report.pdf").statusCode()).isEqualTo(200);
    }

    private static Proof proof(String finding) {
        RegisteredMachine m = new Register(shop).machine(machine);
        return Proof.of(Optional.of(new Models().casework(m)), finding, List.of());
    }

    @Test
    void whatThisMachineReadWhenItWasWellNarrowsItAndCanBeLeftOut() throws Exception {
        String never = browser.get(at("")).body();
        assertThat(never).doesNotContain("Narrowed by");
        Clock then = Clock.offset(Clock.systemUTC(), Duration.ofDays(-30));
        long former = new Jobs(shop, then).open(machine, "drips", "owner");
        Readings readings = new Readings(shop, then);
        readings.take(former, new Reading.Taken("left", "pump gauge at rest, cold", "2.30 bar"), "Ines", Jobs.ANY);
        assertThat(browser.get(at("")).body())
                .as("an open job says nothing of a sound machine")
                .doesNotContain("Narrowed by");
        new Jobs(shop, then).move(former, JobState.DONE, "Ines", Jobs.ANY);
        String gauge = "?step=" + encoded("pump gauge at rest, cold");
        String narrowed = browser.get(at(gauge)).body();
        assertThat(narrowed)
                .contains("Narrowed by a reading of ")
                .contains("2.30 bar")
                .contains("Leave them out");
        String without = browser.get(at("?normal=without&step=" + encoded("pump gauge at rest, cold")))
                .body();
        assertThat(without).contains("is left out").contains("Use them again");
        assertThat(whole(narrowed)).as("the band of a sound one").isLessThan(whole(without));
        // left out stays left out when something is answered
        HttpResponse<String> answered =
                browser.post(at("/answers"), "normal", "without", "asked", "power lamp", "said", "dark");
        assertThat(answered.body()).contains("is left out");
        // a part fitted since: that was another machine
        Clock since = Clock.offset(Clock.systemUTC(), Duration.ofDays(-3));
        long later = new Jobs(shop, since).open(machine, "low", "owner");
        new Jobs(shop, since).conclude(later, "mains: pressure too low", "", "Ines", Jobs.ANY);
        assertThat(browser.get(at("")).body()).doesNotContain("Narrowed by");
    }

    /** Width of the band of "works as it should" on its rail. */
    private static double whole(String page) {
        Matcher m = Pattern.compile("width=\"([0-9.]+)\" height=\"11\" class=\"\" fill=\"url\\(#hatch-w\\)\"")
                .matcher(page);
        assertThat(m.find()).as(page).isTrue();
        return Double.parseDouble(m.group(1));
    }

    @Test
    void aMachineTheTwinHasNeverRunIsAskedAboutAtOnce() throws Exception {
        long cold = jobs.open(large, "Water runs out under it", "owner");
        String fault = "/jobs/" + cold + "/fault";
        String page = browser.get(fault).body();
        assertThat(middle(page))
                .contains("The twin is running every cause of this machine once")
                .containsPattern("\\d+ of \\d{3} causes")
                .containsIgnoringCase("water under the machine")
                .contains("name=\"said\"");
        assertThat(causes(within(60, fault, "Causes not run yet"))).contains("Causes not run yet");
        String stopped = browser.post(fault + "/work", "do", "stop").body();
        assertThat(stopped).contains("Stopped after").contains("Go on");
        assertThat(browser.get(fault + "/sharp").body()).contains("paused\nready");
        HttpResponse<String> answered = browser.post(fault + "/answers", "asked", "power lamp", "said", "lit");
        assertThat(answered.statusCode()).isEqualTo(200);
        // those that were being run when it was stopped may come in meanwhile
        assertThat(browser.get(fault + "/sharp").body()).contains("paused\nready");
        assertThat(browser.post(fault + "/work", "do", "on").body()).contains("Stop and keep");
        browser.post(fault + "/work", "do", "stop");
    }
}
