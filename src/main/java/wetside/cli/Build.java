package wetside.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import picocli.CommandLine;

/** Which build of the program this is; stored results belong to one build. */
final class Build implements CommandLine.IVersionProvider {
    /** Packages that look at signatures but cannot change them. */
    private static final List<String> LOOK_ONLY = List.of(
            "wetside/cli/",
            "wetside/drawing/",
            "wetside/page/",
            "wetside/jte/",
            "wetside/fonts/",
            "wetside/diagnosis/",
            "wetside/judging/",
            "META-INF/");

    private static String code;

    private Build() {}

    @Override
    public String[] getVersion() {
        String version = Build.class.getPackage().getImplementationVersion();
        return new String[] {"wetside " + (version == null ? "(not packaged)" : version)};
    }

    /** Sum over all code and data that take part in computing signatures: another build of the same sources keeps it. */
    static synchronized String code() {
        if (code == null) {
            try {
                Path home = Path.of(Build.class
                        .getProtectionDomain()
                        .getCodeSource()
                        .getLocation()
                        .toURI());
                code = sum(Files.isRegularFile(home) ? jar(home) : folder(home));
            } catch (IOException | URISyntaxException e) {
                throw new IllegalStateException("the program cannot read itself", e);
            }
        }
        return code;
    }

    private static TreeMap<String, Long> jar(Path jar) throws IOException {
        TreeMap<String, Long> sums = new TreeMap<>();
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); ) {
                ZipEntry entry = all.nextElement();
                if (takesPart(entry.getName())) {
                    sums.put(entry.getName(), entry.getCrc());
                }
            }
        }
        return sums;
    }

    private static TreeMap<String, Long> folder(Path folder) throws IOException {
        TreeMap<String, Long> sums = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (takesPart(name)) {
                    CRC32 crc = new CRC32();
                    crc.update(Files.readAllBytes(file));
                    sums.put(name, crc.getValue());
                }
            }
        }
        return sums;
    }

    private static boolean takesPart(String name) {
        return name.startsWith("wetside/")
                && !name.endsWith("/")
                && LOOK_ONLY.stream().noneMatch(name::startsWith);
    }

    private static String sum(TreeMap<String, Long> sums) {
        CRC32 all = new CRC32();
        sums.forEach((name, crc) -> all.update((name + ' ' + crc + '\n').getBytes(StandardCharsets.UTF_8)));
        return sums.size() + " files " + Long.toHexString(all.getValue());
    }
}
