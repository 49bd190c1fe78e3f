package wetside.physics;

/** Water that goes round by itself because one leg is warmer than the other: the thermosiphon between boiler and group. */
public final class Circulation {
    private static final double G = 9.80665;

    private Circulation() {}

    /**
     * Pressure that drives a loop.
     *
     * <pre>Δp = g H ρ β ΔT</pre>
     *
     * @param height H between the middles of heating and cooling [m]
     * @param density ρ [kg/m³]
     * @param expansion β [1/K]
     * @param difference ΔT between the warm and the cool leg [K]
     * @return Δp [Pa]
     *     <p>Validity: small density differences (Boussinesq).
     *     <p>Source: hydrostatics.
     *     <p>Checked: CirculationPublishedTest.
     */
    public static double drive(double height, double density, double expansion, double difference) {
        return G * height * density * expansion * difference;
    }

    /**
     * Steady flow of a loop heated with a known power.
     *
     * <pre>a W + b W² = g H ρ β · P / (W cp)   ⇔   b W³ + a W² = g H ρ β P / cp</pre>
     *
     * @param a laminar term of the loop [Pa s/kg], above 0
     * @param b turbulent term of the loop [Pa s²/kg²], not negative
     * @param drivePerKelvin g H ρ β [Pa/K]
     * @param power P [W], not negative
     * @param heatCapacity cp [J/(kg K)]
     * @return W [kg/s]
     *     <p>Validity: constant properties, losses only at the cooler.
     *     <p>Source: momentum and energy balance of the loop.
     *     <p>Checked: CirculationPublishedTest.
     */
    public static double heated(double a, double b, double drivePerKelvin, double power, double heatCapacity) {
        double right = drivePerKelvin * power / heatCapacity;
        double flow = Math.sqrt(right / a);
        for (int turn = 0; turn < 60 && flow > 0; turn++) {
            double step = (flow * flow * (a + b * flow) - right) / (flow * (2 * a + 3 * b * flow));
            flow -= step;
            if (Math.abs(step) <= 1e-14 * flow) {
                break;
            }
        }
        return flow;
    }

    /**
     * Steady flow of a loop between two bodies, and the heat it carries per kelvin between them.
     *
     * <pre>a W + b W² = D ΔT ε,   ε = 1 − exp(−UA/(W cp)),   conductance = W cp ε</pre>
     *
     * The water leaves the warm body at its temperature and returns cooled by the share ε of the difference. The left
     * side rises with W and the right side falls, so there is exactly one flow; Newton from above, kept in a bracket.
     *
     * @param a laminar term of the loop [Pa s/kg], above 0
     * @param b turbulent term of the loop [Pa s²/kg²], not negative
     * @param drivePerKelvin D = g H ρ β [Pa/K], above 0
     * @param difference ΔT, warm body less cool body [K]; no flow when it is not positive
     * @param exchange UA to the cool body [W/K], above 0
     * @param heatCapacity cp [J/(kg K)]
     * @param into receives W [kg/s] and the conductance [W/K]
     *     <p>Validity: quasi-steady; the loop's own transport time is ignored.
     *     <p>Source: momentum balance with the usual exchanger effectiveness.
     *     <p>Checked: CirculationTest.
     */
    public static void between(
            double a,
            double b,
            double drivePerKelvin,
            double difference,
            double exchange,
            double heatCapacity,
            double[] into) {
        if (!(difference > 0)) {
            into[0] = 0;
            into[1] = 0;
            return;
        }
        double full = drivePerKelvin * difference;
        double low = 0;
        double high = 2 * full / (a + Math.sqrt(a * a + 4 * b * full));
        double number = exchange / heatCapacity;
        double flow = high;
        double rest = Math.exp(-number / flow);
        for (int turn = 0; turn < 60; turn++) {
            double residual = flow * (a + b * flow) - full * (1 - rest);
            low = residual < 0 ? flow : low;
            high = residual > 0 ? flow : high;
            double next = flow - residual / (a + 2 * b * flow + full * rest * number / (flow * flow));
            next = next > low && next < high ? next : (low + high) / 2;
            boolean settled = Math.abs(next - flow) <= 1e-10 * flow;
            flow = next;
            rest = Math.exp(-number / flow);
            if (settled) {
                break;
            }
        }
        into[0] = flow;
        into[1] = flow * heatCapacity * (1 - rest);
    }

    /**
     * Steady Reynolds number of a uniform loop by the dimensionless correlation.
     *
     * <pre>Re = C (Gr_m/N_G)^r,   laminar C = 0.1768, r = 1/2;   turbulent C = 1.956, r = 1/2.75</pre>
     *
     * @param grashof modified Grashof number Gr_m = D³ ρ² β g P H / (A μ³ cp) [–]
     * @param geometry N_G, length over bore of a uniform loop [–]
     * @param turbulent which branch
     * @return Re [–]
     *     <p>Validity: laminar below about 2000; measurements deviate between the branches.
     *     <p>Source: Vijayan, Nucl. Eng. Des. 215, 2002, p. 139 (constants derived again here from f = 64/Re and 0.316
     *     Re^−0.25).
     *     <p>Checked: CirculationPublishedTest.
     */
    public static double vijayan(double grashof, double geometry, boolean turbulent) {
        double ratio = grashof / geometry;
        return turbulent ? Math.pow(2 / 0.316 * ratio, 1 / 2.75) : Math.sqrt(2 / 64.0 * ratio);
    }
}
