package wetside.plant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.blueprint.FluidPlan;
import wetside.blueprint.Slots;
import wetside.physics.Friction;

/**
 * A network written for a water-network program, in litres a minute and metres, solved by the plant's flow solver.
 *
 * <p>Where the two have other laws, the plant's constants are fitted at the flow of the last solution and it is solved
 * again until nothing moves: pipe friction, which is not quite quadratic, and the pump's parabola. A demand is a pump
 * without slip. At the end both solve the same equations.
 */
public final class PipeNetwork {
    private static final double DENSITY = ChainLaws.DENSITY;
    private static final double GRAVITY = ChainLaws.GRAVITY;
    /** The other program's constants: 32.2 ft/s² and 1.1e-5 ft²/s. */
    private static final double ITS_GRAVITY = 32.2 * 0.3048;

    private static final double ITS_VISCOSITY = 1.1e-5 * 0.3048 * 0.3048;
    private static final double LITRE_A_MINUTE = DENSITY * 1e-3 / 60;
    private static final double METRE = DENSITY * GRAVITY;
    private static final double NEVER = 1e9;
    private static final double LAMINAR = 10;
    private static final double STEADY = 1e6;
    private static final double STIFF = 50;
    private static final double ROUNDING = 500;

    private final Map<String, List<String[]>> sections;
    private final double viscosity;
    private final Map<String, Double> elevations = new HashMap<>();
    private final Map<String, Double> flows = new HashMap<>();
    private final Map<String, FluidPlan.Branch> branches = new LinkedHashMap<>();
    private Map<String, Integer> nodes;
    private Slots slots;
    private FluidPlan plan;
    private Hydraulics hydraulics;
    private int demand;
    private int watched;
    private int[] pressures;
    private double[] x;

    public PipeNetwork(String text) {
        sections = sections(text);
        viscosity = ITS_VISCOSITY * Double.parseDouble(option("Viscosity"));
        for (String[] row : rows("JUNCTIONS")) {
            elevations.put(row[0], Double.parseDouble(row[1]));
        }
        for (String[] row : rows("RESERVOIRS")) {
            elevations.put(row[0], 0.0);
        }
    }

    private static Map<String, List<String[]>> sections(String text) {
        Map<String, List<String[]>> sections = new HashMap<>();
        List<String[]> rows = new ArrayList<>();
        for (String line : text.lines().map(String::strip).toList()) {
            if (line.startsWith("[")) {
                rows = new ArrayList<>();
                sections.put(line.substring(1, line.length() - 1), rows);
            } else if (!line.isEmpty() && !line.startsWith(";")) {
                rows.add(line.split("\\s+"));
            }
        }
        return sections;
    }

    private List<String[]> rows(String section) {
        return sections.getOrDefault(section, List.of());
    }

    private String option(String name) {
        return rows("OPTIONS").stream()
                .filter(o -> o[0].equals(name))
                .findFirst()
                .orElseThrow()[1];
    }

    /** Fits and solves until no flow moves by more than 1e-7 litres a minute; returns the number of fits. */
    public int settle() {
        for (int round = 1; round <= 60; round++) {
            compile();
            if (!hydraulics.solve(x, STEADY, new VesselRow[0])) {
                throw new IllegalStateException(hydraulics.convergence().worst());
            }
            double moved = 0;
            for (String link : branches.keySet()) {
                Double before = flows.put(link, flow(link));
                moved = Math.max(moved, before == null ? 1 : Math.abs(before - flow(link)));
            }
            if (moved < 1e-7) {
                return round;
            }
        }
        throw new IllegalStateException("the fits do not settle");
    }

    /** Head at J7 [m], with the fits as they are, from the pressures of the last solution or from rest. */
    public double solve(double factorOnDemands, boolean fromRest) {
        x[demand] = factorOnDemands;
        if (fromRest) {
            for (int slot : pressures) {
                x[slot] = 101325;
            }
        }
        if (!hydraulics.solve(x, STEADY, new VesselRow[0])) {
            throw new IllegalStateException(hydraulics.convergence().worst());
        }
        return (x[watched] - 101325) / METRE + elevations.get("J7");
    }

    /** [litres a minute] */
    public double flow(String link) {
        return branches.containsKey(link) ? x[branches.get(link).flow()] / LITRE_A_MINUTE : 0;
    }

    /** Largest flow in a link at a node [litres a minute]. */
    public double throughput(String node) {
        int n = nodes.get(node);
        return branches.entrySet().stream()
                .filter(b -> b.getValue().from() == n || b.getValue().to() == n)
                .mapToDouble(b -> Math.abs(flow(b.getKey())))
                .max()
                .orElse(0);
    }

    /** [m] */
    public double head(String node) {
        return (x[plan.pressure(nodes.get(node))] - 101325) / METRE + elevations.get(node);
    }

    private void compile() {
        slots = new Slots();
        plan = new FluidPlan(slots);
        nodes = new HashMap<>();
        branches.clear();
        int air = slots.smooth("surroundings.air pressure", 101325);
        int cold = slots.smooth("cold", 293.15);
        int salt = slots.smooth("salt", 0.05);
        int running = slots.smooth("running", 1);
        demand = slots.smooth("demand", 1);
        elevations.keySet().forEach(name -> nodes.put(name, nodes.size()));
        for (String[] row : rows("RESERVOIRS")) {
            int head = slots.smooth(row[0] + " head", 101325 + METRE * Double.parseDouble(row[1]));
            plan.open(nodes.get(row[0]), head, cold, salt, -1);
        }
        rows("PIPES").forEach(this::pipe);
        if (rows("STATUS").stream().noneMatch(s -> s[0].equals("PU1") && s[1].equals("Closed"))) {
            rows("PUMPS").forEach(row -> pump(row, running));
        }
        rows("VALVES").forEach(this::valve);
        for (String[] row : rows("EMITTERS")) {
            double c = Double.parseDouble(row[1]) * LITRE_A_MINUTE / Math.sqrt(METRE);
            plan.branch(row[0] + " emitter", nodes.get(row[0]), outside(row[0]), fitted(1 / (c * c)), FluidPlan.ALWAYS);
        }
        for (String[] row : rows("JUNCTIONS")) {
            double taken = Double.parseDouble(row[2]);
            if (taken > 0) {
                plan.branch(row[0] + " demand", nodes.get(row[0]), outside(row[0]), constant(taken), demand);
            }
            plan.pressure(nodes.get(row[0]));
        }
        hydraulics = Hydraulics.of(plan, slots, nodes.size());
        watched = plan.pressure(nodes.get("J7"));
        pressures = plan.pressures().stream().mapToInt(FluidPlan.NodeSlot::slot).toArray();
        double[] fresh = slots.firstValues();
        // Pressures of the fit before, so that a fit is a small step.
        if (x != null && x.length == fresh.length) {
            for (int slot : pressures) {
                fresh[slot] = x[slot];
            }
        }
        x = fresh;
    }

    private int outside(String name) {
        int node = nodes.size();
        nodes.put(name + " outside", node);
        plan.outlet(name + " outside", node);
        return node;
    }

    private void pipe(String[] row) {
        double bore = Double.parseDouble(row[4]) * 1e-3;
        double flow = Math.max(1e-3, Math.abs(flows.getOrDefault(row[0], 5.0))) * LITRE_A_MINUTE;
        double speed = flow / DENSITY / (Math.PI / 4 * bore * bore);
        double f = friction(speed * bore / viscosity, Double.parseDouble(row[5]) * 1e-3 / bore);
        double head = (f * Double.parseDouble(row[3]) / bore + Double.parseDouble(row[6]))
                * speed
                * speed
                / (2 * ITS_GRAVITY);
        double b = Math.max(0, METRE * head / flow - LAMINAR) / flow;
        add(row[0], row[1], row[2], row[7].equals("CV") ? new FluidPlan.OneWay(0, 10, LAMINAR, b, 0) : fitted(b));
    }

    /** Its friction: laminar, turbulent, and something between; none of the cases comes to lie between. */
    private static double friction(double re, double roughness) {
        return re < 2000 ? 64 / re : Friction.swameeJain(Math.max(4000, re), roughness);
    }

    private static FluidPlan.Passage fitted(double b) {
        return new FluidPlan.Passage(LAMINAR, b);
    }

    /** Its pump: h = h₀ − r q² through three points; ours: the tangent to it. */
    private void pump(String[] row, int running) {
        List<String[]> curve =
                rows("CURVES").stream().filter(c -> c[0].equals(row[4])).toList();
        double shutOff = Double.parseDouble(curve.get(0)[2]);
        double r = (shutOff - Double.parseDouble(curve.get(1)[2])) / Math.pow(Double.parseDouble(curve.get(1)[1]), 2);
        double q = Math.max(1, flows.getOrDefault(row[0], 20.0));
        double slope = 1 / (2 * r * q);
        double swept = (q + slope * (shutOff - r * q * q)) * LITRE_A_MINUTE;
        double slip = slope * LITRE_A_MINUTE / METRE;
        branches.put(
                row[0],
                plan.branch(
                        row[0],
                        nodes.get(row[1]),
                        nodes.get(row[2]),
                        new FluidPlan.Pump(swept, slip, 0, NEVER, 0, 0, NEVER, 1),
                        running,
                        FluidPlan.ALWAYS,
                        elevations.get(row[2]) - elevations.get(row[1])));
    }

    private static FluidPlan.Pump constant(double litresAMinute) {
        return new FluidPlan.Pump(litresAMinute * LITRE_A_MINUTE, 0, 0, NEVER, 0, 0, NEVER, 1);
    }

    private void valve(String[] row) {
        double area = Math.PI / 4 * Math.pow(Double.parseDouble(row[3]) * 1e-3, 2);
        double b = METRE * Double.parseDouble(row[6]) / (2 * ITS_GRAVITY) / Math.pow(DENSITY * area, 2);
        boolean upstream = row[4].equals("PSV");
        // Its valves are infinitely stiff; ours is set off by what a stiff spring gives way.
        double flow = flows.getOrDefault(row[0], 0.0) * LITRE_A_MINUTE;
        double givesWay = (b * flow * flow + ROUNDING) / STIFF;
        double set = METRE * Double.parseDouble(row[5]) + (upstream ? -givesWay : givesWay);
        add(row[0], row[1], row[2], new FluidPlan.Regulator(set, upstream, STIFF, LAMINAR, b));
    }

    private void add(String name, String from, String to, FluidPlan.Law law) {
        double rise = elevations.get(to) - elevations.get(from);
        branches.put(
                name, plan.branch(name, nodes.get(from), nodes.get(to), law, FluidPlan.ALWAYS, FluidPlan.ALWAYS, rise));
    }
}
