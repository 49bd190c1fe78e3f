package wetside.tour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wetside.cabinet.Cabinet;
import wetside.cabinet.CabinetDrawing;
import wetside.machine.Side;
import wetside.page.Block;

/** The drawings that go with a walk: where its stops sit in the case. */
public final class Pictures {
    /** Views with fewer stops than this are left out; the words say where those sit. */
    private static final int WORTH_A_VIEW = 3;
    /** Width of a sheet in the drawings' own measure [px]. */
    private static final double SHEET = 664;

    private Pictures() {}

    /** Views of the case from the sides most of the stops are looked for, the fullest first. */
    public static List<Block> of(Tour tour, Optional<Cabinet> cabinet) {
        if (cabinet.isEmpty()) {
            return List.of();
        }
        Cabinet c = cabinet.get();
        Set<String> stops = tour.stops().stream().map(Tour.Stop::component).collect(Collectors.toSet());
        List<Block.Drawing> views = new ArrayList<>();
        for (Side side : c.sides()) {
            Set<String> here = c.parts().stream()
                    .filter(p -> stops.contains(p.id()) && c.best(p) == side)
                    .map(p -> p.id())
                    .collect(Collectors.toSet());
            if (here.size() >= WORTH_A_VIEW) {
                CabinetDrawing drawing = new CabinetDrawing(c, Optional.empty(), here, CabinetDrawing.Room.HALF);
                String caption = drawing.caption(side);
                String heading = caption.substring(0, caption.indexOf('.') + 1);
                views.add(new Block.Drawing(drawing.bare(side), caption, heading, drawing.bareWidth(side) / SHEET));
            }
        }
        return rows(views);
    }

    private static List<Block> rows(List<Block.Drawing> views) {
        List<Block> rows = new ArrayList<>();
        List<Block.Drawing> row = new ArrayList<>();
        double used = 0;
        for (Block.Drawing view : views) {
            if (used + view.share() > 1) {
                rows.add(new Block.Drawings(row));
                row = new ArrayList<>();
                used = 0;
            }
            row.add(view);
            used += view.share();
        }
        if (!row.isEmpty()) {
            rows.add(new Block.Drawings(row));
        }
        return rows;
    }
}
