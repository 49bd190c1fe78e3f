package wetside.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import wetside.cabinet.Cabinet;
import wetside.cabinet.CabinetDrawing;
import wetside.cabinet.Fitted;
import wetside.card.Card;
import wetside.card.CardSheet;
import wetside.card.Cards;
import wetside.diagnosis.Who;
import wetside.drawing.PartNumbers;
import wetside.machine.Side;
import wetside.map.Layer;
import wetside.map.MachineMap;
import wetside.map.Measured;
import wetside.page.Picture;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;
import wetside.run.Action;
import wetside.run.Scenario;
import wetside.tour.Follow;
import wetside.tour.Telling;
import wetside.tour.Tour;

/** Maps, cabinets, walks and cards of machines, which take the better part of a second to make: made once. */
public final class Drawings {
    private static final int KEPT = 200;
    /** Machines the twin simulates for each failure of a part. */
    private static final int DRAWS = 4;

    /** What a desk of 1280 by 800 has for a map beside the cabinet [px]. */
    private static final double ROOM_ACROSS = 774;

    private static final double ROOM_DOWN = 537;

    /** Routines in which coffee is brewed, and the marks in them when it is under pressure. */
    private static final List<String> BREWING = List.of("shot", "one pull");

    private static final Set<String> PRESSED = Set.of("pressing", "poured");

    private final Procedures procedures = Procedures.bundled();
    private final Kept<String, MachineMap> maps = new Kept<>(KEPT);
    private final Kept<String, String> texts = new Kept<>(KEPT);
    private final Kept<String, Tour> tours = new Kept<>(KEPT);
    private final Kept<String, Cards> cards = new Kept<>(24);
    private final Kept<String, Card> written = new Kept<>(KEPT);
    private final Kept<String, Repertoire> repertoires = new Kept<>(24);

    Drawings() {}

    /** What lines are coloured by. */
    enum By {
        MEDIUM(null),
        HEAT(Measured.Quantity.TEMPERATURE),
        PRESSURE(Measured.Quantity.PRESSURE);

        private final Measured.Quantity quantity;

        By(Measured.Quantity quantity) {
            this.quantity = quantity;
        }
    }

    MachineMap map(Subject s, Set<Layer> layers, By by) {
        return maps.of(s.key() + layers + by, () -> {
            PartNumbers numbers = PartNumbers.of(s.file());
            if (by == By.MEDIUM) {
                return MachineMap.of(s.installed().machine(), numbers, layers);
            }
            return MachineMap.of(brewing(s).by(by.quantity), numbers, layers);
        });
    }

    /** While coffee is brewed, where the machine can be taken there; else as it stands. */
    private Measured brewing(Subject s) {
        Measured measured = Measured.cold(s.installed().machine());
        routine(s).ifPresent(routine -> {
            List<Scenario> chain = repertoire(s).leadingTo(routine);
            chain.subList(0, chain.size() - 1).forEach(measured.run()::go);
            untilPressed(measured, chain.get(chain.size() - 1));
        });
        return measured;
    }

    private Optional<String> routine(Subject s) {
        return BREWING.stream()
                .flatMap(b ->
                        repertoire(s).routines().keySet().stream().filter(r -> r.equals(b) || r.startsWith(b + ", ")))
                .findFirst();
    }

    private static void untilPressed(Measured measured, Scenario scenario) {
        for (Action a : scenario.steps()) {
            measured.run().go(a);
            if (a instanceof Action.Mark m && PRESSED.contains(m.name())) {
                return;
            }
        }
    }

    /** When it is that a map shows heat or pressure; "" for one that shows neither. */
    String moment(Subject s, By by) {
        if (by == By.MEDIUM) {
            return "";
        }
        String when = routine(s).isPresent() ? "While coffee is brewed" : "Cold, as it stands";
        return by == By.HEAT ? when + "; dotted lines stand still" : when;
    }

    /** @param names whether every part has its name on the map, however large that makes it */
    String mapText(Subject s, Set<Layer> layers, By by, String query, boolean names) {
        UnaryOperator<String> link = id -> query + "part=" + id;
        return texts.of(s.key() + s.address() + layers + by + query + names, () -> {
            MachineMap map = map(s, layers, by);
            return Picture.onPage(names ? map.linked(link) : map.linked(link, ROOM_ACROSS, ROOM_DOWN));
        });
    }

    Repertoire repertoire(Subject s) {
        return repertoires.of(
                s.key(), () -> Repertoire.of(procedures, s.installed().machine()));
    }

    Cards cards(Subject s) {
        return cards.of(s.key(), () -> new Cards(s.file(), s.installed(), procedures));
    }

    /** @param signs whether the twin is asked what would show each failure: that takes seconds */
    Card card(Subject s, String part, boolean signs) {
        return written.of(s.key() + "|" + part + signs, () -> cards(s).card(part, Who.TECHNICIAN, signs ? DRAWS : 0));
    }

    Tour tour(Subject s, Follow follow) {
        return tours.of(
                s.key() + follow,
                () -> Telling.of(
                        follow,
                        s.installed().machine(),
                        PartNumbers.of(s.file()),
                        s.installed().feed()));
    }

    /** A view of the case and what it is. */
    public record Look(String svg, String caption) {}

    /** The sides a cabinet can be drawn from; none where there is no cabinet. */
    List<Side> sides(Subject s) {
        return cards(s).cabinet().map(Cabinet::sides).orElse(List.of());
    }

    /**
     * From one side, large; or, where none is chosen, from where a part is seen best and from beside that, without a part
     * from the rear and the right.
     */
    List<Look> cabinet(Subject s, Optional<String> part, Optional<Side> from, String query) {
        Cabinet cabinet = cards(s).cabinet().orElse(null);
        if (cabinet == null) {
            return List.of();
        }
        Optional<Fitted> chosen = part.flatMap(cabinet::part);
        List<Side> sides = from.map(List::of)
                .orElseGet(() -> chosen.map(f -> CardSheet.sides(cabinet, f)).orElse(List.of(Side.REAR, Side.RIGHT)));
        List<Look> looks = new ArrayList<>();
        for (Side side : sides) {
            looks.add(look(s, cabinet, chosen, side, id -> query + "part=" + id, query));
        }
        return looks;
    }

    private Look look(
            Subject s, Cabinet cabinet, Optional<Fitted> chosen, Side side, UnaryOperator<String> link, String query) {
        String key = s.key() + s.address() + "|" + chosen.map(Fitted::id).orElse("") + side + query;
        String svg = texts.of(
                key,
                () -> Picture.onPage(
                        new CabinetDrawing(cabinet, chosen, Set.of(), CabinetDrawing.Room.HALF).bare(side, link)));
        String off = cabinet.panels(side).isEmpty() ? "" : ", panel off";
        return new Look(svg, "from the " + side.word() + off);
    }
}
