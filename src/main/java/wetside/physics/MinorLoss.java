package wetside.physics;

/** Losses of fittings, Δp = K ρ V²/2, where a bend, tee or change of bore disturbs the flow. */
public final class MinorLoss {
    /** Sharp-edged entrance, K [–]; Crane TP-410. */
    public static final double SHARP_ENTRANCE = 0.5;

    /** Exit into a large space, K [–]: all velocity head is lost. */
    public static final double EXIT = 1;

    private MinorLoss() {}

    /**
     * Loss factor of a sudden widening, on the velocity in the narrow bore.
     *
     * <pre>K = (1 − d²/D²)²</pre>
     *
     * @param narrow d [m], above 0
     * @param wide D [m], at least d
     * @return K [–]
     *     <p>Validity: turbulent flow; exact for uniform velocities (momentum balance).
     *     <p>Source: Borda–Carnot; White, Fluid Mechanics, §6.9.
     *     <p>Checked: OrificePublishedTest.
     */
    public static double expansion(double narrow, double wide) {
        double open = 1 - narrow * narrow / (wide * wide);
        return open * open;
    }

    /**
     * Loss factor of a sudden narrowing, on the velocity in the narrow bore.
     *
     * <pre>K = 0.42 (1 − d²/D²)</pre>
     *
     * @param narrow d [m], above 0
     * @param wide D [m], at least d
     * @return K [–]
     *     <p>Validity: turbulent flow, d/D up to 0.76; above that a slight overestimate.
     *     <p>Source: White, Fluid Mechanics, §6.9.
     *     <p>Checked: OrificePublishedTest.
     */
    public static double contraction(double narrow, double wide) {
        return 0.42 * (1 - narrow * narrow / (wide * wide));
    }

    /**
     * Pressure lost in a fitting.
     *
     * <pre>Δp = K W |W| / (2 ρ A²),   A = π D²/4</pre>
     *
     * @param k loss factor K [–], not negative
     * @param massFlow W [kg/s], signed
     * @param bore D [m], the bore K refers to, above 0
     * @param density ρ [kg/m³], above 0
     * @return Δp [Pa], with the sign of the flow
     *     <p>Validity: turbulent flow; below Re 500 the true loss is larger.
     *     <p>Source: definition of K.
     *     <p>Checked: OrificePublishedTest.
     */
    public static double pressureDrop(double k, double massFlow, double bore, double density) {
        double area = Math.PI / 4 * bore * bore;
        return k * massFlow * Math.abs(massFlow) / (2 * density * area * area);
    }
}
