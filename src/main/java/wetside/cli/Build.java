package wetside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Which build of the program this is; stored results belong to one build. */
final class Build {
    private Build() {}

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
        } catch (IOException | java.net.URISyntaxException | SecurityException e) {
            return String.valueOf(version);
        }
        return "classes " + System.getProperty("java.class.path").hashCode();
    }
}
