package wetside.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.casework.ProgramCode;
import wetside.setting.Setting;

/** Stored signatures are a convenience: damaged, locked or unwritable, the answer is the same. */
class CacheTest {
    private static final String RUNNING = "Running the twin: ";
    private static final String PAIRS = "Running pairs of causes: ";

    @TempDir
    Path folder;

    private Path given;

    @BeforeEach
    void aCase() throws IOException {
        given = Shell.standCase(
                folder.resolve("case.yaml"),
                "installation: {fed from: mains}\nfound:\n  pump gauge at rest, cold: 0.1 bar\n");
    }

    private Shell.Done diagnose(Path cache) {
        Shell.Done done = Shell.cached(cache, "diagnose", given.toString(), "--draws", "8");
        assertThat(done.exitCode()).as(done.err()).isEqualTo(Wetside.FINDINGS);
        return done;
    }

    private static Path stored(Path cache) throws IOException {
        try (Stream<Path> files = Files.list(cache)) {
            List<Path> found =
                    files.filter(f -> f.toString().endsWith(".signatures")).toList();
            assertThat(found).hasSize(1);
            return found.get(0);
        }
    }

    @Test
    void theSecondTimeNothingIsComputed() {
        Shell.Done first = diagnose(folder.resolve("c"));
        assertThat(first.err()).contains(RUNNING, "First look: water cock");
        Shell.Done second = diagnose(folder.resolve("c"));
        assertThat(second.err()).isEmpty();
        assertThat(second.out()).isEqualTo(first.out());
    }

    @Test
    void whateverIsDamagedIsComputedAgain() throws IOException {
        Path cache = folder.resolve("c");
        Shell.Done whole = diagnose(cache);
        Path file = stored(cache);
        byte[] good = Files.readAllBytes(file);
        byte[] garbage = good.clone();
        Arrays.fill(garbage, good.length / 3, good.length, (byte) 0x5A);
        byte[] version = good.clone();
        version[20] ^= 0x0F;
        byte[] oneBit = good.clone();
        oneBit[good.length - 20] ^= 1;
        byte[] longer = Arrays.copyOf(good, good.length + 9);
        for (byte[] damaged :
                List.of(Arrays.copyOf(good, good.length / 2), garbage, version, oneBit, longer, new byte[0])) {
            Files.write(file, damaged);
            Shell.Done again = diagnose(cache);
            assertThat(again.err()).contains(RUNNING);
            assertThat(again.out()).isEqualTo(whole.out());
            assertThat(Files.readAllBytes(file)).isEqualTo(good);
        }
    }

    private Shell.Done twoCauses(Path cache, String mains) throws IOException {
        Path two = Shell.standCase(
                folder.resolve("two.yaml"),
                "installation: {fed from: mains, voltage: " + mains + "}\nfound:\n"
                        + "  pump gauge at rest, cold: 0.9 bar\n  pump gauge at rest, hot: 0.9 bar\n"
                        + "  power lamp: dark\n  voltage at the plug while heating: 230 V\n"
                        + "  power drawn while heating: 0 W\n");
        Shell.Done done = Shell.cached(cache, "diagnose", two.toString(), "--draws", "16");
        assertThat(done.exitCode()).as(done.err()).isEqualTo(Wetside.FINDINGS);
        return done;
    }

    private static Path pairs(Path cache) throws IOException {
        try (Stream<Path> files = Files.list(cache)) {
            return files.filter(f -> f.toString().endsWith(".pairs"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    @Test
    void pairsOnceRunAreNotRunAgain() throws IOException {
        Path cache = folder.resolve("c");
        Shell.Done first = twoCauses(cache, "230 V");
        assertThat(first.err()).contains(PAIRS);
        Shell.Done second = twoCauses(cache, "230 V");
        assertThat(second.err()).isEmpty();
        assertThat(second.out()).isEqualTo(first.out()).contains("lamp: dead");
    }

    @Test
    void pairsThatAreDamagedOrOfAnotherMachineAreRunAgain() throws IOException {
        Path cache = folder.resolve("c");
        Shell.Done whole = twoCauses(cache, "230 V");
        Path file = pairs(cache);
        byte[] good = Files.readAllBytes(file);
        Path other = folder.resolve("o");
        twoCauses(other, "235 V");
        byte[] oneBit = good.clone();
        oneBit[good.length / 2] ^= 4;
        byte[] endless = good.clone();
        Arrays.fill(endless, 90, 120, (byte) 0x7F);
        byte[] longer = Arrays.copyOf(good, good.length + 9);
        for (byte[] damaged : List.of(
                Arrays.copyOf(good, good.length - 9),
                Arrays.copyOf(good, 30),
                oneBit,
                endless,
                longer,
                new byte[0],
                Files.readAllBytes(pairs(other)))) {
            Files.write(file, damaged);
            Shell.Done again = twoCauses(cache, "230 V");
            assertThat(again.err()).contains(PAIRS).doesNotContain(RUNNING);
            assertThat(again.out()).isEqualTo(whole.out());
            assertThat(Files.readAllBytes(file)).hasSameSizeAs(good);
        }
    }

    @Test
    void aFolderThatCannotBeWrittenCostsTimeAndNoAnswer() throws IOException {
        Shell.Done whole = diagnose(folder.resolve("c"));
        Path file = Files.writeString(folder.resolve("file"), "not a folder");
        Shell.Done done = diagnose(file.resolve("c"));
        assertThat(done.out()).isEqualTo(whole.out());
        assertThat(done.err()).containsOnlyOnce("The signatures cannot be kept").contains("computed again");
        assertThat(file).hasContent("not a folder");
    }

    @Test
    void theLibrariesUsedLastAreKept() throws IOException {
        Path cache = Files.createDirectory(folder.resolve("c"));
        for (int i = 0; i < 40; i++) {
            Path old = Files.write(cache.resolve("old" + i + ".signatures"), new byte[1]);
            old.toFile().setLastModified(1_000_000_000_000L + 1000L * i);
        }
        diagnose(cache);
        try (Stream<Path> files = Files.list(cache)) {
            List<String> left = files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".signatures"))
                    .toList();
            assertThat(left).hasSize(24).contains("old39.signatures").doesNotContain("old10.signatures");
            assertThat(left).anyMatch(f -> f.startsWith("stand-"));
        }
    }

    @Test
    void anotherBuildOfTheSameSourcesKeepsThem() {
        assertThat(ProgramCode.sum()).isEqualTo(ProgramCode.sum()).matches("\\d{3,} files [0-9a-f]{1,8}");
    }

    @Test
    void twoThreadsComputeOnce() {
        Path cache = folder.resolve("c");
        try (Setting setting = new Setting("wetside.cache", cache.toString())) {
            List<CompletableFuture<Shell.Done>> both = Stream.of(1, 2)
                    .map(i -> CompletableFuture.supplyAsync(
                            () -> Shell.run("diagnose", given.toString(), "--draws", "8")))
                    .toList();
            agree(both.stream().map(CompletableFuture::join).toList());
        }
    }

    @Test
    void twoProcessesComputeOnce() throws IOException, InterruptedException {
        List<Process> both = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            ProcessBuilder process = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:+UseSerialGC",
                            "-cp",
                            System.getProperty("java.class.path"),
                            "wetside.cli.Wetside",
                            "diagnose",
                            given.toString(),
                            "--draws",
                            "8")
                    .redirectOutput(folder.resolve("out" + i).toFile())
                    .redirectError(folder.resolve("err" + i).toFile());
            process.redirectInput(new File("/dev/null"));
            process.environment().put("WETSIDE_CACHE", folder.resolve("c").toString());
            both.add(process.start());
        }
        List<Shell.Done> done = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            int exitCode = both.get(i).waitFor();
            done.add(new Shell.Done(
                    exitCode,
                    Files.readString(folder.resolve("out" + i)),
                    Files.readString(folder.resolve("err" + i))));
        }
        agree(done);
    }

    private static void agree(List<Shell.Done> both) {
        assertThat(both).allSatisfy(d -> assertThat(d.exitCode()).as(d.err()).isEqualTo(Wetside.FINDINGS));
        assertThat(both.get(0).out()).isEqualTo(both.get(1).out()).contains("Causes");
        assertThat(both.stream().filter(d -> d.err().contains(RUNNING))).hasSize(1);
    }
}
