package wetside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Which build of the program this is; stored results belong to one build. */
final class Build {
    private Build() {}

    /** While it is being written, the program runs from a folder of classes: the last one compiled tells builds apart. */
    private static long newest(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.mapToLong(file -> file.toFile().lastModified()).max().orElse(0);
        }
    }

    /** Version and, for a jar, its size and time, so that a rebuilt jar never trusts what an older one computed. */
    static String version() {
        String version = Build.class.getPackage().getImplementationVersion();
        try {
            Path jar = Path.of(Build.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            if (Files.isRegularFile(jar)) {
                return version + " " + Files.size(jar) + " " + Files.getLastModifiedTime(jar);
            }
            return "classes " + newest(jar);
        } catch (IOException | java.net.URISyntaxException | SecurityException e) {
            return String.valueOf(version);
        }
    }
}
