package wetside.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wetside.cli.Wetside;

/** The drawings that pages show are those the program makes now; {@code -Ddocs.write=true} makes them anew. */
class PicturesTest {
    private static final Path FOLDER = Path.of("docs/pictures");

    @ParameterizedTest
    @CsvSource({
        "twin-boiler-lever.svg, map twin-boiler-lever --svg -",
        "exchanger-two-group-shot.svg, map exchanger-two-group --colour pressure --svg -",
        "twin-boiler-lever-right.svg, cabinet twin-boiler-lever --from right --svg -"
    })
    void picturesAreAsDrawnNow(String file, String command) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Wetside.run(
                command.split(" "),
                new PrintStream(out, true, UTF_8),
                new PrintStream(err, true, UTF_8),
                new ByteArrayInputStream(new byte[0]));
        assertThat(code).as(err.toString(UTF_8)).isZero();
        Path picture = FOLDER.resolve(file);
        if (Boolean.getBoolean("docs.write")) {
            Files.createDirectories(FOLDER);
            Files.write(picture, out.toByteArray());
        }
        assertThat(picture).hasContent(out.toString(UTF_8));
        assertThat(Pages.read(Path.of("README.md")) + Pages.read(Path.of("docs/commands.md")))
                .contains(file);
    }
}
