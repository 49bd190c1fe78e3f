package wetside.bench;

import io.javalin.http.Context;
import java.util.List;
import wetside.units.Display;

/**
 * What stands round every page.
 *
 * @param title  of the page
 * @param menu   entry of the menu it belongs to, "" for none
 * @param units  as this reader wants them
 * @param assets address of style and scripts; changes with their content
 */
public record Frame(String title, String menu, Display units, String assets) {
    /** The menu, in its order: name and address. */
    public static final List<Entry> MENU = List.of(
            new Entry("Jobs", "/jobs"),
            new Entry("Machines", "/machines"),
            new Entry("Fault finding", "/fault"),
            new Entry("Readings", "/readings"),
            new Entry("Run", "/run"),
            new Entry("Water", "/water"));

    /** An entry of the menu. */
    public record Entry(String name, String address) {}

    static final String UNITS = "units";

    static Frame of(Context context, String title, String menu) {
        return new Frame(title, menu, units(context), Assets.address());
    }

    /** How this reader wants measures. */
    static Display units(Context context) {
        return "us".equals(context.cookie(UNITS)) ? Display.US : Display.METRIC;
    }
}
