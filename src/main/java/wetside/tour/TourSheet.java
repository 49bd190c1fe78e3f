package wetside.tour;

import java.util.ArrayList;
import java.util.List;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.page.Level;
import wetside.page.Sheet;

/** Walks as sections of a printable sheet, each after the drawings that go with it. */
public final class TourSheet {
    private static final Block.Caution WET = new Block.Caution(
            Level.TECHNICIAN,
            "Behind panels it is hot, live and under pressure",
            "Looking from outside is for anyone. Before a panel comes off: unplug, let cool, open the taps until no pressure"
                    + " is left. Owners leave the case shut.");
    private static final Block.Caution LIVE = new Block.Caution(
            Level.QUALIFIED,
            "With a panel off, the plug is out",
            "What has to be measured live is for a qualified electrician alone, and local codes come first. Nothing here"
                    + " asks an owner to open the case.");

    private TourSheet() {}

    /**
     * @param pictures that go with the walk; may be none
     * @param map      a sheet that follows it, or null
     */
    public record Walk(Tour tour, List<Block> pictures, Sheet.Section map) {
        public Walk {
            pictures = List.copyOf(pictures);
        }
    }

    public static Sheet of(List<Walk> walks, String source, Sheet.Plate plate) {
        List<Sheet.Section> sections = new ArrayList<>();
        for (Walk walk : walks) {
            String title =
                    walks.size() == 1 ? "Stop by stop" : walk.tour().follow().title();
            sections.add(section(walk, title, !sections.isEmpty()));
            if (walk.map() != null) {
                sections.add(walk.map());
            }
        }
        String title = walks.size() == 1 ? walks.get(0).tour().follow().title() : "A walk through the machine";
        return new Sheet(
                title,
                source,
                plate,
                "",
                sections,
                "Numbers are those of the drawings. The order is that of the flow, worked out from how the parts are joined.");
    }

    private static Sheet.Section section(Walk walk, String title, boolean fresh) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(caution(walk.tour().follow()));
        blocks.addAll(walk.pictures());
        if (walk.tour().chapters().isEmpty()) {
            blocks.add(new Block.Prose(nothing(walk.tour().follow())));
        }
        for (Tour.Chapter chapter : walk.tour().chapters()) {
            if (!chapter.title().isEmpty()) {
                blocks.add(new Block.Heading(chapter.title()));
            }
            blocks.add(
                    new Block.Walk(chapter.steps().stream().map(TourSheet::stop).toList()));
        }
        return new Sheet.Section(title, fresh, blocks);
    }

    /** What can hurt on a walk, and who may go on it. */
    public static Block.Caution caution(Follow follow) {
        return follow == Follow.CURRENT ? LIVE : WET;
    }

    /** Said where there is nothing to follow. */
    public static String nothing(Follow follow) {
        return switch (follow) {
            case WATER -> "No water comes into this machine as its file has it.";
            case STEAM -> "No part of this machine holds steam above its water.";
            case DRAIN -> "No part of this machine lets anything off.";
            case CURRENT -> "No current comes into this machine as its file has it.";
        };
    }

    private static Block.Stop stop(Tour.Step step) {
        if (step instanceof Tour.Stop s) {
            String mark = s.number() == 0 ? "·" : String.valueOf(s.number());
            return new Block.Stop(mark, Wording.capital(s.name()), s.place(), said(s), s.depth());
        }
        return new Block.Stop("", "", "", ((Tour.Turn) step).words(), step.depth());
    }

    /** All that is said at a stop. */
    public static String said(Tour.Stop stop) {
        return stop.noticed().isEmpty() ? stop.does() : stop.does() + " " + stop.noticed();
    }
}
