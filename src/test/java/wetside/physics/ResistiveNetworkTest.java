package wetside.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ResistiveNetworkTest {
    private static final MathContext DIGITS = new MathContext(80);

    /** A random net with resistances from 1 mΩ to 1 TΩ; node 0 is the reference. */
    private record Net(int nodes, int[] from, int[] to, double[] siemens, double[] emf) {
        static Net random(Random random, int nodes, int branches) {
            Net net = new Net(nodes, new int[branches], new int[branches], new double[branches], new double[branches]);
            for (int b = 0; b < branches; b++) {
                net.from[b] = b < nodes - 1 ? random.nextInt(b + 1) : random.nextInt(nodes);
                net.to[b] = b < nodes - 1 ? b + 1 : random.nextInt(nodes);
                net.siemens[b] = Math.pow(10, 3 - 15 * random.nextDouble());
                net.emf[b] = random.nextInt(5) == 0 ? 230 * random.nextDouble() : 0;
            }
            return net;
        }

        double[] solved() {
            ResistiveNetwork network = new ResistiveNetwork(nodes, from, to, 0);
            network.conduct(siemens);
            double[] drop = new double[from.length];
            network.excite(emf, new double[nodes], drop);
            return drop;
        }

        /** Current that a source of 1 V in a branch would drive through it and the rest [A]. */
        double[] drivenByOneVolt() {
            ResistiveNetwork network = new ResistiveNetwork(nodes, from, to, 0);
            double[] amps = new double[from.length];
            for (int b = 0; b < from.length; b++) {
                double[] without = siemens.clone();
                without[b] = 0;
                network.conduct(without);
                amps[b] = 1 / (1 / siemens[b] + network.resistance(from[b], to[b]));
            }
            return amps;
        }

        /** Currents by Gaussian elimination with eighty digits. */
        double[] exactCurrents() {
            int n = nodes - 1;
            BigDecimal[][] a = new BigDecimal[n][n + 1];
            for (BigDecimal[] row : a) {
                Arrays.fill(row, BigDecimal.ZERO);
            }
            for (int b = 0; b < from.length; b++) {
                BigDecimal g = new BigDecimal(siemens[b]);
                BigDecimal source = g.multiply(new BigDecimal(emf[b]));
                stamp(a, from[b] - 1, to[b] - 1, g, source.negate());
                stamp(a, to[b] - 1, from[b] - 1, g, source);
            }
            BigDecimal[] v = solve(a);
            double[] currents = new double[from.length];
            for (int b = 0; b < from.length; b++) {
                BigDecimal drop = new BigDecimal(emf[b]).add(at(v, from[b])).subtract(at(v, to[b]));
                currents[b] = drop.multiply(new BigDecimal(siemens[b])).doubleValue();
            }
            return currents;
        }

        private static void stamp(BigDecimal[][] a, int row, int other, BigDecimal g, BigDecimal source) {
            if (row >= 0) {
                a[row][row] = a[row][row].add(g);
                a[row][a.length] = a[row][a.length].add(source);
                if (other >= 0) {
                    a[row][other] = a[row][other].subtract(g);
                }
            }
        }

        private static BigDecimal at(BigDecimal[] v, int node) {
            return node == 0 ? BigDecimal.ZERO : v[node - 1];
        }

        private static BigDecimal[] solve(BigDecimal[][] a) {
            int n = a.length;
            for (int k = 0; k < n; k++) {
                for (int i = 0; i < n; i++) {
                    if (i != k && a[i][k].signum() != 0) {
                        BigDecimal f = a[i][k].divide(a[k][k], DIGITS);
                        for (int j = k; j <= n; j++) {
                            a[i][j] = a[i][j].subtract(f.multiply(a[k][j]), DIGITS);
                        }
                    }
                }
            }
            BigDecimal[] v = new BigDecimal[n];
            for (int k = 0; k < n; k++) {
                v[k] = a[k][n].divide(a[k][k], DIGITS);
            }
            return v;
        }
    }

    /**
     * A potential near 230 V is rounded by 3e-14 V. Such an error between the ends of a branch drives a current through
     * the rest of the network, the largest current is rounded itself, and no more than that may be wrong: in particular nothing of the order of 3e-14 V across
     * a closed contact of 1 mΩ.
     */
    @Test
    void currentsAreWrongByNoMoreThanARoundedPotentialCouldDrive() {
        Random random = new Random(1);
        for (int i = 0; i < 200; i++) {
            Net net = Net.random(random, 3 + random.nextInt(12), 16 + random.nextInt(12));
            double[] drop = net.solved();
            double[] exact = net.exactCurrents();
            double[] driven = net.drivenByOneVolt();
            double largest = Arrays.stream(exact).map(Math::abs).max().orElseThrow();
            double most = Arrays.stream(driven).max().orElseThrow();
            for (int b = 0; b < drop.length; b++) {
                double rounding = 3e-13 * Math.sqrt(driven[b] * most) + 1e-15 * largest;
                assertThat(net.siemens[b] * drop[b])
                        .as("net %d branch %d", i, b)
                        .isCloseTo(exact[b], within(1e-13 * Math.abs(exact[b]) + rounding));
            }
        }
    }

    @Test
    void chargeAndPowerBalance() {
        Random random = new Random(2);
        for (int i = 0; i < 200; i++) {
            Net net = Net.random(random, 40 + random.nextInt(50), 110);
            ResistiveNetwork network = new ResistiveNetwork(net.nodes, net.from, net.to, 0);
            network.conduct(net.siemens);
            double[] drop = new double[net.from.length];
            network.excite(net.emf, new double[net.nodes], drop);
            double delivered = 0;
            double dissipated = 0;
            double largest = 0;
            for (int b = 0; b < drop.length; b++) {
                double amps = net.siemens[b] * drop[b];
                delivered += net.emf[b] * amps;
                dissipated += drop[b] * amps;
                largest = Math.max(largest, Math.abs(amps));
            }
            assertThat(network.residual(drop)).isLessThanOrEqualTo(1e-13 * largest);
            assertThat(delivered).isCloseTo(dissipated, within(1e-9 * dissipated));
        }
    }

    @Test
    void resistancesInSeriesAndParallel() {
        ResistiveNetwork network = new ResistiveNetwork(4, new int[] {0, 1, 1, 3}, new int[] {1, 2, 2, 3}, -1);
        network.conduct(new double[] {1 / 10.0, 1 / 6.0, 1 / 3.0, 1});
        assertThat(network.resistance(0, 2)).isCloseTo(12, within(1e-14));
        assertThat(network.resistance(2, 0)).isCloseTo(12, within(1e-14));
        assertThat(network.resistance(1, 1)).isZero();
        assertThat(network.resistance(0, 3)).isInfinite();
    }

    @Test
    void aSmallResistanceBehindHugeOnes() {
        ResistiveNetwork network = new ResistiveNetwork(4, new int[] {0, 0, 1, 2}, new int[] {1, 2, 2, 3}, 0);
        network.conduct(new double[] {1e-12, 1e-12, 1e3, 1e-12});
        assertThat(network.resistance(1, 2)).isCloseTo(1e-3, within(1e-15));
        assertThat(network.resistance(1, 3)).isCloseTo(1e12, within(1.0));
    }

    @Test
    void aPartThatHangsOnNothingStillHasItsCurrents() {
        ResistiveNetwork network = new ResistiveNetwork(5, new int[] {0, 2, 3, 4}, new int[] {1, 3, 4, 2}, 0);
        network.conduct(new double[] {1, 1, 0.5, 0.25});
        double[] volts = new double[5];
        double[] drop = new double[4];
        network.excite(new double[] {0, 14, 0, 0}, volts, drop);
        assertThat(volts[3] - volts[4]).isCloseTo(4, within(1e-14));
        assertThat(drop[3] * 0.25).isCloseTo(2, within(1e-14));
        assertThat(volts[1]).isZero();
    }
}
