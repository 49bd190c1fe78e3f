package wetside.water;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Salts that bring a water nearest to a target: least squares of what is off, under limits, no salt negative.
 *
 * @param added   mol per kg of water, only what is used
 * @param water   what comes out, closed
 * @param binding limits that keep it from coming nearer, in words
 */
public record Recipe(Map<Salt, Double> added, Composition water, List<String> binding) {
    /** Off by this counts as one [mmol/kg]. */
    private static final double UNIT = 0.05;

    /** Prefers less salt where targets do not decide; moves what is decided by less than a thousandth. */
    private static final double RIDGE = 0.05;

    /** No nearer than this is worth another salt [mol/kg]. */
    private static final double SAME = 5e-6;

    private static final int SWEEPS = 40_000;

    /** What is wanted [mol/kg; alkalinity eq/kg]. */
    public record Target(double calcium, double magnesium, double alkalinity) {}

    /** What must not be passed, the water's own included [mol/kg], and the salts that may be used. */
    public record Limits(double sodium, double potassium, double chloride, double sulfate, List<Salt> salts) {
        /** Ours: 30 mg/l sodium, 40 potassium and 60 sulfate for taste, 40 chloride to spare steel where it is boiled down. */
        public static final Limits USUAL =
                new Limits(30 / 22990.0, 40 / 39098.0, 40 / 35450.0, 60 / 96060.0, List.of(Salt.values()));
    }

    /**
     * The recipe nearest to a target.
     *
     * <pre>
     * least ½ |A x − b|² + ridge,  0 ≤ x,  L x ≤ limits;  by the dual, one multiplier after the other
     * </pre>
     *
     * Source: Hildreth 1957, Naval Research Logistics Quarterly 4:79 (method). Checked: RecipeTest.
     */
    public static Recipe nearest(Composition base, Target target, Limits limits) {
        Recipe best = solved(base, target, limits, limits.salts());
        List<Salt> left = new ArrayList<>(best.added.keySet());
        left.sort(Comparator.comparingInt(Recipe::handiness));
        for (Salt without : List.copyOf(left)) {
            List<Salt> fewer = new ArrayList<>(left);
            fewer.remove(without);
            Recipe next = solved(base, target, limits, fewer);
            if (next.off(target) <= best.off(target) + SAME) {
                best = next;
                left = fewer;
            }
        }
        return best;
    }

    /** The first to be left out where another does as well: gypsum hardly dissolves, some are dear or taste. */
    private static int handiness(Salt s) {
        return switch (s) {
            case CALCIUM_SULFATE -> 0;
            case SODIUM_CHLORIDE -> 1;
            case MAGNESIUM_CHLORIDE -> 2;
            case POTASSIUM_BICARBONATE -> 3;
            default -> 4;
        };
    }

    /** How far the water is from a target [mol/kg]. */
    public double off(Target target) {
        return Math.hypot(
                Math.hypot(water.calcium() - target.calcium, water.magnesium() - target.magnesium),
                water.alkalinity() - target.alkalinity);
    }

    private static Recipe solved(Composition base, Target target, Limits limits, List<Salt> salts) {
        int n = salts.size();
        double[][] q = new double[n][n];
        double[] b = new double[n];
        double[] wanted = {target.calcium, target.magnesium, target.alkalinity};
        double[] there = {base.calcium(), base.magnesium(), base.alkalinity()};
        for (int i = 0; i < n; i++) {
            double[] ai = aims(salts.get(i));
            q[i][i] += RIDGE;
            for (int r = 0; r < wanted.length; r++) {
                b[i] += ai[r] * 1e3 * (wanted[r] - there[r]) / (UNIT * UNIT);
                for (int j = 0; j < n; j++) {
                    q[i][j] += ai[r] * aims(salts.get(j))[r] / (UNIT * UNIT);
                }
            }
        }
        double[] room = {
            limits.sodium - base.sodium(),
            limits.potassium - base.potassium(),
            limits.chloride - base.chloride(),
            limits.sulfate - base.sulfate()
        };
        double[][] g = new double[n + room.length][n];
        double[] h = new double[n + room.length];
        for (int i = 0; i < n; i++) {
            g[i][i] = -1;
            double[] li = limited(salts.get(i));
            for (int r = 0; r < room.length; r++) {
                g[n + r][i] = li[r];
                h[n + r] = Math.max(0, 1e3 * room[r]);
            }
        }
        double[] multipliers = new double[g.length];
        double[] x = solved(inverse(q), b, g, h, multipliers);
        return told(base, salts, x, multipliers);
    }

    private static Recipe told(Composition base, List<Salt> salts, double[] x, double[] multipliers) {
        Map<Salt, Double> added = new EnumMap<>(Salt.class);
        Composition water = base;
        for (int i = 0; i < x.length; i++) {
            if (x[i] > 2e-3) {
                added.put(salts.get(i), x[i] * 1e-3);
                water = water.plus(salts.get(i).dissolved(x[i] * 1e-3));
            }
        }
        List<String> binding = new ArrayList<>();
        String[] names = {"sodium", "potassium", "chloride", "sulfate"};
        for (int r = 0; r < names.length; r++) {
            if (multipliers[x.length + r] > 1e-3) {
                binding.add("the limit of " + names[r]);
            }
        }
        return new Recipe(added, water, binding);
    }

    private static double[] aims(Salt s) {
        Composition c = s.dissolved(1);
        return new double[] {c.calcium(), c.magnesium(), c.alkalinity()};
    }

    private static double[] limited(Salt s) {
        Composition c = s.dissolved(1);
        return new double[] {c.sodium(), c.potassium(), c.chloride(), c.sulfate()};
    }

    private static double[] solved(double[][] inverse, double[] b, double[][] g, double[] h, double[] multipliers) {
        int n = b.length;
        double[] x = times(inverse, b);
        double[][] move = new double[g.length][];
        double[] stiff = new double[g.length];
        for (int i = 0; i < g.length; i++) {
            move[i] = times(inverse, g[i]);
            stiff[i] = dot(g[i], move[i]);
        }
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double most = 0;
            for (int i = 0; i < g.length; i++) {
                if (stiff[i] < 1e-15) {
                    continue;
                }
                double next = Math.max(0, multipliers[i] + (dot(g[i], x) - h[i]) / stiff[i]);
                double by = next - multipliers[i];
                multipliers[i] = next;
                for (int k = 0; k < n; k++) {
                    x[k] -= by * move[i][k];
                    most = Math.max(most, Math.abs(by * move[i][k]));
                }
            }
            if (most < 1e-10) {
                break;
            }
        }
        return x;
    }

    private static double dot(double[] a, double[] b) {
        double s = 0;
        for (int i = 0; i < a.length; i++) {
            s += a[i] * b[i];
        }
        return s;
    }

    private static double[] times(double[][] m, double[] v) {
        double[] r = new double[m.length];
        for (int i = 0; i < m.length; i++) {
            r[i] = dot(m[i], v);
        }
        return r;
    }

    /** Of a symmetric positive matrix, by elimination without pivots. */
    private static double[][] inverse(double[][] q) {
        int n = q.length;
        double[][] a = new double[n][2 * n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(q[i], 0, a[i], 0, n);
            a[i][n + i] = 1;
        }
        for (int p = 0; p < n; p++) {
            double pivot = a[p][p];
            for (int j = 0; j < 2 * n; j++) {
                a[p][j] /= pivot;
            }
            for (int i = 0; i < n; i++) {
                double f = a[i][p];
                for (int j = 0; i != p && j < 2 * n; j++) {
                    a[i][j] -= f * a[p][j];
                }
            }
        }
        double[][] r = new double[n][n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(a[i], n, r[i], 0, n);
        }
        return r;
    }
}
