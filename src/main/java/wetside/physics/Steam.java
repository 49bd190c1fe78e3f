package wetside.physics;

/** Steam: region 2 of the industrial formulation IAPWS-IF97. */
public final class Steam {
    private static final double P_STAR = 1e6;
    private static final double T_STAR = 540;

    /** Exponent J and factor n of the ideal-gas part, IAPWS R7-97(2012) table 10. */
    private static final double[][] IDEAL = {
        {0, -0.96927686500217e1},
        {1, 0.10086655968018e2},
        {-5, -0.56087911283020e-2},
        {-4, 0.71452738081455e-1},
        {-3, -0.40710498223928},
        {-2, 0.14240819171444e1},
        {-1, -0.43839511319450e1},
        {2, -0.28408632460772},
        {3, 0.21268463753307e-1}
    };

    /** Exponents I, J and factor n of the residual part, IAPWS R7-97(2012) table 11. */
    private static final double[][] RESIDUAL = {
        {1, 0, -1.7731742473213e-3},
        {1, 1, -1.7834862292358e-2},
        {1, 2, -4.5996013696365e-2},
        {1, 3, -5.7581259083432e-2},
        {1, 6, -5.0325278727930e-2},
        {2, 1, -3.3032641670203e-5},
        {2, 2, -1.8948987516315e-4},
        {2, 4, -3.9392777243355e-3},
        {2, 7, -4.3797295650573e-2},
        {2, 36, -2.6674547914087e-5},
        {3, 0, 2.0481737692309e-8},
        {3, 1, 4.3870667284435e-7},
        {3, 3, -3.2277677238570e-5},
        {3, 6, -1.5033924542148e-3},
        {3, 35, -4.0668253562649e-2},
        {4, 1, -7.8847309559367e-10},
        {4, 2, 1.2790717852285e-8},
        {4, 3, 4.8225372718507e-7},
        {5, 7, 2.2922076337661e-6},
        {6, 3, -1.6714766451061e-11},
        {6, 16, -2.1171472321355e-3},
        {6, 35, -2.3895741934104e1},
        {7, 0, -5.9059564324270e-18},
        {7, 11, -1.2621808899101e-6},
        {7, 25, -3.8946842435739e-2},
        {8, 8, 1.1256211360459e-11},
        {8, 36, -8.2311340897998},
        {9, 13, 1.9809712802088e-8},
        {10, 4, 1.0406965210174e-19},
        {10, 10, -1.0234747095929e-13},
        {10, 14, -1.0018179379511e-9},
        {16, 29, -8.0882908646985e-11},
        {16, 50, 1.0693031879409e-1},
        {18, 57, -3.3662250574171e-1},
        {20, 20, 8.9185845355421e-25},
        {20, 35, 3.0629316876232e-13},
        {20, 48, -4.2002467698208e-6},
        {21, 21, -5.9056029685639e-26},
        {22, 53, 3.7826947613457e-6},
        {23, 39, -1.2768608934681e-15},
        {24, 26, 7.3087610595061e-29},
        {24, 40, 5.5414715350778e-17},
        {24, 58, -9.4369707241210e-7}
    };

    private Steam() {}

    /**
     * State of steam.
     *
     * <pre>g/(R T) = ln π + Σ n τ^J + Σ n π^I (τ − 0.5)^J,   π = p / 1 MPa, τ = 540 K / T</pre>
     *
     * @param pressure absolute p [Pa], up to saturation below 350 °C (a little above it the metastable steam follows)
     * @param temperature T [K], 273.15 to 1073.15
     * @return volume, energies, heat capacity, sound speed and coefficients
     * @throws IllegalArgumentException outside that range
     *     <p>Validity: v within 0.03 %, h within 1 kJ/kg below 200 °C.
     *     <p>Source: IAPWS R7-97(2012), equations 15 to 17.
     *     <p>Checked: WaterPublishedTest.
     */
    public static WaterState state(double pressure, double temperature) {
        WaterState.require(
                temperature >= 273.149 && temperature <= 1073.151 && pressure > 0 && pressure <= 1.0001e8,
                "the steam law",
                pressure,
                temperature);
        double pi = pressure / P_STAR;
        double tau = T_STAR / temperature;
        double b = tau - 0.5;
        double g = Math.log(pi);
        double gp = 1 / pi;
        double gpp = -1 / (pi * pi);
        double gt = 0;
        double gtt = 0;
        double gpt = 0;
        for (double[] term : IDEAL) {
            double j = term[0];
            double part = term[1] * WaterState.power(tau, (int) j);
            g += part;
            gt += part * j / tau;
            gtt += part * j * (j - 1) / (tau * tau);
        }
        for (double[] term : RESIDUAL) {
            double i = term[0];
            double j = term[1];
            double part = term[2] * WaterState.power(pi, (int) i) * WaterState.power(b, (int) j);
            g += part;
            gp += part * i / pi;
            gpp += part * i * (i - 1) / (pi * pi);
            gt += part * j / b;
            gtt += part * j * (j - 1) / (b * b);
            gpt += part * i * j / (pi * b);
        }
        return WaterState.of(pressure, temperature, pi, tau, g, gp, gpp, gt, gtt, gpt);
    }

    /**
     * Temperature of steam from its enthalpy.
     *
     * <pre>T: h(p, T) = h</pre>
     *
     * Solved by Newton on the forward law, so that it returns exactly.
     *
     * @param pressure absolute p [Pa], up to 1e8
     * @param enthalpy h [J/kg], 2.5e6 to 4.1e6
     * @return temperature [K]
     * @throws IllegalArgumentException if no steam has this enthalpy
     *     <p>Validity: as {@link #state}.
     *     <p>Source: IAPWS R7-97(2012), equations 15 to 17.
     *     <p>Checked: WaterPublishedTest, against the backward equations' table within their stated 25 mK.
     */
    public static double temperature(double pressure, double enthalpy) {
        double low = 273.15;
        double high = 1073.15;
        double temperature = 700;
        for (int turn = 0; turn < 100; turn++) {
            WaterState state = state(pressure, temperature);
            double excess = enthalpy - state.enthalpy();
            low = excess > 0 ? temperature : low;
            high = excess < 0 ? temperature : high;
            double next = temperature + excess / state.heatCapacity();
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(next - temperature) < 1e-9) {
                return next;
            }
            temperature = next;
        }
        throw new IllegalArgumentException("no steam has " + enthalpy + " J/kg at " + pressure + " Pa");
    }
}
