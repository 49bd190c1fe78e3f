package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import wetside.casework.Installed;
import wetside.drawing.Theme;
import wetside.machine.Machine;
import wetside.map.MachineMap;
import wetside.page.Block;
import wetside.page.Sheet;

/** Maps on paper: one sheet each, laid whichever way shows them larger, then what joins what in words. */
final class MapPages {
    /** Width by height of what is left on a sheet under a heading: laid across, and upright. */
    private static final double ACROSS = 1009 / 570.0;

    private static final double UPRIGHT = 680 / 860.0;

    private static final double ON_SCREEN = 0.65;

    private MapPages() {}

    /** @param paper words first, so that the first sheet is full; on a screen the drawings come first */
    static Sheet of(Installed installed, List<MachineMap> maps, boolean paper) {
        Machine.Identity identity = installed.machine().identity();
        List<Sheet.Section> sections = new ArrayList<>();
        for (MachineMap map : maps) {
            Sheet.Section alone = section(map, map.title(), paper);
            // a sheet laid the other way begins by itself; told to, it would follow an empty one
            boolean before =
                    !sections.isEmpty() && sections.get(sections.size() - 1).across();
            sections.add(new Sheet.Section(
                    alone.title(), paper && before == alone.across(), alone.across(), alone.blocks()));
        }
        List<Block> words = new ArrayList<>();
        for (MachineMap map : maps) {
            map.outline().forEach((group, lines) -> {
                words.add(new Block.Heading(group));
                words.add(new Block.Prose(lines));
            });
        }
        sections.add(paper ? 0 : sections.size(), new Sheet.Section("In words", words));
        return new Sheet(
                "Map of " + identity.title(),
                "",
                Sheet.Plate.of("Machine", identity.title(), "Made as", identity.making()),
                "Drawn from the machine file; numbers are those of the cabinet, the tours and the part cards. Before hands"
                        + " touch anything inside: unplug, let it cool, let the pressure off.",
                sections,
                "");
    }

    /** One map among upright sheets: laid across it begins a sheet by itself. */
    static Sheet.Section between(MachineMap map, String title) {
        Sheet.Section alone = section(map, title, true);
        return new Sheet.Section(title, !alone.across(), alone.across(), alone.blocks());
    }

    /** One map, laid whichever way shows it larger; on a screen an upright one keeps its measure beside wide ones. */
    private static Sheet.Section section(MachineMap map, String title, boolean paper) {
        boolean across = map.aspect() > 1.1;
        double onPaper = Math.min(1, map.aspect() / (across ? ACROSS : UPRIGHT));
        double share = paper ? onPaper : across ? 1 : ON_SCREEN;
        Block.Drawing drawing = new Block.Drawing(map.svg(Theme.LIGHT), "map: " + map.title(), "", share);
        return new Sheet.Section(title, true, across, List.of(drawing));
    }
}
