package wetside.tour;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.blueprint.Blueprint;
import wetside.blueprint.FluidPlan;
import wetside.drawing.PartNumbers;
import wetside.kind.Kind;
import wetside.kind.Kinds;
import wetside.kind.Words;
import wetside.machine.Component;
import wetside.machine.Installation.Feed;
import wetside.machine.Machine;
import wetside.machine.MachineFile;
import wetside.machine.Medium;

/** Walks through every machine that comes along, in every revision and however it is fed. */
class TourTest {
    /** A machine and its numbers. */
    record Subject(Machine machine, PartNumbers numbers, Feed feed) {
        @Override
        public String toString() {
            return machine.identity().id() + " " + machine.identity().revision() + " from the " + feed.word();
        }

        Tour tour(Follow follow) {
            return Telling.of(follow, machine, numbers, feed);
        }
    }

    static Stream<Subject> subjects() throws IOException {
        List<Subject> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("machines"))) {
            for (Path path : (Iterable<Path>)
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted()::iterator) {
                MachineFile file = MachineFile.find(path.toString(), Kinds.declarations());
                for (String revision : file.revisionNames()) {
                    for (Feed feed : Feed.values()) {
                        all.add(new Subject(file.machine(revision), PartNumbers.of(file), feed));
                    }
                }
            }
        }
        return all.stream();
    }

    private static Subject twinBoiler(Feed feed) {
        MachineFile file = MachineFile.find("twin-boiler-lever", Kinds.declarations());
        return new Subject(file.newest(), PartNumbers.of(file), feed);
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void theWaterWalkComesToEachPartThatWaterReachesOnce(Subject s) {
        List<String> stops = ids(s.tour(Follow.WATER));
        assertThat(stops).doesNotHaveDuplicates().hasSizeGreaterThan(3);
        assertThat(new TreeSet<>(stops)).isEqualTo(new TreeSet<>(reached(s.machine(), stops.get(0))));
    }

    /** By the nodes of the whole plan at once, where the walk goes from part to part. */
    private static Set<String> reached(Machine machine, String source) {
        Blueprint plan = Kinds.blueprint(machine);
        Deque<Integer> open = new ArrayDeque<>();
        machine.component(source).kind().ports().stream()
                .filter(p -> p.medium() == Medium.FLUID)
                .map(p -> plan.node(machine.component(source), p.name()))
                .forEach(open::add);
        Set<Integer> nodes = new HashSet<>(open);
        while (!open.isEmpty()) {
            int at = open.pop();
            List<Integer> next = new ArrayList<>();
            for (FluidPlan.Branch b : plan.fluid().branches()) {
                if (b.from() == at) {
                    next.add(b.to());
                } else if (b.to() == at && b.law() instanceof FluidPlan.Passage && b.opening() == FluidPlan.ALWAYS) {
                    next.add(b.from());
                }
            }
            plan.fluid().loops().stream().filter(l -> l.upper() == at).forEach(l -> next.add(l.lower()));
            plan.fluid().takeOffs().stream()
                    .filter(t -> t.node() == at)
                    .forEach(in -> plan.fluid().takeOffs().stream()
                            .filter(t -> t.vessel() == in.vessel()
                                    && t.height()
                                            <= plan.fluid().vessel(t.vessel()).fill() + 0.005)
                            .forEach(t -> next.add(t.node())));
            next.stream().filter(nodes::add).forEach(open::push);
        }
        Set<Integer> leaving = new HashSet<>();
        plan.fluid().branches().forEach(b -> leaving.add(b.from()));
        plan.fluid().takeOffs().forEach(t -> leaving.add(t.node()));
        Set<String> parts = new HashSet<>();
        WaterWays ways = new WaterWays(machine);
        for (Component c : machine.components()) {
            boolean wet = c.kind().ports().stream()
                    .filter(p -> p.medium() == Medium.FLUID)
                    .map(p -> new Machine.End(c.id(), p.name()))
                    .filter(e -> plan.isJoined(c, e.port()))
                    .anyMatch(e -> nodes.contains(plan.node(c, e.port())) && ways.takesIn(e));
            if (wet || c.id().equals(source)) {
                parts.add(c.id());
            }
        }
        return parts;
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void eachStopIsJoinedToOneThatCameBefore(Subject s) {
        for (Follow follow : List.of(Follow.WATER, Follow.STEAM, Follow.DRAIN)) {
            Set<String> before = new HashSet<>();
            for (Tour.Chapter chapter : s.tour(follow).chapters()) {
                boolean begins = true;
                for (Tour.Step step : chapter.steps()) {
                    if (step instanceof Tour.Stop stop) {
                        assertThat(begins || joined(s.machine(), stop.component(), before))
                                .as("%s, %s: %s", s, follow, stop.component())
                                .isTrue();
                        before.add(stop.component());
                        begins = false;
                    } else if (step.depth() == 0 && !((Tour.Turn) step).words().contains("(")) {
                        begins = true;
                    }
                }
            }
        }
    }

    private static boolean joined(Machine machine, String part, Set<String> before) {
        return machine.joins().lines().stream()
                .anyMatch(l -> l.to().component().equals(part)
                                && before.contains(l.from().component())
                        || l.from().component().equals(part) && before.contains(l.to().component()));
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void theCurrentWalkComesToEveryPartWithWiresOnce(Subject s) {
        List<String> stops = ids(s.tour(Follow.CURRENT));
        Set<String> wired = new TreeSet<>();
        s.machine().joins().wires().forEach(w -> {
            wired.add(w.from().component());
            wired.add(w.to().component());
        });
        assertThat(stops).doesNotHaveDuplicates();
        assertThat(new TreeSet<>(stops)).isEqualTo(wired);
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void nothingIsSaidTwiceAndNoStopIsSilent(Subject s) {
        for (Follow follow : Follow.values()) {
            List<String> said = new ArrayList<>();
            for (Tour.Stop stop : s.tour(follow).stops()) {
                said.add(stop.does());
                said.add(stop.noticed());
                assertThat(stop.does() + stop.noticed()).doesNotContain("{", "null");
                assertThat(stop.number()).isPositive();
                assertThat(stop.does() + " " + stop.noticed())
                        .as("%s, %s: %s", s, follow, stop.component())
                        .hasSizeLessThan(620);
            }
            assertThat(said).as("%s, %s", s, follow).doesNotHaveDuplicates().allMatch(t -> t.endsWith("."));
        }
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void turnsReadAsSentences(Subject s) {
        for (Follow follow : Follow.values()) {
            s.tour(follow).chapters().stream()
                    .flatMap(c -> c.steps().stream())
                    .filter(Tour.Turn.class::isInstance)
                    .map(t -> ((Tour.Turn) t).words())
                    .forEach(t -> assertThat(t).matches("[A-Z].*\\.").doesNotContain("{", "  ", " .", " ,"));
        }
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void steamBeginsWhereItIsMadeAndComesToEveryTapForIt(Subject s) {
        List<String> steam = ids(s.tour(Follow.STEAM));
        for (Component c : s.machine().components()) {
            Words.OnTour words = Words.of(c.kind().name()).tour();
            if (!words.steam().isEmpty() && words.turns().isEmpty()) {
                assertThat(steam).as("%s", s).contains(c.id());
            }
        }
        if (!steam.isEmpty()) {
            Component first = s.machine().component(steam.get(0));
            boolean holds = !new WaterWays(s.machine()).steamPorts(first).isEmpty();
            assertThat(holds || !Words.of(first.kind().name()).tour().turns().isEmpty())
                    .isTrue();
        }
        assertThat(ids(s.tour(Follow.DRAIN))).isNotEmpty().doesNotHaveDuplicates();
    }

    /** A placeholder nobody fills would be printed as it stands. */
    @Test
    void wordsForWalksAreSentencesWithPlaceholdersThatExist() {
        for (Kind kind : Kinds.all()) {
            Words.OnTour tour = Words.of(kind.declaration().name()).tour();
            Stream.of(
                            tour.does(),
                            tour.joins(),
                            tour.partly(),
                            tour.steam(),
                            tour.turns(),
                            tour.drain(),
                            tour.current(),
                            tour.noticed())
                    .flatMap(List::stream)
                    .forEach(t -> assertThat(t.replaceAll("\\{(next|from|on)}", "It"))
                            .as(kind.declaration().name())
                            .matches("[A-Z].*\\.")
                            .doesNotContain("{"));
        }
    }

    @Test
    void theFeedDecidesWhereItBegins() {
        List<String> tank = ids(twinBoiler(Feed.TANK).tour(Follow.WATER));
        List<String> mains = ids(twinBoiler(Feed.MAINS).tour(Follow.WATER));
        assertThat(tank).startsWith("tank", "tank-seat").doesNotContain("cock", "mains-hose");
        assertThat(mains).startsWith("mains", "cock", "mains-hose").doesNotContain("tank", "strainer");
        assertThat(tank.subList(tank.indexOf("pump"), tank.size()))
                .isEqualTo(mains.subList(mains.indexOf("pump"), mains.size()));
    }

    @Test
    void pumpCheckValveAndBoilerComeInTheOrderOfTheFlow() {
        assertThat(ids(twinBoiler(Feed.TANK).tour(Follow.WATER)))
                .containsSubsequence(
                        "selector", "pump", "gauge-tee", "brew-check", "fill-valve", "fill-check", "steam-boiler")
                .containsSubsequence("brew-check", "brew-boiler", "upper-pipe", "group", "lower-pipe", "jet", "cup");
    }

    @Test
    void aRingIsToldAsARing() {
        List<String> turns = twinBoiler(Feed.TANK).tour(Follow.WATER).chapters().get(0).steps().stream()
                .filter(Tour.Turn.class::isInstance)
                .map(t -> ((Tour.Turn) t).words())
                .toList();
        assertThat(turns)
                .filteredOn(t -> t.contains("ring"))
                .singleElement()
                .asString()
                .contains("brew boiler");
    }

    @Test
    void mainsGoesThroughEachLoadAndComesBack() {
        Tour current = twinBoiler(Feed.TANK).tour(Follow.CURRENT);
        assertThat(ids(current))
                .startsWith("socket", "house-breaker", "cord", "power-switch")
                .containsSubsequence("brew-limit-line", "brew-relay", "brew-element", "brew-limit-neutral")
                .containsSubsequence("board-fuse", "board", "motor")
                .containsSubsequence("board", "probe-lead", "probe", "earth-lead");
        assertThat(current.chapters())
                .extracting(Tour.Chapter::title)
                .hasSize(4)
                .endsWith("Earth");
    }

    /** What a walk says comes from the file and the kinds; it must not know roles, names or machines. */
    @Test
    void noCodeHereAsksWhichMachineItIs() throws IOException {
        try (Stream<Path> sources = Files.list(Path.of("src/main/java/wetside/tour"))) {
            for (Path source : (Iterable<Path>) sources::iterator) {
                assertThat(Files.readString(source))
                        .doesNotContain("inRole(", "roles()", "identity().title()", "\"boiler\"");
            }
        }
    }

    private static List<String> ids(Tour tour) {
        return tour.stops().stream().map(Tour.Stop::component).toList();
    }
}
