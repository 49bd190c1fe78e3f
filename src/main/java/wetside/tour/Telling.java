package wetside.tour;

import java.util.ArrayList;
import java.util.List;
import wetside.drawing.PartNumbers;
import wetside.machine.Component;
import wetside.machine.Installation;
import wetside.machine.Machine;
import wetside.machine.Wording;

/** A walk put into sentences: stops with the words of their kinds, and between them where the way parts and meets. */
public final class Telling {
    private static final List<String> PARTS_IN_TWO = List.of(
            "Here the way parts, to {side} and to {main}. The short way first.",
            "Two ways lead on: one to {side}, which we take first, the other to {main}.",
            "From {here} it can go to {side} or to {main}. We look at the first and come back.",
            "Again there are two ways. We go to {side} first and keep {main} for later.");
    private static final List<String> PARTS_IN_MORE = List.of(
            "From {here} {count} ways lead on: to {all}. We take them one after the other.",
            "Here it spreads over {count} ways, to {all}, and we go along each in turn.");
    private static final List<String> BACK = List.of(
            "Back at {here}, the way goes on to {next}.",
            "From {here} now to {next}.",
            "We return to {here} and go on to {next}.",
            "Again from {here}: next comes {next}.");
    private static final List<String> ONCE_MORE = List.of(
            "This leads into {here} a second time, and from there on to {next}.",
            "So it comes into {here} once more and leaves it towards {next}.");
    private static final List<String> ANOTHER = List.of(
            "Another way begins elsewhere.",
            "And one that begins apart.",
            "There is one more.",
            "The next begins on its own.");
    private static final List<String> LETS_OFF = List.of(
            "That is one way out; the next part lets go by itself.",
            "Another part can let go as well.",
            "There is one more way out.",
            "And one more that lets off.");
    private static final List<String> BEGINS = List.of("It begins at {here}.");
    private static final List<String> ASKS = List.of(
            "From {here} thin wires lead to {next}.",
            "Other wires join {here} with {next}.",
            "{here} has wires of its own, to {next}.",
            "And {here} is wired to {next}.");
    private static final List<String> SERVES = List.of(
            "From here it goes to {here} and back.", "It works {here} and returns.", "What it works is {here}.");
    private static final List<String> RING = List.of(
            "Through it the water is back in {here}. That is a ring: it goes round by itself as long as one side is hotter than the other.",
            "So it comes back into {here}, and another ring is closed.");
    private static final List<String> RUNS_BACK = List.of(
            "From here it runs back into {here} and can start anew.", "This too ends in {here}, where it came from.");
    private static final List<String> CIRCUIT = List.of(
            "From here it goes back to {here}: the circuit is closed.",
            "And back to {here}.",
            "With {here} this circuit is closed as well.",
            "The way back ends at {here}.");
    private static final List<String> MEETS = List.of(
            "Here it joins the way we know, at {here}.",
            "It ends in {here}, where we have been; from there it goes the same way.",
            "So it comes to {here} as well.");
    private static final List<String> AT_ONCE = List.of(
            "One way leads to {here}, which we know; another goes on to {next}.",
            "One ends at {here}, the other goes on to {next}.");

    private static final List<String> LATER = List.of(
            "So it comes to {here}, where a longer way will bring us as well.",
            "This ends at {here}; we come there by another way.");
    private static final List<String> LATER_ON = List.of(
            "One way is short and leads to {here}, where we come later; the other goes on to {next}.",
            "It branches to {here}, which comes later, and goes on to {next}.");
    private static final List<String> STRAIGHT_BACK = List.of(
            "Part of it goes straight back to {here}, the rest on to {next}.",
            "Some returns at once to {here}; the rest goes to {next}.");

    private final Follow follow;
    private final Naming naming;
    private final KindWords words;
    private final WaterWays wet;
    private final Rotation rotation = new Rotation();
    /** Whether the sentence a walk began with has named its ways. */
    private boolean named;

    private List<Tour.Step> steps = new ArrayList<>();

    private Telling(Follow follow, Machine machine, PartNumbers numbers, WaterWays wet) {
        this.follow = follow;
        this.wet = wet;
        naming = new Naming(machine, numbers);
        words = new KindWords(follow, machine, naming);
    }

    /**
     * A walk through a machine.
     *
     * @param feed where the water comes from; the other source, if there is one, is not walked
     */
    public static Tour of(Follow follow, Machine machine, PartNumbers numbers, Installation.Feed feed) {
        WaterWays wet = new WaterWays(machine);
        Telling telling = new Telling(follow, machine, numbers, wet);
        WaterWalk walk = new WaterWalk(wet);
        List<Tour.Chapter> chapters = switch (follow) {
            case WATER -> telling.chapters("", walk.water(feed), ANOTHER);
            case STEAM -> telling.chapters("", walk.steam(), ANOTHER);
            case DRAIN -> telling.chapters("", walk.drain(), LETS_OFF);
            case CURRENT -> telling.current(new CurrentWalk(new CurrentWays(machine)));
        };
        return new Tour(
                follow, chapters.stream().filter(c -> !c.steps().isEmpty()).toList());
    }

    private List<Tour.Chapter> current(CurrentWalk walk) {
        List<Tour.Chapter> chapters = new ArrayList<>();
        chapters.addAll(chapters("Mains, from line to neutral", walk.mains(), ANOTHER));
        chapters.addAll(chapters("Low voltage", walk.lowVoltage(), BEGINS));
        chapters.addAll(chapters("Wires that only tell", walk.sensing(), ASKS));
        chapters.addAll(chapters("Earth", walk.earth(), BEGINS));
        return chapters;
    }

    /** @param begun for a walk that begins where one has been, or anew after another */
    private List<Tour.Chapter> chapters(String title, List<Visit> visits, List<String> begun) {
        steps = new ArrayList<>();
        for (Visit v : visits) {
            if (v.isKnown()) {
                continue;
            }
            if (v.sort != Visit.Sort.FIRST) {
                turn(0, rotation.next(begun), v.part, parts(waysOf(v)));
            } else if (!steps.isEmpty()) {
                steps.add(new Tour.Turn(rotation.next(follow == Follow.DRAIN ? LETS_OFF : ANOTHER), 0));
            }
            named = begun == ASKS;
            tell(v, null, 0);
        }
        return List.of(new Tour.Chapter(title, steps));
    }

    private void tell(Visit visit, Component from, int depth) {
        List<Component> next = visit.on.stream().map(v -> v.part).distinct().toList();
        if (visit.sort == Visit.Sort.FIRST) {
            stop(visit, from, next, depth);
        } else if (from != null && waysOf(visit).size() == 1) {
            turn(depth, rotation.next(ONCE_MORE), visit.part, parts(waysOf(visit)));
        } else if (from != null) {
            turn(depth, "With that we are in {here} again, by another door.", visit.part, "");
        }
        onwards(visit, from == null, depth);
    }

    /** Parts a way passes through a second time before it comes to something new or to its end. */
    private static List<Visit> passedAgain(Visit visit) {
        List<Visit> chain = new ArrayList<>();
        for (Visit v = visit; v.sort == Visit.Sort.AGAIN && v.on.size() == 1; v = v.on.get(0)) {
            chain.add(v);
        }
        return chain;
    }

    private static List<Visit> waysOf(Visit visit) {
        return visit.on.stream().filter(v -> !v.isKnown()).toList();
    }

    /** Known parts it leads to, those left out that one of its ways comes to anyway. */
    private static List<Visit> knownOf(Visit visit) {
        return visit.on.stream()
                .filter(Visit::isKnown)
                .filter(v -> waysOf(visit).stream().noneMatch(w -> w.leadsTo(v.part)))
                .toList();
    }

    private void stop(Visit visit, Component from, List<Component> next, int depth) {
        Component c = visit.part;
        KindWords.Said said = words.of(c, new KindWords.Around(from, next, wet.isPartlyFilled(c)));
        String around = words.around(c);
        steps.add(new Tour.Stop(
                c.id(),
                naming.number(c),
                c.name(),
                naming.place(c),
                said.does() + (around.isEmpty() ? "" : " " + around),
                said.noticed(),
                depth));
    }

    private void turn(int depth, String sentence, Component here, String next) {
        String words = sentence.replace("{here}", naming.the(here)).replace("{next}", next);
        steps.add(new Tour.Turn(Naming.capital(words), depth));
    }

    private void onwards(Visit visit, boolean begins, int depth) {
        List<Visit> known = knownOf(visit);
        List<Visit> ways = waysOf(visit);
        if (ways.isEmpty()) {
            ends(known, depth);
            return;
        }
        // The sentence that brought us here has named the ways already.
        boolean said = visit.sort != Visit.Sort.FIRST && (begins && named || ways.size() == 1);
        if (!known.isEmpty() && !said) {
            List<String> sentences = follow == Follow.CURRENT
                    ? STRAIGHT_BACK
                    : known.stream().allMatch(v -> v.sort == Visit.Sort.LATER) ? LATER_ON : AT_ONCE;
            turn(depth, rotation.next(sentences).replace("{here}", parts(known)), visit.part, parts(ways));
        }
        part(visit, ways, known.isEmpty() && !said, depth);
    }

    private void part(Visit visit, List<Visit> ways, boolean announce, int depth) {
        int last = ways.size() - 1;
        if (last > 0 && announce) {
            announce(visit.part, ways, depth);
        }
        for (int i = 0; i < ways.size(); i++) {
            Visit way = ways.get(i);
            if (i > 0) {
                turn(depth, rotation.next(BACK), visit.part, naming.the(way.part));
            }
            tell(way, visit.part, i < last ? depth + 1 : depth);
        }
    }

    private void announce(Component here, List<Visit> ways, int depth) {
        if (ways.size() == 2) {
            turn(
                    depth,
                    rotation.next(PARTS_IN_TWO)
                            .replace("{side}", naming.the(ways.get(0).part))
                            .replace("{main}", naming.the(ways.get(1).part)),
                    here,
                    "");
        } else {
            turn(
                    depth,
                    rotation.next(PARTS_IN_MORE)
                            .replace("{count}", count(ways.size()))
                            .replace("{all}", parts(ways)),
                    here,
                    "");
        }
    }

    private static String count(int n) {
        String[] small = {"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine"};
        return n < small.length ? small[n] : String.valueOf(n);
    }

    private String parts(List<Visit> visits) {
        return Wording.inWords(
                visits.stream().map(v -> naming.the(v.part)).distinct().toList());
    }

    private void ends(List<Visit> known, int depth) {
        if (known.size() > 2) {
            steps.add(new Tour.Turn("All of this hangs on it: " + parts(known) + ".", depth));
            return;
        }
        for (Visit v : known) {
            List<Visit> through = passedAgain(v);
            if (follow == Follow.CURRENT && through.size() > 1) {
                Visit end = through.get(through.size() - 1).on.get(0);
                turn(
                        depth,
                        "From here it goes back through " + parts(through) + " to {here}: the circuit is closed.",
                        end.part,
                        "");
            } else {
                turn(depth, rotation.next(ending(v)), v.part, "");
            }
        }
    }

    private List<String> ending(Visit v) {
        if (follow == Follow.CURRENT) {
            return v.sort == Visit.Sort.RING ? CIRCUIT : SERVES;
        }
        if (v.sort != Visit.Sort.RING) {
            return v.sort == Visit.Sort.LATER ? LATER : MEETS;
        }
        return v.circulating ? RING : RUNS_BACK;
    }
}
