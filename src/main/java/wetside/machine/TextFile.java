package wetside.machine;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import wetside.units.Nearest;

/** Reads a small text file, or says why it is none. */
final class TextFile {
    static final int LARGEST = 1_000_000;

    private TextFile() {}

    static String read(Path file) {
        String name = file.toString();
        try {
            if (Files.isDirectory(file)) {
                throw BadFile.whole(name, "this is a folder; a file is wanted", "");
            }
            if (!Files.exists(file)) {
                throw BadFile.whole(name, "there is no such file", neighbour(file));
            }
            if (Files.size(file) > LARGEST) {
                throw tooLarge(name, Files.size(file));
            }
            try (InputStream in = Files.newInputStream(file)) {
                return decode(name, in);
            }
        } catch (IOException e) {
            throw BadFile.whole(name, "the file cannot be read: " + e.getMessage(), "");
        }
    }

    /** Never takes more than the limit into memory, whatever the size said before. */
    static String decode(String name, InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(LARGEST + 1);
        if (bytes.length > LARGEST) {
            throw tooLarge(name, bytes.length);
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            if (text.indexOf('\0') < 0) {
                return text.startsWith("\uFEFF") ? text.substring(1) : text;
            }
        } catch (CharacterCodingException e) {
            // said below
        }
        throw BadFile.whole(name, "this is not a text file in UTF-8", "");
    }

    private static BadFile tooLarge(String name, long size) {
        return BadFile.whole(
                name,
                String.format("the file has %s MB; the largest taken is 1 MB", size < 2e6 ? "over 1" : size / 1000000),
                "");
    }

    private static String neighbour(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return "";
        }
        try (Stream<Path> there = Files.list(folder)) {
            List<String> names = there.map(p -> p.getFileName().toString()).toList();
            return Nearest.to(file.getFileName().toString(), names)
                    .map(n -> file.resolveSibling(n).toString())
                    .orElse("");
        }
    }
}
