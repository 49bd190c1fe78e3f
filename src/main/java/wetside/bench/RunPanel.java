package wetside.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Handle;
import wetside.blueprint.Reading;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Wording;
import wetside.plant.Plant;
import wetside.run.Names;
import wetside.units.Dimension;

/**
 * What there is to touch and to look at on a machine, told from its handles, its readings and the parts they are on.
 *
 * @param inside   controls that are reached with a panel off only
 * @param gauges   with a dial
 * @param figures  shown as numbers
 * @param lamps    with the words of their pattern
 * @param glasses  levels
 * @param words    what is heard and seen to come out
 * @param channels every number, for the charts
 * @param faults   what can be broken
 */
public record RunPanel(
        List<Control> controls,
        List<Control> inside,
        List<Gauge> gauges,
        List<Shown> figures,
        List<Shown> lamps,
        List<Glass> glasses,
        List<Shown> words,
        List<Channel> channels,
        List<Break> faults) {
    private static final List<String> USUAL = List.of(
            "pump gauge.needle",
            "steam gauge.needle",
            "brew controller.display",
            "steam controller.display",
            "group.temperature",
            "cup.flow",
            "cord.power drawn");
    private static final List<String> HEARD = List.of("sound", "comes", "message");
    /** A vessel that stands fuller than this when cold has no level worth showing. */
    private static final double FULL = 0.97;

    private static final int EVERY_DAY = 4;

    /**
     * Something to set.
     *
     * @param options words for its positions; empty for a number from least to most
     * @param start   position or value [SI] at rest
     */
    public record Control(
            int index,
            String name,
            String label,
            List<String> options,
            double least,
            double most,
            double step,
            double start,
            boolean temperature) {}

    /** @param most full scale [SI]; {@code reading} is its place among the readings */
    public record Gauge(int reading, String name, double most, Dimension dimension) {}

    public record Shown(int reading, String name, List<String> options) {}

    /** @param vessel whether {@code index} counts boilers rather than readings; {@code most} is full */
    public record Glass(int index, boolean vessel, String name, double most) {}

    public record Channel(int reading, String name, Dimension dimension, boolean usual) {}

    public record Break(String component, String part, String fault, String says) {}

    static RunPanel of(Machine machine, Plant plant) {
        List<Reading> readings = List.copyOf(plant.readings().values());
        List<Control> outside = new ArrayList<>();
        List<Control> inside = new ArrayList<>();
        int h = 0;
        for (Handle handle : plant.handles().values()) {
            Component c = machine.component(part(handle.name()));
            (isWorked(handle, c) ? outside : inside).add(control(h++, handle, c, plant));
        }
        outside.sort(Comparator.comparingInt(RunPanel::rank));
        return new RunPanel(
                outside,
                inside,
                gauges(machine, readings),
                shown(
                        machine,
                        readings,
                        r -> !r.isChoice()
                                && r.dimension() == Dimension.TEMPERATURE
                                && (r.channel().endsWith(".display")
                                        || r.channel().endsWith(".temperature")
                                                && machine.component(part(r.channel()))
                                                        .place()
                                                        .roles()
                                                        .contains("group"))),
                shown(
                        machine,
                        readings,
                        r -> r.isChoice()
                                && (r.channel().endsWith(".lamp") || r.channel().endsWith(".light"))),
                glasses(machine, plant, readings),
                shown(
                        machine,
                        readings,
                        r -> r.isChoice()
                                && HEARD.contains(what(r.channel()))
                                && !r.channel().endsWith("vent.comes")),
                channels(machine, readings),
                faults(machine));
    }

    /** What is touched every day. */
    public List<Control> often() {
        return controls.stream().filter(c -> rank(c) <= EVERY_DAY).toList();
    }

    public List<Control> seldom() {
        return controls.stream().filter(c -> rank(c) > EVERY_DAY).toList();
    }

    /** A handle sticks out of the case although the part behind it sits inside. */
    private static boolean isWorked(Handle handle, Component c) {
        String what = what(handle.name());
        return c.place().behind().isEmpty()
                || List.of("switch", "opened", "set point", "key").contains(what)
                || what.equals("button") && c.kind().name().endsWith("button");
    }

    static String part(String channel) {
        return channel.substring(0, channel.lastIndexOf('.'));
    }

    static String what(String channel) {
        return channel.substring(channel.lastIndexOf('.') + 1);
    }

    /** What is touched every day comes first. */
    private static int rank(Control c) {
        String what = what(c.name());
        if (what.equals("switch")) {
            return 0;
        }
        return switch (what) {
            case "pointer" -> 1;
            case "lever", "position", "button", "key", "cap" ->
                c.label().contains("breaker") ? 8 : c.label().contains("drain cock") ? 7 : 2;
            case "holds" -> 3;
            case "opened" -> 4;
            case "plug" -> 8;
            default -> 6;
        };
    }

    private static Control control(int index, Handle handle, Component c, Plant plant) {
        String what = what(handle.name());
        boolean plain = List.of("position", "opened", "switch", "lever", "pointer", "button", "key", "cap")
                .contains(what);
        String label =
                what.equals("holds") ? "In the " + c.name() : Wording.capital(c.name()) + (plain ? "" : ", " + what);
        boolean temperature = handle.least() > 200;
        return new Control(
                index,
                handle.name(),
                label,
                handle.options(),
                handle.least(),
                handle.most(),
                temperature ? 0.5 : (handle.most() - handle.least()) / 40,
                plant.slot(handle.slot()),
                temperature);
    }

    private static List<Gauge> gauges(Machine machine, List<Reading> readings) {
        List<Gauge> gauges = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading r = readings.get(i);
            if (r.channel().endsWith(".needle")) {
                Component c = machine.component(part(r.channel()));
                int dial = i;
                c.kind()
                        .parameter("range")
                        .ifPresent(
                                p -> gauges.add(new Gauge(dial, Wording.capital(c.name()), c.get(p), r.dimension())));
            }
        }
        return gauges;
    }

    private static List<Shown> shown(
            Machine machine, List<Reading> readings, java.util.function.Predicate<Reading> which) {
        List<Shown> shown = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading r = readings.get(i);
            if (which.test(r)) {
                shown.add(new Shown(i, name(machine, r), r.options()));
            }
        }
        return shown;
    }

    /** Short enough to stand beside what it shows. */
    private static String name(Machine machine, Reading r) {
        String name = machine.component(part(r.channel())).name();
        return Wording.capital(name.replace("temperature controller", "controller"));
    }

    private static List<Glass> glasses(Machine machine, Plant plant, List<Reading> readings) {
        List<Glass> glasses = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading r = readings.get(i);
            if (r.channel().endsWith(".level") && !r.isChoice() && r.dimension() == Dimension.MASS) {
                Component c = machine.component(part(r.channel()));
                int tube = i;
                c.kind()
                        .parameter("capacity")
                        .ifPresent(p -> glasses.add(new Glass(tube, false, Wording.capital(c.name()), c.get(p))));
            }
        }
        List<FluidPlan.Vessel> vessels = plant.blueprint().fluid().vessels();
        for (int i = 0; i < vessels.size(); i++) {
            FluidPlan.Vessel v = vessels.get(i);
            if (v.fill() < FULL && machine.has(v.name())) {
                glasses.add(new Glass(
                        i, true, Wording.capital(machine.component(v.name()).name()), 1));
            }
        }
        return glasses;
    }

    private static List<Channel> channels(Machine machine, List<Reading> readings) {
        Names names = new Names(machine);
        List<String> usual =
                USUAL.stream().flatMap(n -> names.resolve(n).stream()).toList();
        Map<String, Channel> all = new LinkedHashMap<>();
        for (int i = 0; i < readings.size(); i++) {
            Reading r = readings.get(i);
            if (!r.isChoice()) {
                String what = what(r.channel());
                String name = name(machine, r) + (List.of("needle", "display").contains(what) ? "" : ", " + what);
                all.put(r.channel(), new Channel(i, name, r.dimension(), usual.contains(r.channel())));
            }
        }
        return List.copyOf(all.values());
    }

    private static List<Break> faults(Machine machine) {
        List<Break> faults = new ArrayList<>();
        for (Component c : machine.components()) {
            for (Fault f : Kinds.of(c).faults()) {
                faults.add(new Break(c.id(), Wording.capital(c.name()), f.name(), f.name()));
            }
        }
        faults.sort(Comparator.comparing((Break b) -> b.part().toLowerCase(Locale.ROOT)));
        return faults;
    }
}
