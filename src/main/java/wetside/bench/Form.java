package wetside.bench;

import io.javalin.http.Context;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import wetside.machine.Wording;

/** What a form sent, field by field; each that makes no sense is told by its name. */
final class Form {
    private static final String PERSON = "person";
    private static final int YEAR = 365 * 24 * 3600;

    private final Context context;

    Form(Context context) {
        this.context = context;
    }

    /** Text, trimmed, "" when there is none. */
    String text(String field, int longest) {
        String said = context.formParam(field);
        String text = said == null ? "" : said.strip();
        if (text.length() > longest) {
            throw new BadForm(words(field) + " is too long: at most " + longest + " signs, these are " + text.length());
        }
        return text;
    }

    String needed(String field, int longest) {
        String text = text(field, longest);
        if (text.isEmpty()) {
            throw new BadForm(words(field) + " is missing");
        }
        return text;
    }

    long number(String field) {
        String text = needed(field, 20);
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException e) {
            throw new BadForm(words(field) + ": '" + text + "' is no whole number");
        }
    }

    /** A number between two, both allowed. */
    double between(String field, double least, double most) {
        String text = needed(field, 20).replace(',', '.');
        try {
            double value = Double.parseDouble(text);
            if (value >= least && value <= most) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw new BadForm(words(field) + ": '" + text + "' is no number from " + least + " to " + most);
    }

    /** One of an enumeration by its name. */
    <E extends Enum<E>> E choice(String field, E[] all, Function<E, String> spoken) {
        String said = needed(field, 60);
        return Stream.of(all)
                .filter(e -> e.name().equals(said))
                .findFirst()
                .orElseThrow(() -> new BadForm(words(field) + ": '" + said + "' is none of "
                        + String.join(", ", List.of(all).stream().map(spoken).toList())));
    }

    /** Who is at the screen: as typed, remembered for the next form. */
    String person() {
        String typed = text(PERSON, 60);
        if (!typed.isEmpty()) {
            context.cookie(PERSON, URLEncoder.encode(typed, StandardCharsets.UTF_8), YEAR);
        }
        return typed.isEmpty() ? person(context) : typed;
    }

    /** Who was at the screen last, "desk" when nobody has said. */
    static String person(Context context) {
        String kept = context.cookie(PERSON);
        try {
            return kept == null || kept.isBlank() ? "desk" : URLDecoder.decode(kept, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException e) {
            return "desk";
        }
    }

    private static String words(String field) {
        return Wording.capital(field.replace('-', ' '));
    }
}
