package wetside.bench;

import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Collectors;
import wetside.units.Display;

/**
 * What stands round every page.
 *
 * @param title  of the page
 * @param menu   entry of the menu it belongs to, "" for none
 * @param units  as this reader wants them
 * @param assets address of style and scripts; changes with their content
 * @param choice what units can be chosen, and which are
 * @param here   address of the page
 * @param typed  id of the form that is sent along when units are chosen, so that nothing typed is lost; "" for none
 */
public record Frame(
        String title, String menu, Display units, String assets, List<Units.Choice> choice, String here, String typed) {
    /** The menu, in its order: name and address. */
    public static final List<Entry> MENU = List.of(
            new Entry("Jobs", "/jobs"),
            new Entry("Machines", "/machines"),
            new Entry("Fault finding", "/fault"),
            new Entry("Readings", "/readings"),
            new Entry("Run", "/run"),
            new Entry("Water", "/water"),
            new Entry("Department", "/department"));

    /** An entry of the menu. */
    public record Entry(String name, String address) {}

    static Frame of(Context context, String title, String menu, String typed) {
        String query = context.queryString();
        return new Frame(
                title,
                menu,
                units(context),
                Assets.address(),
                Units.menu(context),
                context.path() + (query == null ? "" : "?" + query),
                typed);
    }

    /** How this reader wants measures. */
    static Display units(Context context) {
        return Units.of(context);
    }

    /** A sentence of ours with its measures as this reader wants them; never for what people wrote themselves. */
    public String words(String text) {
        return units.prose(text);
    }

    /** The units chosen, for the button that opens the choice. */
    public String chosenUnits() {
        return choice.stream()
                .flatMap(c -> c.ways().stream().filter(Units.Way::chosen).map(Units.Way::words))
                .map(w -> w.equals("litre") ? "l" : w.replace("US ", ""))
                .collect(Collectors.joining(" · "));
    }
}
