package wetside.physics;

/** Heat lost to the room by warm air rising and by radiation. */
public final class Convection {
    /** Stefan–Boltzmann constant [W/(m² K⁴)], CODATA 2018. */
    public static final double STEFAN_BOLTZMANN = 5.670374e-8;

    private static final double G = 9.80665;

    private Convection() {}

    /**
     * Nusselt number of a horizontal cylinder in still air.
     *
     * <pre>Nu = {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}²</pre>
     *
     * @param rayleigh Ra on the diameter [–], 0 to 1e12
     * @param prandtl Pr [–]
     * @return Nu [–]
     *     <p>Validity: within about 10 % of measurements.
     *     <p>Source: Churchill and Chu, Int. J. Heat Mass Transfer 18, 1975, p. 1049.
     *     <p>Checked: HeatPublishedTest.
     */
    public static double horizontalCylinder(double rayleigh, double prandtl) {
        double bracket = Math.pow(1 + Math.pow(0.559 / prandtl, 9 / 16.0), 8 / 27.0);
        double root = 0.60 + 0.387 * Math.pow(rayleigh, 1 / 6.0) / bracket;
        return root * root;
    }

    /**
     * Heat transfer coefficient of a horizontal cylinder in still air.
     *
     * <pre>h = Nu λ/D,   Ra = g |Ts − T∞| D³ / (Tf ν α),   air at Tf = (Ts + T∞)/2</pre>
     *
     * @param diameter D [m], above 0
     * @param surface Ts [K]
     * @param room T∞ [K]
     * @param pressure of the air [Pa]
     * @return h [W/(m² K)]
     *     <p>Validity: draughts double it easily.
     *     <p>Source: as {@link #horizontalCylinder(double, double)}.
     *     <p>Checked: HeatPublishedTest.
     */
    public static double horizontalCylinder(double diameter, double surface, double room, double pressure) {
        double film = (surface + room) / 2;
        double lambda = Air.conductivity(film);
        double nu = Air.viscosity(film) * Air.GAS_CONSTANT * film / pressure;
        double alpha = lambda / Air.HEAT_CAPACITY * Air.GAS_CONSTANT * film / pressure;
        double ra = G * Math.abs(surface - room) * diameter * diameter * diameter / (film * nu * alpha);
        return horizontalCylinder(ra, nu / alpha) * lambda / diameter;
    }

    /**
     * Heat radiated by a body to a room that surrounds it.
     *
     * <pre>P = ε σ A (Ts⁴ − T∞⁴)</pre>
     *
     * @param emissivity ε [–], 0.04 (polished metal) to 0.95 (paint)
     * @param area A [m²]
     * @param surface Ts [K]
     * @param room T∞ [K]
     * @return P [W], positive outwards
     *     <p>Validity: room much larger than the body.
     *     <p>Source: Stefan–Boltzmann law.
     *     <p>Checked: HeatPublishedTest.
     */
    public static double radiation(double emissivity, double area, double surface, double room) {
        double s2 = surface * surface;
        double r2 = room * room;
        return emissivity * STEFAN_BOLTZMANN * area * (s2 - r2) * (s2 + r2);
    }
}
