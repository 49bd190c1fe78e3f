package wetside.physics;

import java.util.Arrays;

/**
 * Potentials and currents in a network of resistances and sources.
 *
 * <p>Nodes are eliminated by star-mesh transformation: a node with conductances g₁, g₂, … to its neighbours becomes links
 *
 * <pre>g_ij = g_i g_j / Σg</pre>
 *
 * between them. Nothing is ever subtracted, so a conductance of 1e-12 S beside one of 1e3 S keeps all its digits, and a
 * part of the network that hangs on nothing needs no artificial leak: the node of it that is left over is its zero.
 * Currents are corrected by what the first solution leaves over at the nodes, which makes them as exact as the
 * potentials even through closed contacts, where the potential difference has few digits left.
 *
 * <p>The order of elimination depends on the topology only and is found once; {@link #conduct} takes new conductances,
 * {@link #inject} and {@link #excite} new sources. One network must not be used by two threads at once.
 *
 * <p>Validity: linear resistances, direct current or RMS values in phase. Source: star-mesh transformation, any handbook
 * of circuit theory. Checked: published.ResistiveNetworkPublishedTest
 */
public final class ResistiveNetwork {
    /** A strong source in a part that hangs on nearly nothing takes a second correction, hardly ever a third. */
    private static final int ROUNDS = 4;
    /** Change of a potential below which the change itself is exact enough [V]. */
    private static final double ROUNDING = 1e-10;

    private final int nodes;
    private final int[] from;
    private final int[] to;
    private final EliminationOrder order;
    private final int[] linkOf;
    private final double[] link;
    private final double[] inverse;
    private final double[] work;
    private final double[] rest;
    private final double[] correction;
    private double[] siemens;

    /**
     * @param nodes     number of nodes
     * @param from      first node of each branch
     * @param to        second node of each branch; a branch may begin and end at the same node
     * @param reference node at 0 V, or -1; every part not joined to it has some node of its own at 0 V
     */
    public ResistiveNetwork(int nodes, int[] from, int[] to, int reference) {
        this.nodes = nodes;
        this.from = from.clone();
        this.to = to.clone();
        order = EliminationOrder.of(nodes, from, to, reference);
        linkOf = new int[from.length];
        for (int b = 0; b < from.length; b++) {
            linkOf[b] = from[b] == to[b] ? -1 : order.link(order.places[from[b]], order.places[to[b]]);
        }
        link = new double[order.later.length];
        inverse = new double[nodes];
        work = new double[nodes];
        rest = new double[nodes];
        correction = new double[nodes];
        siemens = new double[from.length];
    }

    public int nodes() {
        return nodes;
    }

    public int branches() {
        return from.length;
    }

    /** Takes the conductance of every branch [S], zero or more, and eliminates. The array is kept, not copied. */
    public void conduct(double[] siemens) {
        this.siemens = siemens;
        Arrays.fill(link, 0);
        for (int b = 0; b < linkOf.length; b++) {
            if (linkOf[b] >= 0) {
                link[linkOf[b]] += siemens[b];
            }
        }
        int[] first = order.first;
        int[] meshes = order.meshes;
        int at = 0;
        for (int k = 0; k < nodes; k++) {
            int end = first[k + 1];
            double sum = 0;
            for (int i = first[k]; i < end; i++) {
                sum += link[i];
            }
            double inv = sum > Double.MIN_NORMAL ? 1 / sum : 0;
            inverse[k] = inv;
            for (int i = first[k]; i < end; i++) {
                double g = link[i] * inv;
                for (int j = i + 1; j < end; j++) {
                    link[meshes[at++]] += g * link[j];
                }
            }
        }
    }

    /**
     * Potentials [V] for currents forced into the nodes [A].
     *
     * @return the largest current that found no way back, that is, was forced into a part which hangs on nothing [A]
     */
    public double inject(double[] amps, double[] volts) {
        int[] first = order.first;
        int[] later = order.later;
        for (int k = 0; k < nodes; k++) {
            work[k] = amps[order.nodes[k]];
        }
        double stray = 0;
        for (int k = 0; k < nodes; k++) {
            double share = work[k] * inverse[k];
            if (share != 0) {
                for (int i = first[k]; i < first[k + 1]; i++) {
                    work[later[i]] += link[i] * share;
                }
            } else if (inverse[k] == 0) {
                stray = Math.max(stray, Math.abs(work[k]));
            }
        }
        for (int k = nodes - 1; k >= 0; k--) {
            double sum = work[k];
            for (int i = first[k]; i < first[k + 1]; i++) {
                sum += link[i] * work[later[i]];
            }
            work[k] = sum * inverse[k];
            volts[order.nodes[k]] = work[k];
        }
        return stray;
    }

    /**
     * Potentials and drops for sources in the branches.
     *
     * @param emf   voltage by which a branch's source lifts {@code to} above {@code from} [V]
     * @param volts receives the potential of every node [V]
     * @param drop  receives for every branch the voltage across its resistance, {@code emf + from - to} [V]; times its
     *              conductance this is the current from {@code from} to {@code to}
     */
    public void excite(double[] emf, double[] volts, double[] drop) {
        Arrays.fill(rest, 0);
        for (int b = 0; b < from.length; b++) {
            if (emf[b] != 0) {
                double current = siemens[b] * emf[b];
                rest[to[b]] += current;
                rest[from[b]] -= current;
            }
        }
        inject(rest, volts);
        int round = 0;
        while (correct(emf, volts, drop) > ROUNDING && ++round < ROUNDS) {}
    }

    /**
     * Spreads what is left over at the nodes and corrects potentials and drops by it; the drops take the correction
     * apart from the potentials, whose last digits it may be below.
     *
     * @return largest change of a potential [V]
     */
    private double correct(double[] emf, double[] volts, double[] drop) {
        for (int b = 0; b < from.length; b++) {
            drop[b] = emf[b] + (volts[from[b]] - volts[to[b]]);
        }
        leftOver(drop);
        inject(rest, correction);
        for (int b = 0; b < from.length; b++) {
            drop[b] += correction[from[b]] - correction[to[b]];
        }
        double largest = 0;
        for (int n = 0; n < nodes; n++) {
            volts[n] += correction[n];
            largest = Math.max(largest, Math.abs(correction[n]));
        }
        return largest;
    }

    /** Largest sum of currents at any node for these drops [A]: zero but for rounding if they solve the network. */
    public double residual(double[] drop) {
        leftOver(drop);
        double largest = 0;
        for (double r : rest) {
            largest = Math.max(largest, Math.abs(r));
        }
        return largest;
    }

    private void leftOver(double[] drop) {
        Arrays.fill(rest, 0);
        for (int b = 0; b < from.length; b++) {
            double current = siemens[b] * drop[b];
            rest[from[b]] -= current;
            rest[to[b]] += current;
        }
    }

    /** Resistance between two nodes with all sources out [Ω], infinite where nothing joins them. */
    public double resistance(int a, int b) {
        if (a == b) {
            return 0;
        }
        Arrays.fill(rest, 0);
        rest[a] = 1;
        rest[b] = -1;
        double stray = inject(rest, correction);
        return stray > 0.5 ? Double.POSITIVE_INFINITY : correction[a] - correction[b];
    }
}
