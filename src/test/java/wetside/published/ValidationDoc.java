package wetside.published;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The document docs/validation.md: a head, and one section for each published test class, in the order of their names. */
record ValidationDoc(Map<String, String> sections) {
    private static final Path FILE = Path.of("docs", "validation.md");
    private static final Pattern SECTION = Pattern.compile("<!-- (\\w+) -->\n(.*?)<!-- end -->\n", Pattern.DOTALL);
    private static final String HEAD = """
            # Validation

            Written by the tests in `src/test/java/wetside/published`; do not edit. Each row is a value published by
            somebody else, computed again by Wetside when the tests run. To write it anew:
            `mvn test -Dtest='*PublishedTest' -Dvalidation.write=true`.

            """;

    static ValidationDoc read() {
        Map<String, String> sections = new TreeMap<>();
        try {
            Matcher found = SECTION.matcher(Files.exists(FILE) ? Files.readString(FILE) : "");
            while (found.find()) {
                sections.put(found.group(1), found.group(2));
            }
        } catch (IOException e) {
            throw Published.unreadable(e);
        }
        return new ValidationDoc(sections);
    }

    static String section(String topic, List<Published.Row> rows) {
        StringBuilder text = new StringBuilder("## " + topic + "\n\n")
                .append("| Quantity | Source | Published | Computed | Error | Allowed, and why |\n")
                .append("|---|---|---|---|---|---|\n");
        for (Published.Row row : rows) {
            text.append("| ")
                    .append(String.join(
                            " | ",
                            cell(row.quantity()),
                            cell(row.source()),
                            cell(row.expected()),
                            cell(row.computed()),
                            cell(row.error()),
                            cell(row.tolerance())))
                    .append(" |\n");
        }
        return text.append('\n').toString();
    }

    String section(String test) {
        return sections.get(test);
    }

    Set<String> tests() {
        return sections.keySet();
    }

    ValidationDoc with(String test, String section) {
        Map<String, String> changed = new TreeMap<>(sections);
        changed.put(test, section);
        return new ValidationDoc(changed);
    }

    ValidationDoc without(Set<String> gone) {
        Map<String, String> changed = new TreeMap<>(sections);
        changed.keySet().removeAll(gone);
        return new ValidationDoc(changed);
    }

    void write() {
        StringBuilder text = new StringBuilder(HEAD);
        sections.forEach((test, section) -> text.append("<!-- ")
                .append(test)
                .append(" -->\n")
                .append(section)
                .append("<!-- end -->\n"));
        try {
            Files.createDirectories(FILE.getParent());
            Files.writeString(FILE, text);
        } catch (IOException e) {
            throw Published.unreadable(e);
        }
    }

    private static String cell(String text) {
        return text.replace("|", "\\|").replace('\n', ' ');
    }
}
