package wetside.cabinet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import wetside.machine.Machine;
import wetside.machine.Side;
import wetside.page.Block;
import wetside.page.Level;
import wetside.page.Sheet;

/** The cabinet on paper: each side with its numbers, then what each panel hides and how each part is reached. */
public final class CabinetSheet {
    private final Cabinet cabinet;
    private final CabinetDrawing drawing;

    public CabinetSheet(Cabinet cabinet, Optional<Fitted> chosen) {
        this.cabinet = cabinet;
        drawing = new CabinetDrawing(cabinet, chosen, Set.of(), CabinetDrawing.Room.SHEET);
    }

    public Sheet sheet(List<Side> sides) {
        List<Sheet.Section> sections = new ArrayList<>();
        List<Block> views = new ArrayList<>();
        views.add(
                new Block.Caution(
                        Level.TECHNICIAN,
                        "Inside the case: technicians only",
                        "Unplug, cool, let the pressure off before a panel comes off; mind sharp edges. Owners leave the case shut."));
        for (Side side : sides) {
            String svg = drawing.svg(List.of(side));
            views.add(new Block.Drawing(svg, drawing.caption(side), "", 1));
        }
        sections.add(new Sheet.Section("What sits where", views));
        List<Block> ways = new ArrayList<>();
        if (!cabinet.open().isEmpty()) {
            ways.add(new Block.Heading("Reached from outside"));
            ways.add(table(cabinet.open()));
        }
        for (Machine.Panel panel : cabinet.machine().identity().panels()) {
            List<Fitted> hidden = cabinet.hiddenBy(panel);
            if (!hidden.isEmpty()) {
                ways.add(new Block.Heading(head(panel)));
                ways.add(table(hidden));
            }
            List<String> somewhere = cabinet.somewhereBehind(panel);
            if (!somewhere.isEmpty()) {
                ways.add(new Block.Prose("Behind the " + panel.name() + " too, without a place in the machine file: "
                        + String.join(", ", somewhere) + "."));
            }
        }
        sections.add(new Sheet.Section("What each panel hides, and what comes off first", true, ways));
        Machine.Identity m = cabinet.machine().identity();
        return new Sheet(
                "Cabinet",
                "",
                Sheet.Plate.of("Machine", m.title(), "Making", m.making(), "Case", size()),
                "",
                sections,
                "Dashed outlines stand behind others; thin ones are looked for from another side. Sizes of parts are usual ones"
                        + " unless the machine file says otherwise.");
    }

    private static String head(Machine.Panel panel) {
        String minutes = String.format(Locale.ROOT, "%.0f min off and on", panel.minutes());
        return "Behind the " + panel.name() + ": " + minutes
                + (panel.caution().isEmpty() ? "" : ", " + panel.caution());
    }

    private Block table(List<Fitted> parts) {
        List<Block.Row> rows = new ArrayList<>();
        cabinet.ways(parts).forEach((way, there) -> rows.add(Block.Row.of(way, named(there))));
        return new Block.Table(List.of(Block.Column.words("Way"), Block.Column.words("To")), rows);
    }

    /** "12 tee of the pump gauge, 14 check valve". */
    public static String named(List<Fitted> parts) {
        return String.join(
                ", ", parts.stream().map(p -> p.number() + "\u00a0" + p.name()).toList());
    }

    private String size() {
        return String.format(
                Locale.ROOT,
                "%.0f × %.0f × %.0f mm",
                1000 * cabinet.size().width(),
                1000 * cabinet.size().depth(),
                1000 * cabinet.size().height());
    }
}
