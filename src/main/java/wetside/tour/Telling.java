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
            case WATER -> telling.chapters("", walk.water(feed), Phrases.ANOTHER);
            case STEAM -> telling.chapters("", walk.steam(), Phrases.ANOTHER);
            case DRAIN -> telling.chapters("", walk.drain(), Phrases.LETS_OFF);
            case CURRENT -> telling.current(new CurrentWalk(new CurrentWays(machine)));
        };
        return new Tour(
                follow, chapters.stream().filter(c -> !c.steps().isEmpty()).toList());
    }

    private List<Tour.Chapter> current(CurrentWalk walk) {
        List<Tour.Chapter> chapters = new ArrayList<>();
        chapters.addAll(chapters("Mains, from line to neutral", walk.mains(), Phrases.ANOTHER));
        chapters.addAll(chapters("Low voltage", walk.lowVoltage(), Phrases.BEGINS));
        chapters.addAll(chapters("Wires that only tell", walk.sensing(), Phrases.ASKS));
        chapters.addAll(chapters("Earth", walk.earth(), Phrases.BEGINS));
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
                steps.add(new Tour.Turn(rotation.next(follow == Follow.DRAIN ? Phrases.LETS_OFF : Phrases.ANOTHER), 0));
            }
            named = begun == Phrases.ASKS;
            tell(v, null, 0);
        }
        return List.of(new Tour.Chapter(title, steps));
    }

    private void tell(Visit visit, Component from, int depth) {
        List<Component> next = visit.on.stream().map(v -> v.part).distinct().toList();
        if (visit.sort == Visit.Sort.FIRST) {
            stop(visit, from, next, depth);
        } else if (from != null && waysOf(visit).size() == 1) {
            turn(depth, rotation.next(Phrases.ONCE_MORE), visit.part, parts(waysOf(visit)));
        } else if (from != null) {
            String door = follow == Follow.CURRENT ? "at other terminals" : "by another door";
            turn(depth, "With that we are in {here} again, " + door + ".", visit.part, "");
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
                .filter(v ->
                        v.sort == Visit.Sort.LATER || waysOf(visit).stream().noneMatch(w -> w.leadsTo(v.part)))
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
        steps.add(new Tour.Turn(Wording.capital(words), depth));
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
            List<String> sentences = beside(known);
            turn(depth, rotation.next(sentences).replace("{here}", parts(known)), visit.part, parts(ways));
        }
        part(visit, ways, known.isEmpty() && !said, depth);
    }

    /** For some known parts that one of the ways leads to. */
    private List<String> beside(List<Visit> known) {
        if (follow == Follow.CURRENT) {
            boolean back = known.stream().allMatch(v -> v.sort == Visit.Sort.RING);
            return back ? Phrases.STRAIGHT_BACK : Phrases.WORKS_AND_GOES_ON;
        }
        return known.stream().allMatch(v -> v.sort == Visit.Sort.LATER) ? Phrases.LATER_ON : Phrases.AT_ONCE;
    }

    private void part(Visit visit, List<Visit> ways, boolean announce, int depth) {
        int last = ways.size() - 1;
        if (last > 0 && announce) {
            announce(visit.part, ways, depth);
        }
        for (int i = 0; i < ways.size(); i++) {
            Visit way = ways.get(i);
            if (i > 0) {
                List<String> sentences =
                        ways.size() == 2 || !announce ? Phrases.BACK : i < last ? Phrases.NEXT : Phrases.LAST;
                turn(depth, rotation.next(sentences), visit.part, naming.the(way.part));
            }
            tell(way, visit.part, i < last ? depth + 1 : depth);
        }
    }

    private void announce(Component here, List<Visit> ways, int depth) {
        if (ways.size() == 2) {
            turn(
                    depth,
                    rotation.next(Phrases.PARTS_IN_TWO)
                            .replace("{side}", naming.the(ways.get(0).part))
                            .replace("{main}", naming.the(ways.get(1).part)),
                    here,
                    "");
        } else {
            turn(
                    depth,
                    rotation.next(Phrases.PARTS_IN_MORE)
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
            return v.sort == Visit.Sort.RING ? Phrases.CIRCUIT : Phrases.SERVES;
        }
        if (v.sort != Visit.Sort.RING) {
            return v.sort == Visit.Sort.LATER ? Phrases.LATER : Phrases.MEETS;
        }
        return v.circulating ? Phrases.RING : Phrases.RUNS_BACK;
    }
}
