package wetside.plant;

import wetside.blueprint.FluidPlan;

/**
 * What one pump moves between two pressures.
 *
 * <pre>
 * q = D n η(p_in) − slip (p_out − p_in) − gain e(p_out − κ p_in − set) + way past the resting rotor
 * </pre>
 *
 * with p_in and p_out above the air's in the third term, η the share of the chamber that fills (a smooth step over a
 * quarter of a bar above vapour pressure, so cavitation and a blocked suction need no law of their own), and e as in {@link
 * ChainLaws}.
 */
final class PumpLaw {
    private static final double VAPOUR_PRESSURE = 2.4e3;
    private static final double SUCTION_BAND = 0.25e5;
    private static final double BYPASS_BAND = 0.1e5;
    private static final double REST_BAND = 0.05e5;
    /** Below this speed it slips more and more as one at rest [rev/s]. */
    private static final double TURNING = 0.5;

    private final FluidPlan.Pump law;
    /** Result of {@link #between}: mass flow [kg/s] and its slopes [kg/(s Pa)]. */
    double flow;

    double byIn;
    double byOut;

    PumpLaw(FluidPlan.Pump law) {
        this.law = law;
    }

    /**
     * @param speed [rev/s], not negative
     * @param filling share of what the inlet offers that is water
     * @param a, b    terms of the way past the resting rotor
     */
    void between(double in, double out, double air, double speed, double filling, double a, double b) {
        double turning = speed >= TURNING ? 1 : speed / TURNING;
        double slip = law.restSlip() + turning * (law.slip() - law.restSlip());
        flow = slip * (in - out);
        byIn = slip;
        byOut = -slip;
        displace(in, law.perRev() * speed * filling);
        bypass(in - air, out - air);
        past(in - out - law.restCrack(), a, b);
    }

    private void displace(double in, double swept) {
        double enters = (in - VAPOUR_PRESSURE) / SUCTION_BAND;
        if (enters >= 1) {
            flow += swept;
        } else if (enters > 0) {
            flow += swept * enters * enters * (3 - 2 * enters);
            byIn += swept * 6 * enters * (1 - enters) / SUCTION_BAND;
        }
    }

    private void bypass(double in, double out) {
        double over = out - law.inletShare() * in - law.bypassSet();
        if (over > 0) {
            double slope = law.bypassGain() * ChainLaws.opening(over, BYPASS_BAND);
            flow -= law.bypassGain() * ChainLaws.drive(over, BYPASS_BAND);
            byIn += slope * law.inletShare();
            byOut -= slope;
        }
    }

    private void past(double over, double a, double b) {
        if (over > 0) {
            double e = ChainLaws.drive(over, REST_BAND);
            double s = Math.sqrt(a * a + 4 * b * e);
            double slope = ChainLaws.opening(over, REST_BAND) / s;
            flow += 2 * e / (a + s);
            byIn += slope;
            byOut -= slope;
        }
    }
}
