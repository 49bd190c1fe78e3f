package wetside.physics;

/**
 * Settings of a temperature controller from what the process does after a step: gain k, dead time θ, time constant τ.
 *
 * @param gain Kc [output per K]
 * @param integralTime Ti [s], infinite without integral action
 * @param derivativeTime Td [s], 0 without derivative action
 */
public record Tuning(double gain, double integralTime, double derivativeTime) {
    /**
     * The point at which a loop of proportional action alone swings for ever.
     *
     * @param gain Ku [output per K]
     * @param period Pu [s]
     */
    public record Limit(double gain, double period) {}

    /**
     * Step response of a first-order process with dead time.
     *
     * <pre>y = k (1 − e^(−(t − θ)/τ)),   0 before θ</pre>
     *
     * @param k gain [K per output]
     * @param tau τ [s], above 0
     * @param theta θ [s], not negative
     * @param time t since the step [s]
     * @return y [K]
     *     <p>Validity: definition of the process.
     *     <p>Source: any control text.
     *     <p>Checked: ControlPublishedTest.
     */
    public static double stepResponse(double k, double tau, double theta, double time) {
        return time <= theta ? 0 : -k * Math.expm1(-(time - theta) / tau);
    }

    /**
     * PI settings by the SIMC rule.
     *
     * <pre>Kc = τ / (k (τc + θ)),   Ti = min[τ, 4 (τc + θ)]</pre>
     *
     * @param k process gain [K per output]
     * @param tau τ [s]
     * @param theta θ [s]
     * @param closedLoop τc wanted [s]; θ for a tight loop
     * @return PI settings
     *     <p>Validity: first order with dead time.
     *     <p>Source: S. Skogestad, J. Process Control 13, 2003, p. 291.
     *     <p>Checked: ControlPublishedTest.
     */
    public static Tuning simc(double k, double tau, double theta, double closedLoop) {
        return new Tuning(tau / (k * (closedLoop + theta)), Math.min(tau, 4 * (closedLoop + theta)), 0);
    }

    /**
     * Gain and period of the stability limit.
     *
     * <pre>ω θ + atan(ω τ) = π,   Ku = √(1 + ω² τ²)/k,   Pu = 2π/ω</pre>
     *
     * @param k process gain [K per output]
     * @param tau τ [s], above 0
     * @param theta θ [s], above 0
     * @return Ku and Pu
     *     <p>Validity: first order with dead time.
     *     <p>Source: phase condition of the loop.
     *     <p>Checked: ControlPublishedTest.
     */
    public static Limit limit(double k, double tau, double theta) {
        double omega = (Math.PI - Math.atan(Math.PI / 2 * tau / theta)) / theta;
        for (int turn = 0; turn < 50; turn++) {
            double residual = omega * theta + Math.atan(omega * tau) - Math.PI;
            double step = residual / (theta + tau / (1 + omega * omega * tau * tau));
            omega -= step;
            if (Math.abs(step) < 1e-14 * omega) {
                break;
            }
        }
        return new Limit(Math.hypot(1, omega * tau) / k, 2 * Math.PI / omega);
    }

    /**
     * PI settings from the stability limit.
     *
     * <pre>Kc = 0.45 Ku,   Ti = Pu/1.2</pre>
     *
     * @param limit Ku, Pu
     * @return PI settings
     *     <p>Validity: quarter-amplitude decay, lively.
     *     <p>Source: Ziegler and Nichols, Trans. ASME 64, 1942, p. 759 (from memory).
     *     <p>Checked: ControlPublishedTest.
     */
    public static Tuning zieglerNicholsPi(Limit limit) {
        return new Tuning(0.45 * limit.gain(), limit.period() / 1.2, 0);
    }

    /**
     * PID settings from the stability limit.
     *
     * <pre>Kc = 0.6 Ku,   Ti = Pu/2,   Td = Pu/8</pre>
     *
     * @param limit Ku, Pu
     * @return PID settings
     *     <p>Validity: quarter-amplitude decay, lively.
     *     <p>Source: Ziegler and Nichols, Trans. ASME 64, 1942, p. 759 (from memory).
     *     <p>Checked: ControlPublishedTest.
     */
    public static Tuning zieglerNicholsPid(Limit limit) {
        return new Tuning(0.6 * limit.gain(), limit.period() / 2, limit.period() / 8);
    }

    /**
     * PI settings from the step response.
     *
     * <pre>Kc = 0.9 τ/(k θ),   Ti = θ/0.3</pre>
     *
     * @param k process gain [K per output]
     * @param tau τ [s]
     * @param theta θ [s], above 0
     * @return PI settings
     *     <p>Validity: θ/τ from 0.1 to 1.
     *     <p>Source: Ziegler and Nichols, Trans. ASME 64, 1942, p. 759 (from memory).
     *     <p>Checked: ControlPublishedTest.
     */
    public static Tuning zieglerNicholsStepPi(double k, double tau, double theta) {
        return new Tuning(0.9 * tau / (k * theta), theta / 0.3, 0);
    }

    /**
     * PID settings from the step response.
     *
     * <pre>Kc = 1.2 τ/(k θ),   Ti = 2 θ,   Td = θ/2</pre>
     *
     * @param k process gain [K per output]
     * @param tau τ [s]
     * @param theta θ [s], above 0
     * @return PID settings
     *     <p>Validity: θ/τ from 0.1 to 1.
     *     <p>Source: Ziegler and Nichols, Trans. ASME 64, 1942, p. 759 (from memory).
     *     <p>Checked: ControlPublishedTest.
     */
    public static Tuning zieglerNicholsStepPid(double k, double tau, double theta) {
        return new Tuning(1.2 * tau / (k * theta), 2 * theta, theta / 2);
    }

    /**
     * PI settings for a larger dead time.
     *
     * <pre>Kc = τ/(kθ) (0.9 + θ/(12τ)),   Ti = θ (30 + 3θ/τ)/(9 + 20θ/τ)</pre>
     *
     * @param k process gain [K per output]
     * @param tau τ [s]
     * @param theta θ [s], above 0
     * @return PI settings
     *     <p>Validity: θ/τ from 0.1 to 1.
     *     <p>Source: Cohen and Coon, Trans. ASME 75, 1953, p. 827 (from memory).
     *     <p>Checked: ControlPublishedTest.
     */
    public static Tuning cohenCoonPi(double k, double tau, double theta) {
        double r = theta / tau;
        return new Tuning((0.9 + r / 12) / (k * r), theta * (30 + 3 * r) / (9 + 20 * r), 0);
    }

    /**
     * PID settings for a larger dead time.
     *
     * <pre>Kc = τ/(kθ) (4/3 + θ/(4τ)),   Ti = θ (32 + 6θ/τ)/(13 + 8θ/τ),   Td = 4θ/(11 + 2θ/τ)</pre>
     *
     * @param k process gain [K per output]
     * @param tau τ [s]
     * @param theta θ [s], above 0
     * @return PID settings
     *     <p>Validity: θ/τ from 0.1 to 1.
     *     <p>Source: Cohen and Coon, Trans. ASME 75, 1953, p. 827 (from memory).
     *     <p>Checked: ControlPublishedTest.
     */
    public static Tuning cohenCoonPid(double k, double tau, double theta) {
        double r = theta / tau;
        return new Tuning((4 / 3.0 + r / 4) / (k * r), theta * (32 + 6 * r) / (13 + 8 * r), 4 * theta / (11 + 2 * r));
    }
}
