package wetside.plant;

import wetside.physics.Saturation;

/**
 * Temperature, pressure and phases of a closed vessel from what it holds: one formula from dry to over-full.
 *
 * <pre>
 * V_f = V − M v'      room left beside the water           α = 1 − v'/v''
 * β = M v' M_a R_a T / K                                   S = √(V_f² + 4 α β)
 * V_g = (V_f + S) / 2α  or, the same without cancelling,  2β / (S − V_f)
 * p = p_s(T) min(1, M v''/V_g) + M_a R_a T / V_g     (dry: V_g = V)
 * </pre>
 *
 * V_g comes from V_g + m_l v' (1 − p_a/K) = V, water and shell of stiffness K yielding to the air's pressure, so that a
 * vessel passes from steam space to hydraulically full without a kink as long as a trace of air remains.
 */
public final class Flash {
    /** A bubble always remains [kg]. */
    public static final double LEAST_AIR = 1e-7;

    static final double AIR_CONSTANT = 287.05;
    static final double AIR_HEAT = 717.6;
    private static final double COLDEST = 272.15;
    private static final double HOTTEST = 1500;
    private static final double CLOSE = 1e-7;

    private final double volume;
    private final double stiffness;
    private final double[] sat = new double[Saturation.SIZE];
    private double temperature;
    private double pressure;
    private double airPressure;
    private double gasVolume;
    private double vapour;
    private boolean dry;
    private double energy;
    private double capacity;
    private int turns;

    public Flash(double volume, double stiffness) {
        this.volume = volume;
        this.stiffness = stiffness;
    }

    /**
     * @param mass   water substance M [kg]
     * @param energy internal energy U of water and air [J], zero for liquid water (u' = 0) and air at 0 °C
     * @param air    Ma [kg], taken as at least {@link #LEAST_AIR}
     * @param guess  temperature to start from [K]
     * @return false when no temperature between −1 and 1227 °C holds that energy; the nearest end is then left in place
     */
    public boolean solve(double mass, double energy, double air, double guess) {
        double low = COLDEST;
        double high = HOTTEST;
        double t = Math.min(HOTTEST, Math.max(COLDEST, guess));
        for (turns = 1; turns <= 100; turns++) {
            double excess = at(mass, air, t) - energy;
            if (excess > 0) {
                high = t;
            } else {
                low = t;
            }
            double next = t - excess / capacity;
            if (Math.abs(next - t) < CLOSE) {
                temperature = Math.min(HOTTEST, Math.max(COLDEST, next));
                return next == temperature;
            }
            boolean outside = !(next > low && next < high);
            t = outside || turns > 30 ? (low + high) / 2 : next;
            if (high - low < CLOSE) {
                return low > COLDEST && high < HOTTEST;
            }
        }
        return false;
    }

    /** The boiling line at the temperature of the last call, as {@link Saturation#at} fills it. */
    double[] saturation() {
        return sat;
    }

    /** Fills the result for a known temperature and returns the internal energy [J]: how a run begins. */
    public double at(double mass, double air, double temperature) {
        Saturation.at(temperature, sat);
        double ma = Math.max(LEAST_AIR, air);
        double v = sat[Saturation.LIQUID_VOLUME];
        double vt = sat[Saturation.LIQUID_VOLUME_SLOPE];
        double w = sat[Saturation.VAPOUR_VOLUME];
        double wt = sat[Saturation.VAPOUR_VOLUME_SLOPE];
        double alpha = 1 - v / w;
        double alphaT = (v * wt / w - vt) / w;
        double free = volume - mass * v;
        double freeT = -mass * vt;
        double beta = mass * v / stiffness * ma * AIR_CONSTANT * temperature;
        double betaT = beta * (vt / v + 1 / temperature);
        double root = Math.sqrt(free * free + 4 * alpha * beta);
        double rootT = (free * freeT + 2 * (alphaT * beta + alpha * betaT)) / root;
        double gasT;
        if (free >= 0) {
            gasVolume = (free + root) / (2 * alpha);
            gasT = (freeT + rootT) / (2 * alpha) - gasVolume * alphaT / alpha;
        } else {
            gasVolume = 2 * beta / (root - free);
            gasT = (2 * betaT - gasVolume * (rootT - freeT)) / (root - free);
        }
        this.temperature = temperature;
        dry = gasVolume / w >= mass;
        gasVolume = dry ? volume : gasVolume;
        airPressure = ma * AIR_CONSTANT * temperature / gasVolume;
        vapour = dry ? mass : gasVolume / w;
        pressure = sat[Saturation.PRESSURE] * (dry ? mass * w / gasVolume : 1) + airPressure;
        double vapourT = dry ? 0 : (gasT - vapour * wt) / w;
        double latent = sat[Saturation.VAPOUR_ENERGY] - sat[Saturation.LIQUID_ENERGY];
        energy = mass * sat[Saturation.LIQUID_ENERGY] + vapour * latent + ma * AIR_HEAT * (temperature - 273.15);
        capacity = (mass - vapour) * sat[Saturation.LIQUID_ENERGY_SLOPE]
                + vapour * sat[Saturation.VAPOUR_ENERGY_SLOPE]
                + vapourT * latent
                + ma * AIR_HEAT;
        return energy;
    }

    public double temperature() {
        return temperature;
    }

    /** Absolute [Pa]. */
    public double pressure() {
        return pressure;
    }

    /** Partial pressure of the air [Pa]. */
    public double airPressure() {
        return airPressure;
    }

    /** Share of the volume that is liquid. */
    public double level() {
        return Math.min(1, Math.max(0, 1 - gasVolume / volume));
    }

    /** Mass of vapour [kg]. */
    public double vapour() {
        return vapour;
    }

    /** Whether no liquid is left. */
    boolean isDry() {
        return dry;
    }

    /** dU/dT at constant mass and air [J/K]. */
    public double capacity() {
        return capacity;
    }

    /** Evaluations the last {@link #solve} took. */
    public int turns() {
        return turns;
    }
}
