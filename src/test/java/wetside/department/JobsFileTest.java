package wetside.department;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.diagnosis.learning.ClosedJob;
import wetside.machine.BadFile;

class JobsFileTest {
    @TempDir
    Path folder;

    private JobsFile read(String text) throws IOException {
        Path file = folder.resolve("jobs.yaml");
        Files.writeString(file, text);
        return JobsFile.read(file);
    }

    @Test
    void whatIsWrittenIsReadBack() throws IOException {
        int december = Practice.month(Instant.parse("2025-12-31T12:00:00Z"));
        JobsFile jobs = new JobsFile(
                "twin-boiler-lever",
                List.of(
                        ClosedJob.proved("", december, "pump: worn vanes"),
                        ClosedJob.unproved(
                                "steam, \"wet\"",
                                december + 1,
                                Map.of("a \\ b: c", 0.1 + 0.2, "works as it should", 0.5))));
        assertThat(jobs.write()).contains("closed: 2025-12,").contains("closed: 2026-01,");
        assertThat(read(jobs.write())).isEqualTo(jobs);
        JobsFile none = new JobsFile("twin-boiler-lever", List.of());
        assertThat(read(none.write())).isEqualTo(none);
    }

    @Test
    void nonsenseIsToldWithItsPlace() {
        assertThatThrownBy(() ->
                        read("wetside jobs: 1\nmachine: x\njobs:\n  - {closed: 2026-03, causes: {\"a: b\": 1.2}}\n"))
                .isInstanceOf(BadFile.class)
                .hasMessageContaining("above 0 and at most 1");
        assertThatThrownBy(
                        () -> read(
                                "wetside jobs: 1\nmachine: x\njobs:\n  - {closed: 2026-03, causes: {\"a: b\": 0.7, \"a: c\": 0.7}}\n"))
                .hasMessageContaining("more than the whole job");
        assertThatThrownBy(() -> read("wetside case: 1\nmachine: x\n")).isInstanceOf(BadFile.class);
    }
}
