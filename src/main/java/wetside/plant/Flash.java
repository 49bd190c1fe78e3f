package wetside.plant;

/**
 * Temperature, pressure and phases of a closed vessel from what it holds: one formula from dry to over-full.
 */
public final class Flash {
    /** A bubble always remains [kg]: it keeps the step from two-phase to full smooth. */
    public static final double LEAST_AIR = 1e-7;

    private final double volume;
    private final double stiffness;

    public Flash(double volume, double stiffness) {
        this.volume = volume;
        this.stiffness = stiffness;
    }

    /**
     * @param mass   water substance M [kg]
     * @param energy internal energy U of water and air [J], zero for liquid water (u' = 0) and air at 0 °C
     * @param air    Ma [kg], taken as at least {@link #LEAST_AIR}
     * @param guess  temperature to start from [K]
     * @return false when no temperature between −1 and 221 °C holds that energy; the nearest end is then left in place
     */
    public boolean solve(double mass, double energy, double air, double guess) {
        throw new UnsupportedOperationException("not yet");
    }

    /** Fills the result for a known temperature and returns the internal energy [J]: how a run begins. */
    public double at(double mass, double air, double temperature) {
        throw new UnsupportedOperationException("not yet");
    }

    public double temperature() {
        return 0;
    }

    /** Absolute [Pa]. */
    public double pressure() {
        return 0;
    }

    /** Partial pressure of the air [Pa]. */
    public double airPressure() {
        return 0;
    }

    /** Share of the volume that is liquid. */
    public double level() {
        return 0;
    }

    /** Mass of vapour [kg]. */
    public double vapour() {
        return 0;
    }

    /** dU/dT at constant mass and air [J/K]. */
    public double capacity() {
        return 0;
    }
}
