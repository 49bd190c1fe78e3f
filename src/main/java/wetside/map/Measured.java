package wetside.map;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wetside.blueprint.FluidPlan;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Medium;
import wetside.machine.Port;
import wetside.plant.Plant;
import wetside.run.Run;

/** Pressure, temperature and flow in every line of a machine at one moment of a run. */
public final class Measured {
    /** What passes slower than this stands still: a drop in half a minute [kg/s]. */
    static final double STILL = 2e-6;

    private static final double KELVIN = 273.15;
    private static final double BAR = 1e5;

    private final Owned owned;
    private final Run run;
    private final Map<Integer, Integer> pressures = new HashMap<>();
    private Quantity quantity = Quantity.PRESSURE;

    /** What the lines are coloured by. */
    public enum Quantity {
        PRESSURE,
        TEMPERATURE;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private Measured(Machine machine) {
        owned = new Owned(machine);
        for (Component c : machine.components()) {
            for (Port p : c.kind().ports()) {
                if (p.medium() == Medium.FLUID) {
                    int node = owned.blueprint().node(c, p.name());
                    pressures.put(node, owned.blueprint().fluid().pressure(node));
                }
            }
        }
        run = new Run(Plant.of(owned.blueprint()));
    }

    /** A cold machine, ready for {@link #run()} to be sent through scenarios. */
    public static Measured cold(Machine machine) {
        return new Measured(machine);
    }

    public Run run() {
        return run;
    }

    /** Chooses what lines are coloured by. */
    public Measured by(Quantity wanted) {
        quantity = wanted;
        return this;
    }

    Owned owned() {
        return owned;
    }

    Quantity quantity() {
        return quantity;
    }

    private double slot(int index) {
        return run.plant().slot(index);
    }

    /** Pressure above the air's [bar]. */
    double pressure(Machine.End end) {
        return (slot(pressures.get(owned.node(end))) - slot(owned.blueprint().atmosphere())) / BAR;
    }

    /** What flows along the way, from its first end to its second [kg/s]. */
    double flow(Way way) {
        FluidPlan.Loop loop = loop(way);
        if (loop != null) {
            boolean upper = isAt(way, loop.upper());
            boolean towards = owned.node(way.to()) == (upper ? loop.upper() : loop.lower()) && !isVessel(way.to());
            double circulating = slot(loop.flow()) * (upper == towards ? 1 : -1);
            if (Math.abs(circulating) > Math.abs(branchFlow(way))) {
                return circulating;
            }
        }
        return branchFlow(way);
    }

    private double branchFlow(Way way) {
        double out = outflow(way.from());
        return Double.isNaN(out) ? -outflow(way.to()) : out;
    }

    private boolean isVessel(Machine.End end) {
        return owned.blueprint().fluid().takeOffs().stream().anyMatch(t -> t.node() == owned.node(end));
    }

    /** What comes out of a component there; NaN for boilers, which have no branches of their own. */
    private double outflow(Machine.End end) {
        int node = owned.node(end);
        double sum = 0;
        boolean any = false;
        for (FluidPlan.Branch b : owned.branches(end.component())) {
            if (b.to() == node || b.from() == node) {
                any = true;
                sum += b.to() == node ? slot(b.flow()) : -slot(b.flow());
            }
        }
        return any ? sum : Double.NaN;
    }

    private FluidPlan.Loop loop(Way way) {
        return owned.blueprint().fluid().loops().stream()
                .filter(l -> isAt(way, l.upper()) || isAt(way, l.lower()))
                .findFirst()
                .orElse(null);
    }

    private boolean isAt(Way way, int node) {
        return owned.node(way.from()) == node || owned.node(way.to()) == node;
    }

    /** Temperature of what flows [°C]; NaN where nothing does, for then no one knows. */
    double temperature(Way way) {
        double flow = flow(way);
        if (Math.abs(flow) < STILL) {
            return Double.NaN;
        }
        FluidPlan.Loop loop = loop(way);
        if (loop != null && Math.abs(branchFlow(way)) < STILL) {
            return slot(isAt(way, loop.upper()) ? loop.hot() : loop.cold()) - KELVIN;
        }
        Machine.End donor = flow > 0 ? way.from() : way.to();
        Machine.End taker = flow > 0 ? way.to() : way.from();
        FluidPlan.Branch b = busiest(donor);
        b = b == null ? busiest(taker) : b;
        return b == null ? Double.NaN : run.plant().temperature(b, slot(pressures.get(owned.node(donor)))) - KELVIN;
    }

    private FluidPlan.Branch busiest(Machine.End end) {
        int node = owned.node(end);
        FluidPlan.Branch best = null;
        for (FluidPlan.Branch b : owned.branches(end.component())) {
            boolean here = b.to() == node || b.from() == node;
            if (here && (best == null || Math.abs(slot(b.flow())) > Math.abs(slot(best.flow())))) {
                best = b;
            }
        }
        return best;
    }

    /** What a line is coloured by: bar or °C, NaN when unknown. */
    double value(Way way) {
        return quantity == Quantity.PRESSURE ? pressure(way.from()) : temperature(way);
    }

    /** Share of a boiler that is liquid; NaN when the component is none. */
    double level(String component) {
        return owned.blueprint().fluid().vessels().stream()
                .filter(v -> v.name().equals(component))
                .mapToDouble(v -> slot(v.level()))
                .findFirst()
                .orElse(Double.NaN);
    }

    /** What stands beside the line. */
    List<List<String>> words(Way way) {
        if (way.wire()) {
            return List.of();
        }
        List<String> wordings = new ArrayList<>();
        if (quantity == Quantity.TEMPERATURE) {
            double t = temperature(way);
            return Double.isNaN(t) ? List.of() : List.of(List.of(String.format(Locale.ROOT, "%.0f °C", t)));
        }
        String from = bar(pressure(way.from()));
        String to = bar(pressure(way.to()));
        if (!from.equals(to)) {
            wordings.add(from + " → " + to + " bar");
        }
        wordings.add(from + " bar");
        return List.of(wordings);
    }

    private static String bar(double p) {
        String text = String.format(Locale.ROOT, "%.1f", p);
        return text.equals("-0.0") ? "0.0" : text.replace('-', '−');
    }
}
