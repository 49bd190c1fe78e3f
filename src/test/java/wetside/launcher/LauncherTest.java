package wetside.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher in a house of its own, with a PATH that holds nothing but the plain commands of any system and stand-ins
 * for what may be missing: java, mvn, apt-get and who is asking.
 */
class LauncherTest {
    private static final List<String> PLAIN_COMMANDS = List.of(
            "bash",
            "cat",
            "cp",
            "date",
            "dirname",
            "env",
            "find",
            "flock",
            "grep",
            "head",
            "ln",
            "mkdir",
            "mktemp",
            "mv",
            "readlink",
            "rm",
            "sed",
            "sleep",
            "tail",
            "touch");
    private static final String JAVA = """
            #!/usr/bin/env bash
            case $1 in -version) echo 'openjdk version "17.0.9" 2023-10-17' >&2; exit 0 ;; esac
            while [ $# -gt 0 ] && [ "$1" != -jar ]; do shift; done
            [ -s "$2" ] || exit 9
            printf '<%s>' "${@:3}"; echo
            """;
    private static final String MAVEN = """
            #!/usr/bin/env bash
            echo "$*" >>mvn.calls
            mkdir -p target && printf half >target/wetside.jar && sleep 0.3 && printf whole >target/wetside.jar
            """;
    /** What apt-get brings is kept in a folder "store" until somebody installs it. */
    private static final String APT = """
            #!/usr/bin/env bash
            here=$(dirname "$0")
            echo "$*" >>"$here/../apt.calls"
            case " $* " in *" update "*) exit 0 ;; esac
            case " $* " in *" openjdk-17-jdk-headless "*) cp "$here/../store/java" "$here/../store/javac" "$here/" ;; esac
            case " $* " in *" maven "*) cp "$here/../store/mvn" "$here/" ;; esac
            exit 0
            """;

    @TempDir
    Path folder;

    private Path bin;
    private Path house;

    private record Outcome(int exitCode, String out, String err) {}

    @BeforeEach
    void layOutAHouse() throws IOException {
        bin = Files.createDirectory(folder.resolve("bin"));
        house = folder.resolve("a house");
        Files.createDirectories(house.resolve("src/main/sh"));
        Files.createDirectories(house.resolve("machines"));
        Files.createDirectories(house.resolve("procedures"));
        Files.writeString(house.resolve("pom.xml"), "<project/>");
        Files.writeString(house.resolve("machines/one.yaml"), "machine: one");
        for (String name : List.of("wetside", "src/main/sh/tools.sh")) {
            Files.copy(Path.of(name), house.resolve(name));
        }
        for (String command : PLAIN_COMMANDS) {
            standIn(command, "#!" + find("bash") + "\nexec " + find(command) + " \"$@\"\n");
        }
        standIn("id", "#!/usr/bin/env bash\necho 1000\n");
        Files.createDirectory(folder.resolve("store"));
    }

    @Test
    void firstUseBuildsAndHandsOnTheArgumentsUntouched() throws Exception {
        giveJavaAndMaven();
        Outcome first = wetside("diagnose", "my case.yaml", "", "a*b");
        assertThat(first.out).isEqualTo("<diagnose><my case.yaml><><a*b>\n");
        assertThat(first.err).contains("building (first use").contains("built in");
        assertThat(first.exitCode).isZero();

        Outcome second = wetside("check");
        assertThat(second.out).isEqualTo("<check>\n");
        assertThat(second.err).isEmpty();
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void itFindsItsFolderThroughSymbolicLinks() throws Exception {
        giveJavaAndMaven();
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path first = Files.createSymbolicLink(elsewhere.resolve("first"), house.resolve("wetside"));
        Path second = Files.createSymbolicLink(elsewhere.resolve("second"), first.getFileName());
        assertThat(run(second, "x").out).isEqualTo("<x>\n");
    }

    @Test
    void itBuildsAgainWhenASourceIsNewerOrGone() throws Exception {
        giveJavaAndMaven();
        wetside();
        setDate(house.resolve("machines/one.yaml"), Instant.now().plusSeconds(5));
        assertThat(wetside().err).contains("the sources are newer");
        setDate(house.resolve("machines/one.yaml"), Instant.now().minusSeconds(60));
        assertThat(wetside().err).isEmpty();
        Files.delete(house.resolve("machines/one.yaml"));
        setDate(house.resolve("machines"), Instant.now().plusSeconds(5));
        assertThat(wetside().err).contains("the sources are newer");
    }

    @Test
    void twoFirstUsesAtOnceBuildOnce() throws Exception {
        giveJavaAndMaven();
        Process one = start(house.resolve("wetside"), folder.resolve("one"), "1");
        Process two = start(house.resolve("wetside"), folder.resolve("two"), "2");
        assertThat(finish(one, folder.resolve("one")).out).isEqualTo("<1>\n");
        assertThat(finish(two, folder.resolve("two")).out).isEqualTo("<2>\n");
        assertThat(builds()).isEqualTo(1);
    }

    @Test
    void aFailedBuildSaysWhyAndLeavesNoJar() throws Exception {
        giveJavaAndMaven();
        standIn(
                "mvn",
                "#!/usr/bin/env bash\nmkdir -p target; printf half >target/wetside.jar\n"
                        + "echo '[ERROR] Kettle.java:[3,1] ; expected'\nexit 1\n");
        Outcome outcome = wetside("check");
        assertThat(outcome.exitCode).isEqualTo(3);
        assertThat(outcome.out).isEmpty();
        assertThat(outcome.err).contains("the build failed").contains("Kettle.java:[3,1] ; expected");
        assertThat(house.resolve("target/launch/wetside.jar")).doesNotExist();

        giveJavaAndMaven();
        assertThat(wetside("check").out).as("the next use tries again").isEqualTo("<check>\n");
    }

    @Test
    void withoutJavaAndMavenAnOrdinaryUserIsToldWhatToType() throws Exception {
        standIn("apt-get", APT);
        Outcome outcome = wetside("check");
        assertThat(outcome.exitCode).isEqualTo(3);
        assertThat(outcome.out).isEmpty();
        assertThat(outcome.err)
                .contains("a JDK (Java 17 or newer) and Maven is missing, and only root may install it")
                .contains("    sudo apt-get update && sudo apt-get install openjdk-17-jdk-headless maven\n");
        assertThat(folder.resolve("apt.calls")).doesNotExist();
    }

    @Test
    void withoutMavenOnlyMavenIsAskedFor() throws Exception {
        standIn("apt-get", APT);
        standIn("java", JAVA);
        standIn("javac", JAVA);
        assertThat(wetside().err).contains("apt-get install maven\n").doesNotContain("openjdk");
    }

    @Test
    void whereThereIsNoAptOtherSystemsAreNamed() throws Exception {
        assertThat(wetside().err).contains("Fedora").contains("macOS").doesNotContain("apt-get");
    }

    @Test
    void anOldJavaOrOneWithoutCompilerCountsAsMissing() throws Exception {
        standIn("apt-get", APT);
        standIn("mvn", MAVEN);
        standIn("javac", JAVA);
        standIn("java", "#!/usr/bin/env bash\necho 'openjdk version \"11.0.2\"' >&2\n");
        assertThat(wetside().err).contains("install openjdk-17-jdk-headless\n");
        standIn("java", "#!/usr/bin/env bash\necho 'java version \"1.8.0_292\"' >&2\n");
        assertThat(wetside().err).contains("install openjdk-17-jdk-headless\n");
        standIn("java", JAVA);
        Files.delete(bin.resolve("javac"));
        assertThat(wetside().err).contains("install openjdk-17-jdk-headless\n");
    }

    @Test
    void rootGetsThemInstalledFromDebiansPackages() throws Exception {
        beRoot();
        standIn("apt-get", APT);
        store("java", JAVA);
        store("javac", JAVA);
        store("mvn", MAVEN);
        Outcome outcome = wetside("check");
        assertThat(outcome.out).isEqualTo("<check>\n");
        assertThat(outcome.err).contains("installing openjdk-17-jdk-headless maven");
        assertThat(Files.readAllLines(folder.resolve("apt.calls")))
                .containsExactly(
                        "-o DPkg::Lock::Timeout=600 -qq update",
                        "-o DPkg::Lock::Timeout=600 -qq -y --no-install-recommends install"
                                + " openjdk-17-jdk-headless maven");
    }

    @Test
    void whenTheInstallationFailsRootIsToldWhatToType() throws Exception {
        beRoot();
        standIn("apt-get", "#!/usr/bin/env bash\necho 'E: Unable to fetch' >&2\nexit 100\n");
        Outcome outcome = wetside("check");
        assertThat(outcome.exitCode).isEqualTo(3);
        assertThat(outcome.err)
                .contains("E: Unable to fetch")
                .contains("    apt-get update && apt-get install openjdk-17-jdk-headless maven\n");
    }

    @Test
    void oneThatIsBuiltNeedsNoMaven() throws Exception {
        giveJavaAndMaven();
        wetside();
        Files.delete(bin.resolve("mvn"));
        Files.delete(bin.resolve("javac"));
        assertThat(wetside("check").out).isEqualTo("<check>\n");
    }

    @Test
    void theSecondCompilerIsThereForTheDiagnosisOfALargeMachine() throws Exception {
        giveJavaAndMaven();
        standIn("java", JAVA.replace("while", "echo \"$*\" >java.calls; while"));
        Files.writeString(house.resolve("machines/large.yaml"), "wetside machine: 1\n".repeat(801));
        Files.writeString(folder.resolve("job.yaml"), "wetside case: 1\nmachine: large # with two groups\n");
        Files.writeString(folder.resolve("other.yaml"), "wetside case: 1\nmachine: one\n");
        wetside("check");
        assertThat(compilersOf("diagnose", "--json", "job.yaml"))
                .contains("Tier4")
                .doesNotContain("StopAtLevel");
        assertThat(compilersOf("diagnose", "large")).contains("Tier4");
        for (String few : List.of("one", "other.yaml", "missing.yaml")) {
            assertThat(compilersOf("diagnose", few)).contains("TieredStopAtLevel=1");
        }
        assertThat(compilersOf("check", "large")).contains("TieredStopAtLevel=1");
    }

    private String compilersOf(String... arguments) throws Exception {
        wetside(arguments);
        return Files.readString(folder.resolve("java.calls"));
    }

    @Test
    void aFolderThatCannotBeWrittenIsNamed() throws Exception {
        giveJavaAndMaven();
        Files.writeString(house.resolve("target"), "a file where the folder should be");
        Outcome outcome = wetside("check");
        assertThat(outcome.exitCode).isEqualTo(3);
        assertThat(outcome.err)
                .contains("cannot be written")
                .contains(house.resolve("target").toString());
    }

    private void giveJavaAndMaven() throws IOException {
        standIn("java", JAVA);
        standIn("javac", JAVA);
        standIn("mvn", MAVEN);
    }

    private void beRoot() throws IOException {
        standIn("id", "#!/usr/bin/env bash\necho 0\n");
    }

    private void standIn(String name, String script) throws IOException {
        write(bin.resolve(name), script);
    }

    private void store(String name, String script) throws IOException {
        write(folder.resolve("store").resolve(name), script);
    }

    private static void write(Path file, String script) throws IOException {
        Files.writeString(file, script);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private int builds() throws IOException {
        return Files.readAllLines(house.resolve("mvn.calls")).size();
    }

    private static void setDate(Path file, Instant date) throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(date));
    }

    private static Path find(String command) {
        for (String place : System.getenv("PATH").split(":")) {
            Path file = Path.of(place, command);
            if (Files.isExecutable(file)) {
                return file;
            }
        }
        throw new IllegalStateException("this test needs the command " + command);
    }

    private Outcome wetside(String... arguments) throws Exception {
        return run(house.resolve("wetside"), arguments);
    }

    private Outcome run(Path launcher, String... arguments) throws Exception {
        Path streams = folder.resolve("streams");
        return finish(start(launcher, streams, arguments), streams);
    }

    private Process start(Path launcher, Path streams, String... arguments) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(bin.resolve("bash").toString(), launcher.toString());
        builder.command().addAll(List.of(arguments));
        builder.environment().clear();
        builder.environment().put("PATH", bin.toString());
        builder.directory(folder.toFile());
        builder.redirectOutput(Path.of(streams + ".out").toFile());
        builder.redirectError(Path.of(streams + ".err").toFile());
        return builder.start();
    }

    private static Outcome finish(Process process, Path streams) throws Exception {
        if (!process.waitFor(90, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("the launcher hangs");
        }
        return new Outcome(
                process.exitValue(),
                Files.readString(Path.of(streams + ".out")),
                Files.readString(Path.of(streams + ".err")));
    }
}
