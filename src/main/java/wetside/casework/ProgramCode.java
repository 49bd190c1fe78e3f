package wetside.casework;

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

/** Which code computes signatures; stored ones belong to it. */
public final class ProgramCode {
    /** Packages that look at signatures but cannot change them. */
    private static final List<String> LOOK_ONLY = List.of(
            "wetside/cli/",
            "wetside/bench/",
            "wetside/shop/",
            "wetside/card/",
            "wetside/cabinet/",
            "wetside/tour/",
            "wetside/map/",
            "wetside/drawing/",
            "wetside/page/",
            "wetside/jte/",
            "wetside/fonts/",
            "wetside/diagnosis/",
            "wetside/judging/",
            "META-INF/");

    /** What a library's key has of its own, as far as signatures depend on it: machines, procedures, and words of kinds. */
    private static final List<String> DATA = List.of("wetside/machines/", "wetside/procedures/", "wetside/kind/");

    private static String code;

    private ProgramCode() {}

    /** Sum over all code and data that take part in computing signatures: another build of the same sources keeps it. */
    public static synchronized String sum() {
        if (code == null) {
            try {
                Path home = Path.of(ProgramCode.class
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
                && LOOK_ONLY.stream().noneMatch(name::startsWith)
                && (name.endsWith(".class") || DATA.stream().noneMatch(name::startsWith));
    }

    private static String sum(TreeMap<String, Long> sums) {
        CRC32 all = new CRC32();
        sums.forEach((name, crc) -> all.update((name + ' ' + crc + '\n').getBytes(StandardCharsets.UTF_8)));
        return sums.size() + " files " + Long.toHexString(all.getValue());
    }
}
