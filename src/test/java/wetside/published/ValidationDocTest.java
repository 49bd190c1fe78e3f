package wetside.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ValidationDocTest {
    @Test
    void everyPublishedTestHasItsSectionAndNoSectionIsLeftOver() throws Exception {
        Set<String> expected = publishedTests();
        ValidationDoc doc = ValidationDoc.read();
        if (Boolean.getBoolean("validation.write")) {
            Set<String> gone = new TreeSet<>(doc.tests());
            gone.removeAll(expected);
            doc.without(gone).write();
            return;
        }
        assertThat(doc.tests())
                .as("sections of docs/validation.md; to mend: mvn test -Dtest='*PublishedTest,ValidationDocTest'"
                        + " -Dvalidation.write=true")
                .isEqualTo(expected);
    }

    private static Set<String> publishedTests() throws IOException, URISyntaxException {
        Path classes = Path.of(
                ValidationDocTest.class.getResource("ValidationDocTest.class").toURI());
        try (Stream<Path> files = Files.list(classes.getParent())) {
            return files.map(f -> f.getFileName().toString())
                    .filter(name -> name.endsWith("PublishedTest.class"))
                    .map(name -> name.replace(".class", ""))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
