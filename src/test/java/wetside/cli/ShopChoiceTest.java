package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.department.JobsFile;
import wetside.department.Practice;
import wetside.diagnosis.learning.ClosedJob;
import wetside.shop.JobState;
import wetside.shop.Jobs;
import wetside.shop.Registered;
import wetside.shop.Shop;

/** Fault finding on the command line with what a bench has closed. */
class ShopChoiceTest {
    @TempDir
    Path folder;

    private Shell.Done diagnose(String... more) {
        String[] all = new String[5 + more.length];
        System.arraycopy(new String[] {"diagnose", Shell.STAND, "--draws", "8", "--json"}, 0, all, 0, 5);
        System.arraycopy(more, 0, all, 5, more.length);
        return Shell.typed("power lamp: dark\nquit\n", all);
    }

    @Test
    void closedJobsOfABenchThatIsOpenMoveTheCauses() {
        diagnose(); // a machine new to the cache answers from the first draws
        Shell.Done shipped = diagnose();
        try (Shop shop = Shop.open(folder)) {
            Shell.Done none = diagnose("--shop", folder.toString());
            assertThat(bare(none).replace("\"shopJobs\":0,", "").equals(bare(shipped)))
                    .as("no jobs are the shipped rates")
                    .isTrue();
            long machine = Registered.machine(shop, "S 1", Shell.STAND, "A", "", "O", "mains");
            Jobs jobs = new Jobs(shop, Clock.systemUTC());
            for (int i = 0; i < 30; i++) {
                long number = jobs.open(machine, "dark", "Ines");
                jobs.conclude(number, "lamp: dead", "", "Ines", Jobs.ANY);
                jobs.move(number, JobState.DONE, "Ines", Jobs.ANY);
            }
            Shell.Done learnt = diagnose("--shop", folder.toString());
            assertThat(learnt.out()).contains("\"shopJobs\" : 30").contains("\"often\"");
            assertThat(share(learnt.out())).isGreaterThan(share(shipped.out()) + 0.05);
        }
        assertThat(diagnose("--shop", folder.resolve(Shop.FILE).toString()).out())
                .contains("\"shopJobs\" : 30");
    }

    private static String bare(Shell.Done done) {
        return done.out().replaceAll("\\s", "");
    }

    /** Of the lamp that is dead. */
    private static double share(String json) {
        int share = json.indexOf("\"share\" : ", json.indexOf("\"lamp: dead\"")) + 10;
        return Double.parseDouble(
                json.substring(share, json.indexOf(',', share)).strip());
    }

    @Test
    void jobsSavedAsAFileCountLikewise() throws IOException {
        Path file = folder.resolve("jobs.yaml");
        ClosedJob job = ClosedJob.proved("", Practice.month(Instant.now()), "lamp: dead");
        Files.writeString(file, new JobsFile("stand", Collections.nCopies(30, job)).write());
        assertThat(diagnose("--shop", file.toString()).out())
                .contains("\"shopJobs\" : 30")
                .contains("\"often\"");
        Files.writeString(file, new JobsFile("thermoblock", List.of(job)).write());
        assertThat(diagnose("--shop", file.toString()).err()).contains("has jobs on thermoblock, not on stand");
    }

    @Test
    void whatIsNoShopIsToldAndNotMade() {
        Shell.Done done = diagnose("--shop", folder.resolve("nowhere").toString());
        assertThat(done.exitCode()).isEqualTo(2);
        assertThat(done.err()).contains("--shop: there is no workshop in");
        assertThat(folder.resolve("nowhere")).doesNotExist();
    }
}
