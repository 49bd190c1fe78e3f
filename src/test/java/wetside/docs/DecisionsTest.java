package wetside.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Decision records are numbered without gaps, and each names what would fail if it were broken. */
class DecisionsTest {
    private static final Pattern CONFIRMATION = Pattern.compile("\\*\\*Confirmation\\.\\*\\*(.*)", Pattern.DOTALL);
    private static final Pattern NAMED = Pattern.compile("`([A-Z]\\w+|[\\w.-]*/[\\w./-]*|[\\w-]+\\.\\w+)`");

    @Test
    void everyRecordNamesWhatConfirmsIt() throws IOException {
        List<Path> records = records();
        assertThat(records).isNotEmpty();
        for (int i = 0; i < records.size(); i++) {
            Path record = records.get(i);
            String text = Pages.read(record);
            assertThat(record.getFileName().toString()).startsWith(String.format("%03d-", i + 1));
            assertThat(text).as("%s", record).contains("**Context.**", "**Decision.**", "**Why.**");
            Matcher confirmation = CONFIRMATION.matcher(text);
            assertThat(confirmation.find()).as("%s has a confirmation", record).isTrue();
            assertThat(NAMED.matcher(confirmation.group(1)).results().map(name -> name.group(1)))
                    .as("%s: its confirmation names a test or file that exists", record)
                    .isNotEmpty()
                    .allMatch(DecisionsTest::exists);
        }
    }

    private static List<Path> records() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("docs/decisions"))) {
            return files.filter(file -> file.getFileName().toString().matches("\\d.*\\.md"))
                    .sorted()
                    .toList();
        }
    }

    private static boolean exists(String name) {
        try (Stream<Path> tests = Files.walk(Path.of("src/test/java"))) {
            return Files.exists(Path.of(name))
                    || tests.anyMatch(test -> test.getFileName().toString().equals(name + ".java"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
