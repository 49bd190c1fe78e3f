package wetside.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import wetside.procedure.Phrases;
import wetside.procedure.Procedure;
import wetside.procedure.Procedures;

/** The page on procedures lists every one that ships. */
class ProceduresPageTest {
    private static final Path PAGE = Path.of("docs", "procedures.md");
    private static final Pattern LIST = Pattern.compile("(?s)(<!-- procedures -->\n).*?(<!-- end of procedures -->\n)");

    @Test
    void everyProcedureIsListed() throws IOException {
        String page = Pages.read(PAGE);
        Matcher list = LIST.matcher(page);
        assertThat(list.find()).isTrue();
        String right = list.replaceAll("$1" + Matcher.quoteReplacement(all()) + "$2");
        if (Boolean.getBoolean("docs.write")) {
            Files.writeString(PAGE, right);
            return;
        }
        assertThat(page)
                .as("mvn -q test -Dtest=ProceduresPageTest -Ddocs.write=true writes the list anew")
                .isEqualTo(right);
    }

    private static String all() {
        Procedures procedures = Procedures.bundled();
        StringBuilder text = new StringBuilder();
        for (Map.Entry<String, String> routine : procedures.said().entrySet()) {
            StringBuilder rows = new StringBuilder();
            procedures.all().stream()
                    .filter(p -> p.routine().equals(routine.getKey()))
                    .forEach(p -> rows.append(row(p)));
            if (rows.length() > 0) {
                text.append("\n### ").append(routine.getKey()).append("\n\nState: ");
                text.append(routine.getValue()).append(".\n\n");
                text.append("| procedure | what is done | who | minutes | tool |\n|---|---|---|---|---|\n");
                text.append(rows);
            }
        }
        return text.append('\n').toString();
    }

    private static String row(Procedure p) {
        String who = p.who().name().toLowerCase(Locale.ROOT) + (p.inside().isEmpty() ? "" : ", panels off");
        double minutes = p.minutes();
        String time = minutes == Math.rint(minutes) ? String.valueOf((int) minutes) : String.valueOf(minutes);
        return "| "
                + String.join(
                        " | ",
                        p.id(),
                        Phrases.plain(p.says()),
                        who,
                        time,
                        p.tool().isEmpty() ? "–" : p.tool()) + " |\n";
    }
}
