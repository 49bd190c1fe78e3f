package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.Register;
import wetside.shop.RegisteredMachine;
import wetside.shop.Shop;

/** Intake, rack and search in the demo workshop. */
class IntakeTest {
    private static final Clock MORNING = Clock.fixed(Instant.parse("2026-03-10T09:00:00Z"), ZoneOffset.UTC);

    @TempDir
    static Path folder;

    private static Shop shop;
    private static Bench bench;
    private static Browser browser;

    @BeforeAll
    static void open() {
        shop = Shop.open(folder);
        assertThat(Demo.fill(shop, MORNING)).isTrue();
        assertThat(Demo.fill(shop, MORNING)).isFalse();
        bench = Bench.start(shop, MORNING, 0);
        browser = new Browser(bench);
    }

    @AfterAll
    static void close() {
        bench.close();
        shop.close();
    }

    @Test
    void theDemoHasJobsInEveryStateAndEveryMachineOpens() throws Exception {
        Jobs jobs = new Jobs(shop, MORNING);
        Models models = new Models();
        assertThat(jobs.openTickets()).hasSize(13);
        for (JobState state : JobState.values()) {
            assertThat(state == JobState.DONE || jobs.openTickets().stream().anyMatch(t -> t.state() == state))
                    .as(state.words())
                    .isTrue();
        }
        assertThat(jobs.done(100, 0)).hasSize(27);
        assertThat(jobs.openTickets()).allMatch(t -> !t.moved().isAfter(MORNING.instant()));
        assertThat(browser.get("/jobs").body()).contains("13 open", "▲ 4 days late", "Tidehouse bar");
        for (long number = 2001; number <= 2040; number++) {
            HttpResponse<String> page = browser.get("/jobs/" + number);
            assertThat(page.statusCode()).as("job " + number).isEqualTo(200);
            String findings = jobs.byNumber(number).orElseThrow().finding();
            boolean done = jobs.byNumber(number).orElseThrow().state() == JobState.DONE;
            if (!findings.isEmpty()) {
                RegisteredMachine machine = new Register(shop)
                        .machine(jobs.byNumber(number).orElseThrow().machineId());
                assertThat(Proof.cause(models.casework(machine), findings))
                        .as(findings)
                        .isPresent();
            }
            assertThat(page.body())
                    .contains("Job " + number)
                    .contains(done ? "Report for the owner" : findings.isEmpty() ? "Find the fault" : "Finding");
        }
    }

    @Test
    void aMachineIsRecognisedAndTheComplaintReadForSigns() throws Exception {
        String page = browser.get("/intake?who=H+21+0402&complaint=Steam+comes+out+underneath+when+I+switch+it+on")
                .body();
        assertThat(page)
                .contains("Fellmoor Exchanger Lever, revision B", "A. Lindqvar, tank, 3 jobs before")
                .contains("value=\"steam from the machine while heating\"", "value=\"warm-up\"")
                .contains("Say now", "switch off");
        assertThat(browser.get("/intake?who=lindq").body()).contains("data-who=\"H 21 0402\"");
        assertThat(browser.get("/intake?who=A.+Lindqvar").body()).contains("knownmachine");
        assertThat(browser.get("/intake?who=H+21+0402&complaint=there+was+a+spark")
                        .body())
                .contains("pull the plug");
        assertThat(browser.get("/intake?who=H+21+0402&complaint=it+smells+hot").body())
                .contains("pull the plug");
        assertThat(browser.get("/intake?who=H+21+0402&complaint=it+tingles+when+I+touch+it")
                        .body())
                .contains("touch neither the machine", "fuse box")
                .doesNotContain("pull the plug");
        assertThat(browser.get("/intake?who=H+21+0402&complaint=it+is+blue").body())
                .doesNotContain("Say now");
    }

    @Test
    void aNewMachineIsEnteredWithItsJob() throws Exception {
        HttpResponse<String> unknown = browser.post("/jobs", "who", "Z 99 0001", "complaint", "it drips");
        assertThat(unknown.statusCode()).isEqualTo(422);
        assertThat(unknown.body()).contains("is no serial on the register", "it drips</textarea>");
        HttpResponse<String> page = browser.post(
                "/jobs",
                "who",
                "Z 99 0001",
                "complaint",
                "it drips",
                "making",
                "spring-lever|B|230 V",
                "fed",
                "tank",
                "owner",
                "Q. Newcome",
                "phone",
                "0100 1",
                "sign",
                "drips from the group between shots",
                "when",
                "idle",
                "then",
                "save");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("Fellmoor Spring, revision B", "Q. Newcome", "“it drips”")
                .contains("drips from the group between shots. When: idle");
        assertThat(browser.post("/jobs", "who", "Z 99 0002", "complaint", "x", "making", "no-such|B|", "owner", "Q")
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void searchFindsJobsMachinesOwnersAndParts() throws Exception {
        assertThat(browser.get("/search?q=needle+gush").body()).contains(">2038</a>");
        assertThat(browser.get("/search?q=osgood").body()).contains("Owners", "C 24 0718", ">2038</a>");
        assertThat(browser.get("/search?q=H+21").body()).contains("Machines", "Fellmoor Exchanger Lever");
        assertThat(browser.get("/search?q=FM-2107").body()).contains("rotary vane pump", "A 1");
        assertThat(browser.get("/search?q=zzzz").body()).contains("Nothing has all these words");
        assertThat(browser.get("/search?q=%22%27%3B--").statusCode()).isEqualTo(200);
        assertThat(browser.get("/done?page=1").body()).contains("2001").doesNotContain(">2040<");
    }
}
