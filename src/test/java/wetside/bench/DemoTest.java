package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.casework.Candidates;
import wetside.shop.Entry;
import wetside.shop.Job;
import wetside.shop.JobState;
import wetside.shop.Shop;

/** The invented workshop works as the bench wants it of others. */
class DemoTest {
    @TempDir
    static Path folder;

    @Test
    void noMachineThatWasAtFaultWentUnprovedInSilence() {
        try (Shop shop = Shop.open(folder)) {
            assertThat(Demo.fill(shop, Clock.systemUTC())).isTrue();
            Workshop workshop = new Workshop(shop, Clock.systemUTC());
            List<Job> done = workshop.jobs().done(100, 0).stream()
                    .map(t -> workshop.jobs().byNumber(t.number()).orElseThrow())
                    .filter(j -> !j.finding().isEmpty() && !j.finding().equals(Candidates.HEALTHY))
                    .toList();
            assertThat(done).hasSizeGreaterThan(20);
            assertThat(done).allSatisfy(job -> {
                List<Entry> timeline = workshop.jobs().timeline(job.id());
                List<String> open = Proof.of(
                                JobView.casework(workshop, workshop.register().machine(job.machineId())),
                                job.finding(),
                                timeline)
                        .open();
                boolean said = timeline.stream()
                        .anyMatch(e -> e.sort().equals("state")
                                && e.words().startsWith(JobState.DONE.words() + ". ")
                                && open.stream()
                                        .allMatch(o -> e.words().toLowerCase().contains(o)));
                assertThat(open.isEmpty() || said)
                        .as("%s %s: %s", job.number(), job.finding(), open)
                        .isTrue();
            });
        }
    }
}
