package wetside.machine;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Lists the data files that travel inside the jar (or lie beside the classes during development). */
final class BundledFiles {
    static final String MACHINES = "wetside/machines";

    private BundledFiles() {}

    /** Names without ending of the YAML files in a folder, sorted. */
    static List<String> names(String folder) {
        URL url = BundledFiles.class.getResource("/" + folder);
        if (url == null) {
            return List.of();
        }
        try {
            URI uri = url.toURI();
            if (!uri.getScheme().equals("jar")) {
                return list(Path.of(uri));
            }
            try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
                return list(jar.getPath("/" + folder));
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("cannot list " + url, e);
        }
    }

    private static List<String> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString())
                    .filter(n -> n.endsWith(".yaml"))
                    .map(n -> n.substring(0, n.length() - ".yaml".length()))
                    .sorted()
                    .toList();
        }
    }
}
