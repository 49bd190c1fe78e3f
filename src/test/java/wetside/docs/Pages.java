package wetside.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every page a reader may open: the Markdown files at the root and below {@code docs/}. */
final class Pages {
    private Pages() {}

    static List<Path> all() {
        List<Path> pages = new ArrayList<>();
        try (Stream<Path> root = Files.list(Path.of(""));
                Stream<Path> docs = Files.walk(Path.of("docs"))) {
            Stream.concat(root, docs)
                    .filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .forEach(pages::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pages;
    }

    static String read(Path page) {
        try {
            return Files.readString(page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
