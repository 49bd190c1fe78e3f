package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.casework.Installed;
import wetside.department.Counted;
import wetside.department.Ledger;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Procedures;
import wetside.setting.Setting;
import wetside.shop.Answered;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.Outcomes;
import wetside.shop.Register;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shop;

/** Fault finding over HTTP, on a machine so small that all its causes are computed while the test waits. */
class FaultPagesTest {
    private static final Pattern PERCENT = Pattern.compile("<b>([<>]?\\d+) %</b>");

    @TempDir
    static Path folder;

    private static Shop shop;
    private static Bench bench;
    private static Jobs jobs;
    private static long machine;
    private static String file;
    private static Setting cache;
    private static Setting draws;

    private long number;

    @BeforeAll
    static void open() throws Exception {
        cache = new Setting("wetside.cache", folder.resolve("cache").toString());
        draws = new Setting("wetside.bench.draws", "8");
        shop = Shop.open(folder.resolve("shop"));
        bench = Bench.start(shop, Clock.systemUTC(), 0);
        jobs = new Jobs(shop, Clock.systemUTC());
        Register register = new Register(shop);
        Path stand = Path.of(
                FaultPagesTest.class.getResource("/wetside/cli/stand.yaml").toURI());
        file = stand.toString();
        long owner = register.owner("R. Osgood", "", "", "");
        machine = register.machine(new RegisteredMachine(
                0, "S 1", stand.toString(), "A", "", owner, "mains", 2e5, null, 230.0, null, null, "", "", 0));
        long first = jobs.open(machine, "nothing comes", "owner");
        for (int i = 0;
                i < 600 && !get("/jobs/" + first + "/fault/sharp").body().contains("ready");
                i++) {
            Thread.sleep(100);
        }
        assertThat(get("/jobs/" + first + "/fault/sharp").body()).startsWith("8\nready");
    }

    @AfterAll
    static void close() {
        bench.close();
        shop.close();
        cache.close();
        draws.close();
    }

    @BeforeEach
    void intake() {
        number = jobs.open(machine, "The lamp is dark & nothing comes", "owner");
    }

    private static HttpResponse<String> get(String path) throws Exception {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + bench.port() + path))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    private static HttpResponse<String> post(String path, String... fields) throws Exception {
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < fields.length; i += 2) {
            body.append(i == 0 ? "" : "&")
                    .append(fields[i])
                    .append('=')
                    .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return HttpClient.newBuilder()
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + bench.port() + path))
                                .header("Content-Type", "application/x-www-form-urlencoded")
                                .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
    }

    private String at(String rest) {
        return "/jobs/" + number + "/fault" + rest;
    }

    private static String known(String page) {
        return page.substring(page.indexOf("id=\"known\""), page.indexOf("id=\"step\""));
    }

    private static String causes(String page) {
        return page.substring(page.indexOf("id=\"causes\""));
    }

    @Test
    void beginsWithTheComplaintAStepAndTheCauses() throws Exception {
        String page = get(at("")).body();
        assertThat(page)
                .contains("The lamp is dark &amp; nothing comes")
                .contains("First step")
                .contains("Why this step");
        assertThat(causes(page)).contains("others, together").contains("From 8 simulated machines");
        assertThat(PERCENT.matcher(causes(page)).find()).isTrue();
        assertThat(page).doesNotContain(" style=\"").doesNotContain("onclick");
    }

    @Test
    void anAnswerIsKeptMovesTheCausesAndCanBeTakenBack() throws Exception {
        String before = get(at("")).body();
        HttpResponse<String> answered = post(at("/answers"), "asked", "power lamp", "said", "dark");
        assertThat(answered.statusCode()).isEqualTo(200);
        assertThat(known(answered.body()))
                .contains("Power lamp")
                .contains("Dark")
                .containsPattern("told (much|some|little)");
        assertThat(causes(answered.body())).isNotEqualTo(causes(before)).contains("power lamp: dark");
        String changed = post(at("/answers"), "asked", "power lamp", "said", "don't know")
                .body();
        assertThat(known(changed)).contains("Don’t know").contains(">nothing<").doesNotContain(">Dark<");
        String undone = post(at("/back")).body();
        assertThat(known(undone)).contains("0 answers");
        assertThat(first(undone)).isEqualTo(first(before));
        assertThat(new Answered(shop, Clock.systemUTC())
                        .all(jobs.byNumber(number).orElseThrow().id()))
                .hasSize(2)
                .allSatisfy(a -> assertThat(a.takenBack()).isNotEmpty());
    }

    @Test
    void anOwnerWhoseMachineSmellsBurntIsToldToLeaveItOffAndTriesNothing() throws Exception {
        number = jobs.open(machine, "It smells burnt", "owner");
        String phone = get(at("")).body();
        assertThat(phone)
                .contains("Tell the owner first")
                .contains("pull the plug")
                .contains("Nothing is tried with it on the telephone")
                .doesNotContain("class=\"pad\"");
        String seen = get(at("?step=power+lamp")).body();
        assertThat(seen).contains("Tell the owner first").contains("class=\"pad\"");
        assertThat(get(at("?who=technician")).body())
                .doesNotContain("Tell the owner first")
                .contains("class=\"pad\"");
        number = jobs.open(machine, "I got a shock from the lever", "owner");
        assertThat(get(at("")).body()).contains("touch neither the machine");
    }

    @Test
    void whatIsAnsweredAgainAfterARepairStandsBesideWhatWasSaidBefore() throws Exception {
        post(at("/answers"), "asked", "power lamp", "said", "dark");
        String done = Installed.of(
                        MachineFile.read(Path.of(file), Kinds.declarations()).newest(), Installation.UNKNOWN)
                .casework(Procedures.bundled())
                .candidates()
                .stream()
                .filter(c -> c.component().equals(Optional.of("lamp")))
                .findFirst()
                .orElseThrow()
                .cause()
                .repair()
                .id();
        assertThat(known(
                        post(at("/answers"), "asked", done, "said", "still bad").body()))
                .contains("Done, still there");
        String again =
                post(at("/answers"), "asked", "power lamp", "said", "dark").body();
        assertThat(known(again)).contains("Power lamp, before the repair").contains("3 answers");
        assertThat(known(post(at("/back"), "asked", "power lamp").body()))
                .doesNotContain("before the repair")
                .contains("Power lamp")
                .contains("2 answers");
    }

    private static String first(String page) {
        Matcher m = PERCENT.matcher(causes(page));
        assertThat(m.find()).isTrue();
        return m.group();
    }

    @Test
    void aNumberIsDrawnOnTheRailsAndSaysWhatItWouldLeave() throws Exception {
        String id = "pump gauge at rest, cold";
        String step = get(at("?step=" + URLEncoder.encode(id, StandardCharsets.UTF_8)))
                .body();
        assertThat(step)
                .contains("class=\"rails wide\"")
                .contains("name=\"reading\"")
                .contains("Can’t reach it");
        String typed = get(at("/expect?asked=" + URLEncoder.encode(id, StandardCharsets.UTF_8) + "&reading=2,0"))
                .body();
        assertThat(typed).contains("class=\"flag\"").contains("would leave").containsPattern("(fits|hardly|no)<");
        assertThat(typed)
                .isNotEqualTo(get(at("/expect?asked=" + URLEncoder.encode(id, StandardCharsets.UTF_8) + "&reading=0"))
                        .body());
        HttpResponse<String> saved = post(at("/answers"), "asked", id, "reading", "2,0");
        assertThat(known(saved.body())).contains("2.00 bar");
        HttpResponse<String> absurd = post(at("/answers"), "asked", id, "reading", "800");
        assertThat(absurd.statusCode()).isEqualTo(422);
        assertThat(absurd.body()).contains("cannot be 800");
        assertThat(post(at("/answers"), "asked", id, "reading", "lots").statusCode())
                .isEqualTo(422);
    }

    @Test
    void ownersAreNeverSentInside() throws Exception {
        String technician = get(at("?who=technician")).body();
        Matcher inside = Pattern.compile("\\?step=([^\"&]*)\"[^>]*>").matcher(technician);
        String owner = get(at("?who=owner")).body();
        int closed = 0;
        while (inside.find()) {
            if (!owner.contains("?step=" + inside.group(1) + "\"")) {
                String page = get(at("?who=owner&step=" + inside.group(1))).body();
                assertThat(page)
                        .doesNotContain("class=\"level technician\"")
                        .doesNotContain("class=\"level qualified\"");
                closed++;
            }
        }
        assertThat(closed).isPositive();
        assertThat(owner).doesNotContain("class=\"level technician\"");
    }

    @Test
    void aFindingIsSavedToTheJob() throws Exception {
        assertThat(post(at("/finding")).statusCode()).isEqualTo(422);
        String page = post(at("/answers"), "asked", "mains cock stands", "said", "shut")
                .body();
        page = post(at("/answers"), "asked", "pump gauge at rest, cold", "reading", "0")
                .body();
        page = post(at("/answers"), "asked", "power lamp", "said", "lit").body();
        assertThat(page).contains("Finding:").contains("Save the finding to the job");
        String saved = post(at("/finding")).body();
        assertThat(saved).contains("Saved to the job");
        assertThat(get("/jobs/" + number).body()).contains("Finding");
        assertThat(jobs.byNumber(number).orElseThrow().finding()).isNotEmpty();
    }

    @Test
    void freeOneCarriesItsAnswersInTheAddress() throws Exception {
        assertThat(get("/fault").body()).contains("Which machine is it?");
        assertThat(get("/fault?machine=../../etc/passwd").statusCode()).isEqualTo(422);
        HttpResponse<String> page =
                post("/fault/answers", "machine", "thermoblock", "asked", "power lamp", "said", "don't know");
        assertThat(page.uri().getQuery()).contains("known=power+lamp~don");
        assertThat(known(page.body())).contains("1 answer").contains("Don’t know");
    }

    /** Everything under "Causes" but whose rates they are. */
    private String causesNow() throws Exception {
        String all = causes(get(at("")).body());
        return all.substring(0, all.indexOf("class=\"rates\""));
    }

    @Test
    void aProvedJobMovesTheNextCaseAndReopenedItNeverWas() throws Exception {
        String before = causesNow();
        assertThat(causes(get(at("")).body())).contains("no closed job of this shop on this model counts yet");
        List<Long> closed = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            long other = jobs.open(machine, "the lamp stays dark", "owner");
            post("/jobs/" + other + "/finding", "cause", "lamp: dead", "version", version(other));
            for (String proof : new Ledger(new Outcomes(shop, Clock.systemUTC()))
                    .of(file)
                    .model()
                    .orElseThrow()
                    .proofs()
                    .get("lamp: dead")) {
                post("/jobs/" + other + "/proof", "what", proof, "result", "passed", "version", version(other));
            }
            move(other, JobState.DONE);
            closed.add(other);
        }
        String page = causes(get(at("")).body());
        assertThat(page)
                .contains("shipped rates count as 50 jobs, beside 6 jobs of this shop.")
                .contains("Use shipped rates only");
        assertThat(causesNow()).isNotEqualTo(before).contains("more often here: ");

        assertThat(causes(post(at("/rates")).body())).contains("Shipped rates only; 6 jobs of this shop left aside.");
        assertThat(causesNow()).isEqualTo(before);
        assertThat(get("/jobs/" + number).body()).contains("Fault finding by shipped rates only");
        post(at("/rates"));
        assertThat(causesNow()).isNotEqualTo(before);

        for (long other : closed) {
            move(other, JobState.ON_BENCH);
        }
        assertThat(causesNow()).isEqualTo(before);
    }

    private static String version(long job) {
        return "" + jobs.byNumber(job).orElseThrow().version();
    }

    private static void move(long job, JobState to) throws Exception {
        assertThat(post(
                                "/jobs/" + job + "/state",
                                "state",
                                to.name(),
                                "why",
                                "no tester at hand",
                                "version",
                                version(job))
                        .statusCode())
                .isEqualTo(200);
    }

    /** What was believed is kept with the finding, and counts once the job is done. */
    @Test
    void aFindingKeepsWhatWasBelieved() throws Exception {
        post(at("/answers"), "asked", "mains cock stands", "said", "shut");
        post(at("/answers"), "asked", "pump gauge at rest, cold", "reading", "0");
        post(at("/answers"), "asked", "power lamp", "said", "lit");
        post(at("/finding"));
        move(number, JobState.DONE);
        Counted counted = new Ledger(new Outcomes(shop, Clock.systemUTC()))
                .of(file)
                .jobs()
                .get(0);
        assertThat(counted.by()).isEqualTo(Counted.By.BELIEF);
        assertThat(counted.closed().credit().get(counted.outcome().finding())).isBetween(0.8, 1.0);
        assertThat(counted.closed().whole()).isBetween(0.8, 1.0001);
        move(number, JobState.ON_BENCH);
    }

    @Test
    void aFreeOneStandsWhereItIsSaidToStand() throws Exception {
        String usual = get("/fault?machine=exchanger-lever&who=technician").body();
        assertThat(usual)
                .contains("Where it stands")
                .contains("name=\"voltage\"")
                .contains("Built for");
        String there = get("/fault?machine=exchanger-lever&voltage=118&altitude=1200+m&known=power+lamp~lit")
                .body();
        assertThat(there)
                .contains("for 120 V")
                .contains("<dd>118 V</dd>")
                .contains("<dd>1200 m</dd>")
                .contains("name=\"voltage\" value=\"118 V\"");
        assertThat(known(there)).contains("1 answer").contains("name=\"known\" value=\"power lamp~lit\"");
        HttpResponse<String> absurd = get("/fault?machine=exchanger-lever&voltage=12+V");
        assertThat(absurd.statusCode()).isEqualTo(422);
        assertThat(absurd.body()).contains("voltage lies between");
        assertThat(get("/fault?machine=exchanger-lever&altitude=high").statusCode())
                .isEqualTo(422);
    }

    /** "The lamp is dark" is no reading yet: which lamp, and how dark, is asked before anything else. */
    @Test
    void theOwnersWordsAreMadeExactFirst() throws Exception {
        String page = get(at("")).body();
        String step = page.substring(page.indexOf("id=\"step\""), page.indexOf("id=\"causes\""));
        assertThat(step).contains("lamp").contains("First they are made exact");
        post(at("/answers"), "asked", "power lamp", "said", "dark");
        assertThat(get(at("")).body()).doesNotContain("First they are made exact");
    }

    /** What was told in fault finding is part of the job: as found in its timeline, struck there once it is taken back. */
    @Test
    void whatWasToldStandsInTheTimeline() throws Exception {
        post(at("/answers"), "asked", "pump gauge at rest, cold", "reading", "1.9");
        post(at("/answers"), "asked", "power lamp", "said", "lit");
        post(at("/back"), "asked", "power lamp");
        String job = get("/jobs/" + number).body();
        String timeline = job.substring(job.indexOf("class=\"timeline"));
        assertThat(timeline)
                .contains("Pump gauge at rest, cold")
                .contains("as found")
                .contains("<b>1.9 bar</b>");
        assertThat(timeline).contains("<s>power lamp: lit</s>");
    }
}
