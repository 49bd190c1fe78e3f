package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
        int[] chosen = chosen(context);
        for (Group g : Group.values()) {
            String said = context.formParam(g.name().toLowerCase(Locale.ROOT));
            if (said != null && said.matches("\\d") && Integer.parseInt(said) < g.units.size()) {
                chosen[g.ordinal()] = Integer.parseInt(said);
            }
        }
        StringBuilder kept = new StringBuilder();
        for (int c : chosen) {
            kept.append(c);
        }
        context.cookie(COOKIE, kept.toString(), YEAR);
        String back = context.formParam("back");
        context.redirect(back != null && back.matches("/(?![/\\\\]).*|/") ? back : "/", HttpStatus.SEE_OTHER);
    }

    private static int[] chosen(Context context) {
        String kept = context.cookie(COOKIE);
        int[] chosen = new int[Group.values().length];
        for (Group g : Group.values()) {
            int at = g.ordinal();
            int digit = kept != null && kept.matches("\\d{1,8}") && kept.length() > at ? kept.charAt(at) - '0' : 0;
            chosen[at] = digit < g.units.size() ? digit : 0;
        }
        return chosen;
    }

    /** How this reader wants measures. */
    static Display of(Context context) {
        int[] c = chosen(context);
        return new Display(
                Group.PRESSURE.units.get(c[0]),
                Group.TEMPERATURE.units.get(c[1]),
                Group.VOLUME.units.get(c[2]),
                Group.HARDNESS.units.get(c[3]));
    }

    /** The menu with what is chosen in it. */
    static List<Choice> menu(Context context) {
        int[] chosen = chosen(context);
        List<Choice> menu = new ArrayList<>();
        for (Group g : Group.values()) {
            List<Way> ways = new ArrayList<>();
            for (int i = 0; i < g.units.size(); i++) {
                ways.add(new Way(spoken(g.units.get(i)), "" + i, i == chosen[g.ordinal()]));
            }
            menu.add(new Choice(g.title, g.name().toLowerCase(Locale.ROOT), ways));
        }
        return menu;
    }

    private static String spoken(String unit) {
        return Map.of("l", "litre", "ppm CaCO3", "ppm").getOrDefault(unit, unit);
    }
}
