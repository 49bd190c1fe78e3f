package wetside.physics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A netlist of ideal voltage sources and resistors, each source in series with exactly one resistor. */
public final class Netlist {
    public final Map<String, Integer> nodes = new LinkedHashMap<>();
    public final Map<String, Integer> branches = new LinkedHashMap<>();
    public final int[] from;
    public final int[] to;
    public final double[] siemens;
    public final double[] emf;
    /** For the node between a source and its resistor: the node at the source's other end, and the source. */
    private final Map<String, String[]> behind = new LinkedHashMap<>();

    private Netlist(List<String[]> sources, List<String[]> resistors) {
        from = new int[resistors.size()];
        to = new int[resistors.size()];
        siemens = new double[resistors.size()];
        emf = new double[resistors.size()];
        nodes.put("0", 0);
        for (String[] v : sources) {
            behind.put(v[1], new String[] {v[2], v[4]});
        }
        for (String[] r : resistors) {
            int b = branches.size();
            branches.put(r[0], b);
            String[] source = behind.get(r[1]);
            if (behind.containsKey(r[2])) {
                throw new IllegalArgumentException("a source is expected at a resistor's first node: " + r[0]);
            }
            from[b] = node(source == null ? r[1] : source[0]);
            to[b] = node(r[2]);
            emf[b] = source == null ? 0 : Double.parseDouble(source[1]);
            siemens[b] = 1 / Double.parseDouble(r[3]);
        }
    }

    public static Netlist parse(String text) {
        List<String[]> sources = new ArrayList<>();
        List<String[]> resistors = new ArrayList<>();
        for (String line : text.lines().toList()) {
            String[] words = line.trim().split("\\s+");
            if (line.startsWith("V")) {
                sources.add(words);
            } else if (line.startsWith("R")) {
                resistors.add(words);
            }
        }
        return new Netlist(sources, resistors);
    }

    private int node(String name) {
        return nodes.computeIfAbsent(name, n -> nodes.size());
    }

    public ResistiveNetwork network() {
        return new ResistiveNetwork(nodes.size(), from, to, 0);
    }

    /** Potential of a named node, also of one between a source and its resistor. */
    public double potential(String name, double[] volts) {
        String[] source = behind.get(name);
        return source == null ? volts[nodes.get(name)] : potential(source[0], volts) + Double.parseDouble(source[1]);
    }

    public double current(String branch, double[] drop) {
        int b = branches.get(branch);
        return siemens[b] * drop[b];
    }

    public double power(String branch, double[] drop) {
        return current(branch, drop) * drop[branches.get(branch)];
    }
}
