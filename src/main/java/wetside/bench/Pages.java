package wetside.bench;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;

/** Turns a record into a page through its template. */
final class Pages {
    private final TemplateEngine templates =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "wetside.jte");

    /** A whole page: {@code bench/NAME.jte} with {@code frame} and {@code model}. */
    void show(Context context, String template, String title, String menu, Object model) {
        show(context, template, title, menu, model, "");
    }

    /** @param typed id of the form that is sent along when units are chosen, and takes the choice over */
    void show(Context context, String template, String title, String menu, Object model, String typed) {
        Map<String, Object> parameters = new LinkedHashMap<>();
        parameters.put("frame", Frame.of(context, title, menu, typed));
        parameters.put("model", model);
        send(context, template, parameters);
    }

    /** A piece of a page, for scripts that put it where it belongs. */
    void piece(Context context, String template, Object model) {
        send(context, template, Map.of("frame", Frame.of(context, "", "", ""), "model", model));
    }

    /** A piece that is put into pages later. */
    String markup(String template, Object model) {
        StringOutput out = new StringOutput();
        templates.render("bench/" + template + ".jte", Map.of("model", model), out);
        return out.toString();
    }

    private void send(Context context, String template, Map<String, Object> parameters) {
        StringOutput out = new StringOutput();
        templates.render("bench/" + template + ".jte", parameters, out);
        context.contentType("text/html; charset=utf-8").result(out.toString());
    }
}
