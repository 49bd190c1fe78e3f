package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.department.Ledger;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.Outcomes;

class DepartmentPagesTest {
    private static final String SEAL = "group: upper piston seal worn";

    @TempDir
    Path folder;

    private Opened opened;
    private Jobs jobs;

    @BeforeEach
    void open() {
        opened = new Opened(folder);
        jobs = new Jobs(opened.shop, Clock.systemUTC());
    }

    @AfterEach
    void close() {
        opened.close();
    }

    private long done(String finding) {
        long number = opened.job("it drips");
        jobs.conclude(number, finding, "", "Ines", Jobs.ANY);
        jobs.move(number, JobState.DONE, "Ines", Jobs.ANY);
        return number;
    }

    private String page() throws Exception {
        return opened.get("/department").body();
    }

    private int counting() {
        return new Ledger(new Outcomes(opened.shop, Clock.systemUTC()))
                .of("spring-lever")
                .counting();
    }

    @Test
    void withoutAJobItSaysWhatToDoFirst() throws Exception {
        assertThat(page()).contains("No job is done yet").contains("aria-current=\"page\">Department");
    }

    @Test
    void drawsRatesBesideTheShippedOnesAndSaysWhatTheyStandOn() throws Exception {
        long seal = done(SEAL);
        done("works as it should");
        String page = page();
        assertThat(page)
                .contains("2 jobs count as 1.6, shipped rates as 50.")
                .contains("class=\"often wide\"")
                .contains("class=\"before\"")
                .contains("1 of 2")
                .contains(">" + seal + "</a>")
                .contains("by word, not proved");
        assertThat(page).contains("0.8 here").contains("other causes, together");
        assertThat(page).doesNotContain(" style=\"").doesNotContain("onclick");
    }

    @Test
    void aJobIsLeftOutWithAReasonAndCountedAgainBothOnItsTimeline() throws Exception {
        long number = done(SEAL);
        assertThat(opened.post("/department/jobs/" + number, "do", "out", "reason", " ", "person", "Ines")
                        .statusCode())
                .isEqualTo(422);
        assertThat(counting()).isEqualTo(1);
        assertThat(opened.post(
                                "/department/jobs/" + number,
                                "do",
                                "out",
                                "reason",
                                "our own machine, played with",
                                "person",
                                "Ines")
                        .statusCode())
                .isEqualTo(303);
        assertThat(counting()).isZero();
        assertThat(page())
                .contains("left out: our own machine, played with")
                .contains("0 jobs count as 0.0, shipped rates as 50; 1 left out.");
        assertThat(opened.get("/jobs/" + number).body())
                .contains("Left out of the learnt rates: our own machine, played with");
        opened.post("/department/jobs/" + number, "do", "in", "person", "Ines");
        assertThat(counting()).isEqualTo(1);
        assertThat(opened.get("/jobs/" + number).body()).contains("Counts in the learnt rates again");
    }

    @Test
    void theJobsThatCountAreAFileWithoutPeople() throws Exception {
        done(SEAL);
        String file = opened.get("/department/jobs.yaml?machine=spring-lever").body();
        assertThat(file)
                .contains("machine: \"spring-lever\"")
                .contains("\"" + SEAL + "\": 0.8")
                .doesNotContain("Bakery")
                .doesNotContain("0417");
        assertThat(opened.get("/department/jobs.yaml?machine=nothing").statusCode())
                .isEqualTo(404);
    }

    @Test
    void ratesByTimeNeedADateOfPurchase() throws Exception {
        done(SEAL);
        assertThat(page()).contains("No rates by time").doesNotContain("In 100 machine years");
        String id = Long.toString(opened.machine);
        assertThat(opened.post("/department/bought", "id", id, "bought", "yesterday")
                        .statusCode())
                .isEqualTo(422);
        assertThat(opened.post("/department/bought", "id", id, "bought", "2999-01")
                        .body())
                .contains("still to come");
        String year = (LocalDate.now().getYear() - 4) + "-01";
        opened.post("/department/bought", "id", id, "bought", year);
        assertThat(page()).contains("In 100 machine years").contains("1 of 1 machines on the register");
    }
}
