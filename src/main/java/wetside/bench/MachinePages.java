package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wetside.card.Card;
import wetside.card.CardWords;
import wetside.machine.Component;
import wetside.machine.Side;
import wetside.machine.Wording;
import wetside.map.Layer;
import wetside.map.MachineMap;
import wetside.page.Level;
import wetside.shop.Jobs;
import wetside.tour.Follow;
import wetside.tour.Tour;
import wetside.tour.TourSheet;

/** One machine: its map, its cabinet, the card of the part one points at, a walk, and what was done to it. */
public final class MachinePages implements Routes {
    private static final String SIDE = "side";

    private final Workshop workshop;
    private final Pages pages;
    private final Subjects subjects;
    private final Drawings drawings;

    MachinePages(Workshop workshop, Pages pages, Subjects subjects, Drawings drawings) {
        this.workshop = workshop;
        this.pages = pages;
        this.subjects = subjects;
        this.drawings = drawings;
    }

    /**
     * @param map      the drawing, trusted markup of our own
     * @param layers   what can be switched off in it
     * @param ways     what it can be coloured by, and pipes or wires
     * @param moment   when it is that heat or pressure is shown, "" for neither
     * @param cabinet  views of the case
     * @param sides    from where it can be seen
     * @param card     null while no part is chosen
     * @param parts    of the machine, to choose one without a pointer
     * @param onMap    ids of those that have a number on the map
     * @param size     the other way to see the map: whole, or with all names
     * @param walk     where one is on a walk
     */
    public record View(
            Subject subject,
            Plate plate,
            String map,
            List<Layer> layers,
            List<Choice> ways,
            List<Choice> colours,
            String moment,
            List<Drawings.Look> cabinet,
            List<Choice> sides,
            CardView card,
            List<Named> parts,
            Set<String> onMap,
            Choice size,
            List<Choice> walks,
            Walk walk,
            List<Jobs.Ticket> jobs) {}

    /** Something that can be chosen by a link. */
    public record Choice(String words, String address, boolean chosen) {}

    /** A part with its number. */
    public record Named(int number, String name, String id, String address, boolean chosen) {}

    /** @param signs address that adds what would show each failure, "" when it is shown */
    public record CardView(
            String title,
            String part,
            Level level,
            Map<String, String> facts,
            List<Fails> fails,
            List<Test> tests,
            List<String> caution,
            String signs) {}

    public record Fails(String words, List<String> shows) {}

    public record Test(String says, String reads, Level level) {}

    /** @param number of the stop, from 1; 0 before the first */
    public record Walk(
            String title, int number, int of, String name, String words, String back, String next, String caution) {}

    @Override
    public void routes(RoutesConfig routes) {
        Subjects.ADDRESSES.forEach(a -> routes.get(a, this::show));
    }

    private void show(Context context) {
        Subject s = subjects.of(context);
        boolean wires = "wires".equals(context.queryParam("map"));
        Drawings.By by = by(context.queryParam("by"));
        Optional<Follow> follow = follow(context.queryParam("follow"));
        Tour tour = drawings.tour(s, follow.orElse(wires ? Follow.CURRENT : Follow.WATER));
        int stop = follow.isEmpty()
                ? 0
                : stop(context.queryParam("stop"), tour.stops().size());
        String part = part(s, context.queryParam("part"));
        if (part == null && stop > 0) {
            String on = tour.stops().get(stop - 1).component();
            part = s.installed().machine().has(on) ? on : null;
        }
        Map<String, String> state = new LinkedHashMap<>();
        if (context.queryParam("revision") != null) {
            state.put("revision", s.installed().machine().identity().revision());
        }
        if (wires) {
            state.put("map", "wires");
        }
        if (by != Drawings.By.MEDIUM && !wires) {
            state.put("by", by.name().toLowerCase(Locale.ROOT));
        }
        side(s, context.queryParam("side")).ifPresent(side -> state.put(SIDE, side.word()));
        if (context.queryParam("names") != null) {
            state.put("names", "all");
        }
        pages.show(
                context,
                "machine",
                s.title(),
                "Machines",
                view(context, s, wires, wires ? Drawings.By.MEDIUM : by, tour, stop, part, state));
    }

    private View view(
            Context context,
            Subject s,
            boolean wires,
            Drawings.By by,
            Tour tour,
            int stop,
            String part,
            Map<String, String> state) {
        String query = MachinesPages.query(state);
        Set<Layer> layers = wires ? MachineMap.WIRED : MachineMap.WET;
        MachineMap map = drawings.map(s, layers, by);
        Optional<Side> side = side(s, state.get(SIDE));
        boolean names = state.containsKey("names");
        String drawn = map.isEmpty() ? "" : drawings.mapText(s, layers, by, query, names);
        if (part != null) {
            drawn = drawn.replace("data-part=\"" + part + "\"", "data-part=\"" + part + "\" class=\"chosen\"");
        }
        return new View(
                s,
                s.plate(workshop, Frame.units(context)),
                Spoken.drawing(drawn, Frame.units(context)),
                by == Drawings.By.MEDIUM
                        ? List.copyOf(map.isEmpty() ? EnumSet.noneOf(Layer.class) : map.shown())
                        : List.of(),
                ways(state, wires, part),
                wires ? List.of() : colours(state, by),
                drawings.moment(s, by),
                drawings.cabinet(s, Optional.ofNullable(part), side, query),
                sides(s, state, part),
                part == null ? null : card(s, part, context.queryParam("signs") != null, query),
                parts(s, part, query),
                map.isEmpty() ? Set.of() : map.numbered(),
                new Choice(
                        names ? "Whole map" : "All names, full size",
                        with(state, "names", names ? null : "all") + (part == null ? "" : "part=" + part),
                        names),
                walks(state, tour, stop),
                walk(tour, stop, query),
                s.onRegister() == null
                        ? List.of()
                        : workshop.jobs().ticketsOf(s.onRegister().id()));
    }

    private static Drawings.By by(String word) {
        for (Drawings.By by : Drawings.By.values()) {
            if (by.name().toLowerCase(Locale.ROOT).equals(word)) {
                return by;
            }
        }
        return Drawings.By.MEDIUM;
    }

    private static Optional<Follow> follow(String word) {
        int i = word == null ? -1 : Follow.words().indexOf(word);
        return i < 0 ? Optional.empty() : Optional.of(Follow.values()[i]);
    }

    private static int stop(String said, int most) {
        return said != null && said.matches("\\d{1,4}") ? Math.min(most, Integer.parseInt(said)) : Math.min(1, most);
    }

    private static String part(Subject s, String said) {
        if (said == null || said.isEmpty()) {
            return null;
        }
        if (!s.installed().machine().has(said)) {
            throw new NotFoundResponse();
        }
        return said;
    }

    private static List<Choice> ways(Map<String, String> state, boolean wires, String part) {
        String kept = part == null ? "" : "part=" + part;
        return List.of(
                new Choice("Pipes", with(state, "map", null) + kept, !wires),
                new Choice("Wires", with(state, "map", "wires") + kept, wires));
    }

    private Optional<Side> side(Subject s, String word) {
        return drawings.sides(s).stream().filter(x -> x.word().equals(word)).findFirst();
    }

    private List<Choice> sides(Subject s, Map<String, String> state, String part) {
        String kept = part == null ? "" : "part=" + part;
        List<Choice> sides = new ArrayList<>();
        sides.add(new Choice("two sides", with(state, SIDE, null) + kept, !state.containsKey(SIDE)));
        for (Side x : drawings.sides(s)) {
            sides.add(new Choice(
                    x.word(), with(state, SIDE, x.word()) + kept, x.word().equals(state.get(SIDE))));
        }
        return sides;
    }

    private static List<Choice> colours(Map<String, String> state, Drawings.By by) {
        List<Choice> choices = new ArrayList<>();
        for (Drawings.By each : Drawings.By.values()) {
            String word = each.name().toLowerCase(Locale.ROOT);
            choices.add(
                    new Choice("By " + word, with(state, "by", each == Drawings.By.MEDIUM ? null : word), each == by));
        }
        return choices;
    }

    private static String with(Map<String, String> state, String name, String value) {
        Map<String, String> changed = new LinkedHashMap<>(state);
        changed.remove(name);
        if (value != null) {
            changed.put(name, value);
        }
        return MachinesPages.query(changed);
    }

    private static List<Named> parts(Subject s, String part, String query) {
        List<Named> parts = new ArrayList<>();
        var numbers = wetside.drawing.PartNumbers.of(s.file());
        for (Component c : s.installed().machine().components()) {
            numbers.of(c.id())
                    .ifPresent(n ->
                            parts.add(new Named(n, c.name(), c.id(), query + "part=" + c.id(), c.id().equals(part))));
        }
        parts.sort(Comparator.comparingInt(Named::number));
        return parts;
    }

    private CardView card(Subject s, String id, boolean signs, String query) {
        Card card = drawings.card(s, id, signs);
        CardWords words = new CardWords(card);
        List<Fails> fails = new ArrayList<>();
        for (Card.Failure f : card.fails()) {
            fails.add(new Fails(
                    words.failure(f) + ": " + f.words().says(),
                    f.notices().stream().map(words::notice).toList()));
        }
        List<Test> tests = signs
                ? card.checks().stream()
                        .map(c -> new Test(
                                Wording.capital(c.asking().procedure().says()),
                                c.expected().words(),
                                Level.values()[
                                        c.asking().question().effort().who().ordinal()]))
                        .toList()
                : List.of();
        Map<String, String> facts = new LinkedHashMap<>(words.facts());
        facts.put("Test", Wording.capital(card.words().test()) + ".");
        return new CardView(
                words.title(),
                id,
                Level.values()[card.level().ordinal()],
                facts,
                fails,
                tests,
                words.caution(),
                signs || fails.isEmpty() ? "" : query + "part=" + id + "&signs=1");
    }

    private static List<Choice> walks(Map<String, String> state, Tour tour, int stop) {
        List<Choice> walks = new ArrayList<>();
        for (Follow f : Follow.values()) {
            Map<String, String> there = new LinkedHashMap<>(state);
            there.remove("map");
            if (f == Follow.CURRENT) {
                there.remove("by");
                there.put("map", "wires");
            }
            there.put("follow", f.word());
            there.put("stop", "1");
            walks.add(new Choice(f.title(), MachinesPages.query(there), stop > 0 && f == tour.follow()));
        }
        return walks;
    }

    private static Walk walk(Tour tour, int stop, String query) {
        int of = tour.stops().size();
        String on = query + "follow=" + tour.follow().word() + "&stop=";
        String caution = TourSheet.caution(tour.follow()).rule();
        if (stop == 0) {
            String words = of == 0
                    ? TourSheet.nothing(tour.follow())
                    : "Stop by stop through the machine, in the order things flow: what each part does here and what one"
                            + " would notice if it failed.";
            return new Walk(tour.follow().title(), 0, of, "", words, "", of == 0 ? "" : on + 1, caution);
        }
        Tour.Stop at = tour.stops().get(stop - 1);
        String turns = turnsAfter(tour, at);
        return new Walk(
                tour.follow().title(),
                stop,
                of,
                (at.number() == 0 ? "" : at.number() + " ") + Wording.capital(at.name()),
                TourSheet.said(at) + (turns.isEmpty() ? "" : " " + turns),
                stop > 1 ? on + (stop - 1) : "",
                stop < of ? on + (stop + 1) : "",
                caution);
    }

    /** What is said between a stop and the next. */
    private static String turnsAfter(Tour tour, Tour.Stop stop) {
        List<String> said = new ArrayList<>();
        boolean here = false;
        for (Tour.Chapter chapter : tour.chapters()) {
            for (Tour.Step step : chapter.steps()) {
                if (step instanceof Tour.Stop) {
                    here = step == stop;
                } else if (here) {
                    said.add(((Tour.Turn) step).words());
                }
            }
            here = false;
        }
        return String.join(" ", said);
    }
}
