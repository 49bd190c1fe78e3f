package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C is a signal to a process, so there has to be one. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "there is no such signal")
class EvaluateEndedEarlyTest {
    private static final int MANY = 90_000;

    @TempDir
    Path folder;

    @Test
    void ctrlCPrintsWhatThereIs() throws IOException, InterruptedException {
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Dwetside.cache=" + folder.resolve("cache"),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "wetside.cli.Wetside",
                        "evaluate",
                        Shell.STAND,
                        "--draws=8",
                        "--cases=" + MANY,
                        "--policies=likeliest",
                        "--json")
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        try {
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(120);
            while (!Files.readString(err).contains("Playing jobs") && System.nanoTime() < end) {
                Thread.sleep(100);
            }
            Thread.sleep(1500);
            new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
                    .start()
                    .waitFor();
            assertThat(process.waitFor(90, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        String told = Files.readString(out);
        assertThat(told).as(Files.readString(err)).contains("\"oursCosts\"").endsWith("}\n");
        assertThat(told.split("\"outcomes\"")).hasSizeBetween(2, MANY);
    }
}
