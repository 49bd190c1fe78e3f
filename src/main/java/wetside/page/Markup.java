package wetside.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** A sheet through the templates, which the build has turned into classes. */
final class Markup {
    private static final TemplateEngine TEMPLATES =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "wetside.jte");

    private Markup() {}

    static String of(Sheet sheet, String style, boolean paper) {
        StringOutput out = new StringOutput();
        TEMPLATES.render("sheet.jte", Map.of("sheet", sheet, "style", style, "paper", paper), out);
        return out.toString();
    }

    /** A style sheet of ours. */
    static String style(String name) {
        try (InputStream in = Markup.class.getResourceAsStream("/wetside/page/" + name + ".css")) {
            if (in == null) {
                throw new IllegalStateException("the style " + name + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("cannot read the style " + name, e);
        }
    }
}
