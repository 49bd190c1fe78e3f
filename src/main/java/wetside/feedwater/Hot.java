package wetside.feedwater;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Parameter;
import wetside.plant.Plant;
import wetside.procedure.Procedures;
import wetside.procedure.Repertoire;
import wetside.run.Run;
import wetside.run.Scenario;

/**
 * Where a machine heats water, as hot as its twin makes it when warm.
 *
 * @param id      of the component; empty where no machine was named
 * @param steams  whether steam is drawn from it
 * @param water   held when warm [kg]; NaN where it is no vessel
 * @param volume  of the vessel [m³]; NaN where it is none
 * @param surface of what heats it [m²]; NaN where that is not known
 */
public record Hot(String id, String name, boolean steams, double kelvin, double water, double volume, double surface) {
    /** A machine's places; where none is named, what is usual. */
    public static final List<Hot> USUAL = List.of(
            new Hot("", "brewing (assumed)", false, 366.15, Double.NaN, Double.NaN, Double.NaN),
            new Hot("", "steam boiler (assumed)", true, 397.15, Double.NaN, Double.NaN, Double.NaN));

    public static List<Hot> of(Installed installed) {
        Machine machine = installed.machine();
        Repertoire repertoire = Repertoire.of(Procedures.bundled(), machine);
        Run run = new Run(Plant.of(Kinds.blueprint(machine)));
        go(run, repertoire, "warm-up");
        List<Hot> all = new ArrayList<>();
        for (Component c : machine.components()) {
            switch (c.kind().name()) {
                case "boiler" -> all.add(boiler(machine, c, run));
                case "thermoblock" ->
                    all.add(new Hot(
                            c.id(),
                            c.name(),
                            false,
                            run.plant().read(run.reading(c.id() + ".temperature")),
                            Double.NaN,
                            Double.NaN,
                            Double.NaN));
                default -> {}
            }
        }
        tube(machine, all);
        return repertoire.routines().containsKey("steaming") ? steaming(all, run, repertoire) : all;
    }

    private static void go(Run run, Repertoire repertoire, String routine) {
        if (repertoire.routines().containsKey(routine)) {
            for (Scenario s : repertoire.leadingTo(routine)) {
                run.begin();
                run.go(s);
            }
        } else {
            run.begin();
            run.pass(2400);
        }
    }

    private static Hot boiler(Machine machine, Component c, Run run) {
        double volume = value(c, "volume");
        double kelvin = run.plant().slot(c.id() + ".temperature");
        double water = volume * run.plant().slot(c.id() + ".level") * 945;
        return new Hot(c.id(), c.name(), plays(c, "steam boiler"), kelvin, water, volume, surface(machine, c.id()));
    }

    /** Brewing water in a tube through the boiler gets as hot as the boiler when nobody draws it. */
    private static void tube(Machine machine, List<Hot> all) {
        Optional<Component> tube = machine.inRole("heat exchanger");
        if (tube.isPresent()) {
            all.stream()
                    .filter(Hot::steams)
                    .findFirst()
                    .ifPresent(boiler -> all.add(
                            0,
                            new Hot(
                                    tube.get().id(),
                                    tube.get().name(),
                                    false,
                                    boiler.kelvin,
                                    Double.NaN,
                                    Double.NaN,
                                    value(tube.get(), "surface"))));
        }
    }

    /** A machine that steams from its only boiler: as hot as it gets for steam. */
    private static List<Hot> steaming(List<Hot> all, Run run, Repertoire repertoire) {
        if (all.stream().anyMatch(Hot::steams) || all.isEmpty()) {
            return all;
        }
        Hot one = all.get(0);
        double[] hottest = {one.kelvin};
        run.watch((time, plant) -> hottest[0] = Math.max(
                hottest[0],
                Double.isNaN(one.volume)
                        ? plant.read(run.reading(one.id + ".temperature"))
                        : plant.slot(one.id + ".temperature")));
        run.begin();
        run.go(repertoire.routines().get("steaming"));
        run.unwatch();
        List<Hot> more = new ArrayList<>(all);
        more.add(new Hot(one.id, one.name + ", for steam", true, hottest[0], one.water, one.volume, one.surface));
        return more;
    }

    private static boolean plays(Component c, String role) {
        return c.place().roles().contains(role);
    }

    /** Of the element that heats a vessel. */
    private static double surface(Machine machine, String vessel) {
        return machine.joins().contacts().stream()
                .flatMap(j -> {
                    boolean from = j.from().component().equals(vessel)
                            && j.from().port().equals("water");
                    boolean to =
                            j.to().component().equals(vessel) && j.to().port().equals("water");
                    String other = from ? j.to().component() : to ? j.from().component() : "";
                    return other.isEmpty()
                            ? java.util.stream.Stream.<Component>empty()
                            : java.util.stream.Stream.of(machine.component(other));
                })
                .filter(c -> c.kind().name().equals("heating element"))
                .mapToDouble(c -> value(c, "surface"))
                .findFirst()
                .orElse(Double.NaN);
    }

    static double value(Component c, String parameter) {
        Optional<Parameter> p = c.kind().parameter(parameter);
        return p.isPresent() ? c.get(p.get()) : Double.NaN;
    }

    public boolean isVessel() {
        return !Double.isNaN(volume);
    }
}
