package wetside.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import wetside.setting.Setting;

/** Commands as a person types them, in this process, with a cache of its own. */
final class Shell {
    /** A small machine: its whole library is computed in a second. */
    static final String STAND = "src/test/resources/wetside/cli/stand.yaml";

    private static final Path CACHE = temporary();

    private Shell() {}

    /** What a command did. */
    record Done(int exitCode, String out, String err) {}

    static Done run(String... args) {
        return typed("", args);
    }

    /** With lines typed into it. */
    static Done typed(String input, String... args) {
        return fed(new ByteArrayInputStream(input.getBytes(UTF_8)), args);
    }

    static Done fed(InputStream in, String... args) {
        if (System.getProperty("wetside.cache") == null) {
            System.setProperty("wetside.cache", CACHE.toString());
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exitCode = Wetside.run(args, new PrintStream(out, true, UTF_8), new PrintStream(err, true, UTF_8), in);
        return new Done(exitCode, out.toString(UTF_8), err.toString(UTF_8));
    }

    /** A case of that small machine. */
    static Path standCase(Path file, String rest) throws IOException {
        return Files.writeString(
                file, "wetside case: 1\nmachine: " + Path.of(STAND).toAbsolutePath() + "\n" + rest);
    }

    /** With a cache in another folder, for the time of one call. */
    static Done cached(Path folder, String... args) {
        try (Setting cache = new Setting("wetside.cache", folder.toString())) {
            return run(args);
        }
    }

    /** A copy of a file with one piece of its text replaced. */
    static Path changed(Path folder, String file, String piece, String with) {
        try {
            String text = Files.readString(Path.of(file));
            if (!text.contains(piece)) {
                throw new AssertionError(file + " does not contain " + piece);
            }
            return Files.writeString(folder.resolve(Path.of(file).getFileName()), text.replace(piece, with));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path temporary() {
        try {
            Path folder = Files.createTempDirectory("wetside-cache");
            folder.toFile().deleteOnExit();
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
