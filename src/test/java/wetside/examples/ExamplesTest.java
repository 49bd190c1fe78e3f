package wetside.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.CaseFile;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.LibraryBuild;
import wetside.casework.Session;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Signatures;
import wetside.diagnosis.inference.Posterior;
import wetside.procedure.Procedures;

/**
 * The cases in {@code examples/}: what a phone desk and a bench meet, each with the cause a technician expects. Where a case
 * names two causes, they cannot be told apart from outside and either may come first.
 */
class ExamplesTest {
    private static final Path FOLDER = Path.of("examples");
    private static final int DRAWS = 8;
    /** Where nothing but words is known, eight draws are too few: the causes in play are simulated more closely, as ever. */
    private static final int CLOSER = 32;

    @TempDir
    static Path cache;

    @Test
    void thereAreEnough() {
        Map<Path, CaseFile> cases = cases();
        assertThat(cases).hasSizeGreaterThanOrEqualTo(12);
        assertThat(cases.values().stream()
                        .filter(c -> c.installed().feed().name().equals("MAINS")))
                .hasSizeGreaterThanOrEqualTo(4);
        assertThat(cases.values()).allSatisfy(c -> {
            assertThat(c.complaint()).isNotEmpty();
            assertThat(c.found()).hasSizeBetween(3, 7);
            assertThat(c.expected()).isNotEmpty();
        });
    }

    @TestFactory
    Stream<DynamicTest> expectedCauseComesFirst() {
        Map<String, List<Map.Entry<Path, CaseFile>>> places = new LinkedHashMap<>();
        cases().entrySet()
                .forEach(e -> places.computeIfAbsent(place(e.getValue().installed()), k -> new ArrayList<>())
                        .add(e));
        return places.values().stream().flatMap(ExamplesTest::solved);
    }

    private static String place(Installed installed) {
        return installed.machine().identity() + " " + installed.installation();
    }

    /** One library of signatures for all cases of one machine in one place, of the readings they need. */
    private static Stream<DynamicTest> solved(List<Map.Entry<Path, CaseFile>> cases) {
        Set<String> readings = new TreeSet<>();
        cases.forEach(e -> e.getValue().found().forEach(f -> readings.add(f.procedure())));
        Casework casework = cases.get(0)
                .getValue()
                .installed()
                .casework(Procedures.bundled())
                .reading(readings);
        Library library = new LibraryBuild(casework).upTo(DRAWS, casework.empty(), l -> {});
        return cases.stream()
                .map(e -> DynamicTest.dynamicTest(
                        e.getKey().getFileName().toString(), () -> first(e.getValue(), casework, library)));
    }

    private static boolean isAllWords(CaseFile given, Casework casework) {
        return given.found().stream()
                .noneMatch(f -> casework.asking(f.procedure())
                        .map(a -> a.options().isEmpty())
                        .orElse(true));
    }

    private static Library closer(Casework casework, Library library, List<Integer> causes) {
        Casework some = casework.about(
                causes.stream().map(c -> library.causes().get(c).id()).toList());
        Library close = new LibraryBuild(some, Runtime.getRuntime().availableProcessors(), true)
                .upTo(CLOSER, some.empty(), l -> {});
        Signatures sharper = library.signatures();
        for (int c = 0; c < close.causes().size(); c++) {
            int at = library.cause(close.causes().get(c).id());
            sharper = sharper.with(at, close.signatures().rows(c), CLOSER);
        }
        return library.with(sharper);
    }

    private static void first(CaseFile given, Casework casework, Library library) {
        Session session = new Session(casework, library, given.who());
        for (CaseFile.Found found : given.found()) {
            Asking asking = casework.asking(found.procedure())
                    .orElseThrow(() -> new AssertionError("no reading \"" + found.procedure() + "\""));
            Observation observation = Answers.parse(asking, found.answer().text());
            Answers.sensible(asking, observation, library);
            session.learn(observation);
        }
        if (isAllWords(given, casework)) {
            session.sharpen(closer(casework, library, session.inPlay()));
        }
        Posterior.Ranked best = session.posterior().best();
        assertThat(given.expected())
                .as(() -> "first is \"" + best.id() + "\", " + Math.round(100 * best.share()) + " %")
                .contains(best.id());
        assertThat(session.plausibility().plausible())
                .as("explains what was found")
                .isTrue();
    }

    /** The whole program in a process of its own, as a script would call it. */
    @Test
    void programTellsTheSameAsJson() throws IOException, InterruptedException {
        Path example = FOLDER.resolve("full-tank-reads-empty.yaml");
        Path out = cache.resolve("out.json");
        ProcessBuilder program = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "wetside.cli.Wetside",
                "diagnose",
                example.toString(),
                "--draws",
                "8",
                "--json");
        program.environment().put("WETSIDE_CACHE", cache.toString());
        program.redirectOutput(out.toFile())
                .redirectError(cache.resolve("err.txt").toFile());
        Process process = program.start();
        boolean ended = process.waitFor(10, TimeUnit.MINUTES);
        assertThat(ended).isTrue();
        assertThat(process.exitValue())
                .as(Files.readString(cache.resolve("err.txt")))
                .isLessThan(2);
        JsonNode json = new ObjectMapper().readTree(Files.readString(out, StandardCharsets.UTF_8));
        assertThat(json.get("causes").get(0).get("cause").asString())
                .isIn(CaseFile.read(example).expected());
    }

    private static Map<Path, CaseFile> cases() {
        Map<Path, CaseFile> cases = new LinkedHashMap<>();
        try (Stream<Path> files = Files.list(FOLDER)) {
            files.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(f -> cases.put(f, CaseFile.read(f)));
        } catch (IOException e) {
            throw new IllegalStateException("no folder of examples: " + e.getMessage(), e);
        }
        return cases;
    }
}
