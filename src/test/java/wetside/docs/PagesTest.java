package wetside.docs;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.net.URLDecoder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;

/** Nothing undocumented, nothing pointing nowhere. */
class PagesTest {
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ +(.*)$");
    private static final Pattern FENCE = Pattern.compile("(?ms)^```.*?^```");
    private static final Pattern ARTIFACT = Pattern.compile("<dependency>.*?<artifactId>([^<]+)<", Pattern.DOTALL);

    @Test
    void linksBetweenPagesLeadSomewhere() {
        List<String> dead = new ArrayList<>();
        for (Path page : Pages.all()) {
            dead.addAll(deadLinks(page, Pages.read(page)));
        }
        assertThat(dead).isEmpty();
    }

    @Test
    void aDeadLinkIsNoticed() {
        String text = "# One two\n[a](README.md) [b](none.md) [c](#one-two) [d](#three) [e](https://example.org)\n";
        assertThat(deadLinks(Path.of("PAGE.md"), text)).containsExactly("PAGE.md: none.md", "PAGE.md: #three");
    }

    @Test
    void everyCommandIsOnAPage() {
        String everything = Pages.all().stream().map(Pages::read).collect(Collectors.joining("\n"));
        for (String command : commands()) {
            assertThat(everything)
                    .as("no page mentions ./wetside %s", command)
                    .containsPattern("wetside ([a-z]+ )?" + command + "\\b");
        }
    }

    @Test
    void everyDependencyAndItsLicenceIsInNotice() {
        String notice = Pages.read(Path.of("NOTICE"));
        Matcher artifact = ARTIFACT.matcher(Pages.read(Path.of("pom.xml")));
        List<String> artifacts = new ArrayList<>();
        while (artifact.find()) {
            artifacts.add(artifact.group(1));
        }
        assertThat(artifacts).hasSizeGreaterThan(5);
        assertThat(artifacts)
                .filteredOn(name -> !name.equals("extra-enforcer-rules"))
                .allSatisfy(name -> assertThat(notice).containsPattern("\\b" + name + "\\b"));
    }

    private static List<String> commands() {
        return new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("wetside.cli").stream()
                        .filter(type -> type.isAnnotatedWith(Command.class))
                        .map(PagesTest::nameOf)
                        .filter(name -> !name.equals("wetside"))
                        .toList();
    }

    private static String nameOf(JavaClass type) {
        return type.getAnnotationOfType(Command.class).name();
    }

    private static List<String> deadLinks(Path page, String text) {
        List<String> dead = new ArrayList<>();
        Matcher link = LINK.matcher(FENCE.matcher(text).replaceAll(""));
        while (link.find()) {
            String to = link.group(1);
            if (!to.matches("[a-z]+:.*") && !leadsSomewhere(page, text, to)) {
                dead.add(page + ": " + to);
            }
        }
        return dead;
    }

    private static boolean leadsSomewhere(Path page, String text, String to) {
        String[] parts = URLDecoder.decode(to, UTF_8).split("#", 2);
        Path file = parts[0].isEmpty() ? page : page.resolveSibling(parts[0]).normalize();
        if (!parts[0].isEmpty() && !Files.exists(file)) {
            return false;
        }
        return parts.length < 2
                || anchors(parts[0].isEmpty() ? text : Pages.read(file)).contains(parts[1]);
    }

    private static List<String> anchors(String text) {
        return HEADING.matcher(text)
                .results()
                .map(heading -> heading.group(1)
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N} _-]", "")
                        .replace(' ', '-'))
                .toList();
    }
}
