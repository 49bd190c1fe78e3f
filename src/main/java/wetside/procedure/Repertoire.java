package wetside.procedure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Wording;
import wetside.plant.Plant;
import wetside.run.Names;
import wetside.run.Scenario;

/**
 * What one machine can be taken through and asked: each routine the first way the machine allows, each procedure whose roles
 * it fills, in the names of its parts. What needs parts of a station is there once for each station, with the station in its
 * name.
 */
public final class Repertoire {
    private final Procedures all;
    private final Machine machine;
    private final Plant plant;
    private final Map<String, Optional<Fit>> fits = new HashMap<>();
    private final Map<String, Scenario> routines = new LinkedHashMap<>();
    private final List<Procedure> procedures = new ArrayList<>();

    /** A routine as this machine does it, at a station when {@code stationed}. */
    private record Fit(Scenario scenario, Map<String, String> words, boolean stationed) {}

    private Repertoire(Procedures all, Machine machine) {
        this.all = all;
        this.machine = machine;
        plant = Plant.of(Kinds.blueprint(machine));
        List<String> stations =
                Stream.concat(Stream.of(""), machine.stations().stream()).toList();
        all.routines()
                .keySet()
                .forEach(name -> stations.forEach(s -> fit(name, s)
                        .filter(f -> f.stationed() != s.isEmpty())
                        .ifPresent(f -> routines.put(f.scenario().name(), f.scenario()))));
        all.all().forEach(p -> stations.forEach(s -> at(s, p).ifPresent(procedures::add)));
    }

    public static Repertoire of(Procedures all, Machine machine) {
        return new Repertoire(all, machine);
    }

    /** By name, in the order of the files. */
    public Map<String, Scenario> routines() {
        return routines;
    }

    /** In the order of the files. */
    public List<Procedure> procedures() {
        return procedures;
    }

    /** A routine of this machine and all that come before it. */
    public List<Scenario> leadingTo(String routine) {
        List<Scenario> chain = new ArrayList<>();
        for (Optional<String> r = Optional.of(routine); r.isPresent(); ) {
            Scenario s = routines.get(r.get());
            chain.add(0, s);
            r = s.from();
        }
        return chain;
    }

    private Optional<Fit> fit(String routine, String station) {
        String key = routine + "\n" + station;
        if (!fits.containsKey(key)) {
            fits.put(
                    key,
                    all.routine(routine).orElseThrow().ways().stream()
                            .flatMap(w -> fit(w, station).stream())
                            .findFirst());
        }
        return fits.get(key);
    }

    private Optional<Fit> fit(Routine.Way way, String station) {
        Scenario s = way.scenario();
        Optional<Fit> before = s.from().flatMap(f -> fit(f, station));
        Names names = Names.at(station, machine);
        return s.from().isPresent() && before.isEmpty()
                ? Optional.empty()
                : names.steps(s, plant).map(steps -> {
                    boolean stationed = before.map(Fit::stationed).orElse(false)
                            || s.names().stream().anyMatch(n -> isAtStation(part(n), names));
                    Map<String, String> words =
                            new HashMap<>(before.map(Fit::words).orElse(Map.of()));
                    words.putAll(way.words());
                    String says = Phrases.said(s.says(), words);
                    return new Fit(
                            new Scenario(
                                    stationed ? named(s.name(), station) : s.name(),
                                    before.map(b -> b.scenario().name()),
                                    stationed ? says + " (" + station + ")" : says,
                                    steps),
                            words,
                            stationed);
                });
    }

    /** The procedure at a station, empty when it cannot be done or needs nothing of the station. */
    private Optional<Procedure> at(String station, Procedure p) {
        Names names = Names.at(station, machine);
        Optional<Fit> during = fit(p.routine(), station);
        if (during.isEmpty() || !isReadable(p, names)) {
            return Optional.empty();
        }
        boolean own = parts(p).anyMatch(part -> isAtStation(part, names));
        boolean stationed = during.get().stationed() || own;
        return stationed == station.isEmpty() || !own && isSeenElsewhere(p, station)
                ? Optional.empty()
                : Optional.of(bound(p, station, names, during.get()));
    }

    /** What is behind panels and there once need not be looked at again with every group at work. */
    private boolean isSeenElsewhere(Procedure p, String station) {
        return !p.inside().isEmpty()
                && machine.stations().stream()
                        .takeWhile(s -> !s.equals(station))
                        .anyMatch(
                                s -> fit(p.routine(), s).filter(Fit::stationed).isPresent());
    }

    private boolean isReadable(Procedure p, Names names) {
        boolean readable = p.reading().channel().isPresent()
                ? names.resolve(p.reading().channel().get())
                        .filter(plant.readings()::containsKey)
                        .isPresent()
                : p.reading().ohmsBetween().stream().allMatch(t -> Terminals.known(t, names));
        return readable && p.inside().stream().allMatch(r -> names.component(r).isPresent());
    }

    /** In the names of the parts and the words of the way. */
    private static Procedure bound(Procedure p, String station, Names names, Fit during) {
        Procedure.Taking t = p.reading();
        Procedure.Taking reading = new Procedure.Taking(
                t.channel().flatMap(names::resolve),
                t.ohmsBetween().stream()
                        .map(tip -> Terminals.resolved(tip, names))
                        .toList(),
                t.alone(),
                t.take(),
                t.from(),
                t.to(),
                t.beyond(),
                t.of(),
                t.quantity());
        Map<String, String> words = during.words();
        String here = station.isEmpty() ? "" : " (" + station + ")";
        String begin = station.isEmpty() ? "" : Wording.capital(station) + ": ";
        return new Procedure(
                named(p.id(), station),
                p.sort(),
                p.who(),
                Phrases.said(p.says(), words) + here,
                begin + Phrases.said(p.ask(), words),
                p.how().stream().map(h -> Phrases.said(h, words)).toList(),
                Phrases.said(p.caution(), words),
                p.hazard(),
                p.minutes(),
                p.tool(),
                p.inside().stream()
                        .map(r -> names.component(r).orElseThrow().id())
                        .toList(),
                during.scenario().name(),
                reading,
                p.answer());
    }

    private static Stream<String> parts(Procedure p) {
        return Stream.of(
                        p.reading().channel().stream().map(Repertoire::part),
                        p.reading().ohmsBetween().stream().flatMap(tip -> Terminals.parts(tip).stream()),
                        p.inside().stream())
                .flatMap(s -> s);
    }

    private static boolean isAtStation(String part, Names names) {
        return names.component(part)
                .map(Component::place)
                .filter(place -> !place.station().isEmpty())
                .isPresent();
    }

    private static String part(String name) {
        return name.substring(0, Math.max(0, name.lastIndexOf('.')));
    }

    private static String named(String name, String station) {
        return station.isEmpty() ? name : name + ", " + station;
    }

    /** What keeps this machine from a routine: names it has no part for, the best way taken; empty when it has it. */
    public Set<String> lacking(String routine) {
        List<String> chain = new ArrayList<>();
        for (Optional<String> r = Optional.of(routine); r.isPresent(); ) {
            Scenario s = all.routine(r.get()).orElseThrow().ways().get(0).scenario();
            chain.addAll(s.names());
            r = s.from();
        }
        Names names = new Names(machine);
        return chain.stream()
                .filter(n -> names.resolve(n)
                        .filter(f -> plant.handles().containsKey(f)
                                || plant.readings().containsKey(f))
                        .isEmpty())
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    }
}
