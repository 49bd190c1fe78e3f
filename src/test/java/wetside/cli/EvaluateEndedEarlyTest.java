package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Ctrl-C is a signal to a process, so there has to be one. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "there is no such signal")
class EvaluateEndedEarlyTest {
    private static final int MANY = 90_000;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"INT", "TERM"})
    void aSignalPrintsWhatThereIs(String signal) throws IOException, InterruptedException {
        assumeFalse(
                signal.equals("INT") && isInterruptIgnored(),
                "started behind a shell, where nothing that is started hears Ctrl-C");
        JsonNode told = ended(signal, "Playing jobs", 3000);
        assertThat(told.get("incomplete").asBoolean()).isTrue();
        assertThat(told.get("wanted").asInt()).isEqualTo(MANY);
        assertThat(told.get("jobs").asInt()).isBetween(1, MANY - 1);
        assertThat(told.get("played").size()).isEqualTo(told.get("jobs").asInt());
        assertThat(told.get("policies").get("likeliest").has("oursCosts")).isTrue();
    }

    /** A shell's background jobs, and all they start, ignore it: bit 2 of the mask. */
    private static boolean isInterruptIgnored() throws IOException {
        Path status = Path.of("/proc/self/status");
        return Files.exists(status)
                && Files.readAllLines(status).stream()
                        .filter(l -> l.startsWith("SigIgn:"))
                        .anyMatch(l -> (Long.parseUnsignedLong(l.substring(7).strip(), 16) & 2) != 0);
    }

    @Test
    void beforeAnyJobItSaysThatThereIsNone() throws IOException, InterruptedException {
        JsonNode told = ended("TERM", "Running the twin", 0);
        assertThat(told.get("incomplete").asBoolean()).isTrue();
        assertThat(told.get("jobs").asInt()).isZero();
    }

    private JsonNode ended(String signal, String when, long later) throws IOException, InterruptedException {
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
            while (!Files.readString(err).contains(when) && System.nanoTime() < end) {
                Thread.sleep(20);
            }
            Thread.sleep(later);
            new ProcessBuilder("kill", "-" + signal, Long.toString(process.pid()))
                    .start()
                    .waitFor();
            assertThat(process.waitFor(90, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroyForcibly();
        }
        return JsonMapper.builder().build().readTree(Files.readString(out));
    }
}
