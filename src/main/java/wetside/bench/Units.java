package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wetside.units.Display;

/** In which units this browser wants measures: one choice for each quantity, kept in a cookie. */
public final class Units implements Routes {
    private static final String COOKIE = "units";
    private static final int YEAR = 365 * 24 * 3600;

    /** A quantity with the units it can be shown in; the first is what nobody has chosen. */
    private enum Group {
        PRESSURE("Pressure", "bar", "psi"),
        TEMPERATURE("Temperature", "°C", "°F"),
        VOLUME("Volume", "l", "US gal"),
        HARDNESS("Hardness", "°dH", "°fH", "ppm CaCO3");

        private final String title;
        private final List<String> units;

        Group(String title, String... units) {
            this.title = title;
            this.units = List.of(units);
        }

        /** Its field in a form; a water has a field "hardness" of its own. */
        private String field() {
            return "units-" + name().toLowerCase(Locale.ROOT);
        }
    }

    /** A group as it stands in the menu. */
    public record Choice(String title, String name, List<Way> ways) {}

    /** @param value what the form sends: the place of the unit in its group */
    public record Way(String words, String value, boolean chosen) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.post("/units", Units::choose);
    }

    private static void choose(Context context) {
        take(context);
        String back = context.formParam("back");
        context.redirect(back != null && back.matches("/(?![/\\\\]).*|/") ? back : "/", HttpStatus.SEE_OTHER);
    }

    /**
     * Takes over the choice a form sent, for this answer and those that follow.
     *
     * @return whether it sent one
     */
    static boolean take(Context context) {
        int[] chosen = chosen(code(context));
        boolean any = false;
        for (Group g : Group.values()) {
            String said = context.formParam(g.field());
            if (said != null && said.matches("\\d") && Integer.parseInt(said) < g.units.size()) {
                chosen[g.ordinal()] = Integer.parseInt(said);
                any = true;
            }
        }
        if (any) {
            String code = code(chosen);
            context.cookie(COOKIE, code, YEAR);
            context.attribute(COOKIE, code);
        }
        return any;
    }

    /** The choice in short, as the cookie has it: "0000" where nobody has chosen. */
    static String code(Context context) {
        String taken = context.attribute(COOKIE);
        String kept = taken == null ? context.cookie(COOKIE) : taken;
        return code(chosen(kept == null ? "" : kept));
    }

    private static String code(int[] chosen) {
        return IntStream.of(chosen).mapToObj(Integer::toString).collect(Collectors.joining());
    }

    private static int[] chosen(String code) {
        int[] chosen = new int[Group.values().length];
        for (Group g : Group.values()) {
            int at = g.ordinal();
            int digit = code.matches("\\d{1,8}") && code.length() > at ? code.charAt(at) - '0' : 0;
            chosen[at] = digit < g.units.size() ? digit : 0;
        }
        return chosen;
    }

    /** How this reader wants measures. */
    static Display of(Context context) {
        return of(code(context));
    }

    /** What a {@link #code} stands for. */
    static Display of(String code) {
        int[] c = chosen(code);
        return new Display(
                Group.PRESSURE.units.get(c[0]),
                Group.TEMPERATURE.units.get(c[1]),
                Group.VOLUME.units.get(c[2]),
                Group.HARDNESS.units.get(c[3]));
    }

    /** The menu with what is chosen in it. */
    static List<Choice> menu(Context context) {
        int[] chosen = chosen(code(context));
        List<Choice> menu = new ArrayList<>();
        for (Group g : Group.values()) {
            List<Way> ways = new ArrayList<>();
            for (int i = 0; i < g.units.size(); i++) {
                ways.add(new Way(spoken(g.units.get(i)), "" + i, i == chosen[g.ordinal()]));
            }
            menu.add(new Choice(g.title, g.field(), ways));
        }
        return menu;
    }

    private static String spoken(String unit) {
        return Map.of("l", "litre", "ppm CaCO3", "ppm").getOrDefault(unit, unit);
    }
}
