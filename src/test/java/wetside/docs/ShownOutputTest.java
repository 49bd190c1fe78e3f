package wetside.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import wetside.cli.Wetside;

/**
 * Output shown on a page is what the command prints today, but for spaces at line ends. To put fresh output into the
 * pages: {@code mvn -q test -Dtest=ShownOutputTest -Ddocs.write=true}, then read the difference.
 */
class ShownOutputTest {
    private static final String PAGE = """
            # Title
            <!-- output of: ./wetside greet "a b" -->
            ```text
            hello a b
            ```
            <!-- first 1 lines of: ./wetside greet 'c' < answers.txt -->
            ```
            hello c
            ```
            <!-- messages of: ./wetside fail -->
            ```text
            stale
            ```
            """;

    @TestFactory
    Stream<DynamicTest> shownOutputIsReal() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path page : Pages.all()) {
            if (Boolean.getBoolean("docs.write")) {
                tests.add(DynamicTest.dynamicTest("writes " + page, () -> renew(page)));
                continue;
            }
            for (ShownOutput block : ShownOutput.on(Pages.read(page))) {
                tests.add(DynamicTest.dynamicTest(
                        page + ": ./wetside " + block.command(),
                        () -> assertThat(block.shownTidy())
                                .as("%s shows old output; see the comment of this test", page)
                                .isEqualTo(block.fresh(ShownOutputTest::wetside))));
            }
        }
        return tests.stream();
    }

    @Test
    void theReadmeShowsTheMainJob() {
        assertThat(ShownOutput.on(Pages.read(Path.of("README.md"))))
                .extracting(ShownOutput::command)
                .anyMatch(command -> command.startsWith("diagnose examples/"));
    }

    @Test
    void blocksAreFoundAndComparedLineByLine() {
        List<ShownOutput> blocks = ShownOutput.on(PAGE);
        assertThat(blocks).hasSize(3);
        assertThat(blocks.get(0).fresh(ShownOutputTest::greeter))
                .isEqualTo(blocks.get(0).shownTidy());
        assertThat(blocks.get(1).fresh(ShownOutputTest::greeter))
                .isEqualTo(blocks.get(1).shownTidy());
        assertThat(blocks.get(2).fresh(ShownOutputTest::greeter))
                .isNotEqualTo(blocks.get(2).shownTidy());
    }

    @Test
    void renewingAPageChangesOnlyWhatIsStale() {
        assertThat(ShownOutput.renew(PAGE, ShownOutputTest::greeter)).isEqualTo(PAGE.replace("stale", "no such thing"));
    }

    @Test
    void aCommandThatFailsIsNotShownAsOutput() {
        ShownOutput block = ShownOutput.on("<!-- output of: ./wetside fail -->\n```\nx\n```\n")
                .get(0);
        assertThatThrownBy(() -> block.fresh(ShownOutputTest::greeter)).hasMessageContaining("no such thing");
    }

    private static ShownOutput.Printed greeter(List<String> arguments, String inputFile) {
        return arguments.get(0).equals("greet")
                ? new ShownOutput.Printed(
                        0, "hello " + arguments.get(1) + "  \n" + (inputFile == null ? "" : "x\n"), "")
                : new ShownOutput.Printed(2, "", "no such thing\n");
    }

    private static void renew(Path page) throws IOException {
        String before = Pages.read(page);
        String after = ShownOutput.renew(before, ShownOutputTest::wetside);
        if (!after.equals(before)) {
            Files.writeString(page, after);
        }
    }

    private static ShownOutput.Printed wetside(List<String> arguments, String inputFile) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        try (InputStream in =
                inputFile == null ? new ByteArrayInputStream(new byte[0]) : Files.newInputStream(Path.of(inputFile))) {
            int exitCode = Wetside.run(
                    arguments.toArray(String[]::new),
                    new PrintStream(out, true, UTF_8),
                    new PrintStream(err, true, UTF_8),
                    in);
            return new ShownOutput.Printed(exitCode, out.toString(UTF_8), err.toString(UTF_8));
        } catch (IOException e) {
            throw new AssertionError("cannot run ./wetside " + arguments, e);
        }
    }
}
