package wetside.plant;

import java.util.Arrays;
import wetside.physics.ResistiveNetwork;

/**
 * What instrument inputs see in one discrete state, all sources out, as functions of the varying resistances.
 *
 * <p>Where one resistance R alone matters, as with a sensor on its input, this is the fraction (s + ρR)/(1 + yR), with s
 * what is seen with R shorted and y the conductance across R's place without it. Where several matter, which takes a
 * leak between sensors, they are loads on ports.
 */
final class SeenResistances {
    /** Coupling of two ports, 0..1, below which one does not notice the other: that of 10 kΩ through 1 GΩ is 1e-10. */
    private static final double COUPLING = 1e-9;
    /** Conductance that is rounding error beside the nominal one [S]. */
    private static final double NOISE = 1e-19;

    private final Port[] ports;

    SeenResistances(Wiring wiring, Probes probes, double[] powered) {
        double[] siemens = powered.clone();
        wiring.withoutSources(siemens);
        ResistiveNetwork network = wiring.network;
        network.conduct(siemens);
        double[][] lift = new double[wiring.varying.length][network.nodes()];
        for (int i = 0; i < lift.length; i++) {
            int e = wiring.varying[i];
            one(network, wiring.from[e], wiring.to[e], lift[i]);
        }
        ports = new Port[probes.seenSlots.length];
        for (int s = 0; s < ports.length; s++) {
            ports[s] = port(wiring, probes.seenFrom[s], probes.seenTo[s], lift);
        }
    }

    /** Potentials for one ampere through two nodes; returns what of it found no way back. */
    private static double one(ResistiveNetwork network, int in, int out, double[] potentials) {
        double[] amps = new double[network.nodes()];
        amps[in] += 1;
        amps[out] -= 1;
        return network.inject(amps, potentials);
    }

    private static Port port(Wiring wiring, int a, int b, double[][] lift) {
        double[] own = new double[wiring.network.nodes()];
        if (a == b) {
            return new Fixed(0);
        }
        if (one(wiring.network, a, b, own) > 0.5) {
            return new Fixed(Double.POSITIVE_INFINITY);
        }
        double base = own[a] - own[b];
        int[] coupled = new int[lift.length];
        int n = 0;
        for (int i = 0; i < lift.length; i++) {
            double across = own[wiring.from[wiring.varying[i]]] - own[wiring.to[wiring.varying[i]]];
            if (across * across > COUPLING * base * self(wiring, i, lift[i])) {
                coupled[n++] = i;
            }
        }
        return switch (n) {
            case 0 -> new Fixed(base);
            case 1 -> fraction(wiring, coupled[0], base, own, lift[coupled[0]]);
            default -> loaded(wiring, Arrays.copyOf(coupled, n), base, own, lift);
        };
    }

    private static double self(Wiring wiring, int i, double[] lift) {
        int e = wiring.varying[i];
        return lift[wiring.from[e]] - lift[wiring.to[e]];
    }

    private static Port fraction(Wiring wiring, int i, double base, double[] own, double[] lift) {
        double g = Wiring.NOMINAL;
        double z = self(wiring, i, lift);
        double transfer = self(wiring, i, own);
        double left = Math.max(0, 1 - g * z);
        double y = left / z;
        double rho = (base * left + transfer * transfer * g) / z;
        double shorted = Math.max(0, base - transfer * transfer / z);
        return new Fraction(wiring, wiring.varying[i], shorted, rho, y < NOISE ? 0 : y);
    }

    private static Port loaded(Wiring wiring, int[] coupled, double base, double[] own, double[][] lift) {
        int n = coupled.length;
        int[] elements = new int[n];
        double[] transfer = new double[n];
        double[][] z = new double[n][n];
        for (int i = 0; i < n; i++) {
            elements[i] = wiring.varying[coupled[i]];
            transfer[i] = self(wiring, coupled[i], own);
            for (int j = 0; j < n; j++) {
                z[i][j] = self(wiring, coupled[i], lift[coupled[j]]);
            }
        }
        return new Loaded(wiring, elements, base, transfer, new Loads(z), new double[n], new double[n]);
    }

    /** Resistance at one of the probes [Ω]. */
    double at(int probe, double[] x) {
        return ports[probe].ohms(x);
    }

    private sealed interface Port permits Fixed, Fraction, Loaded {
        double ohms(double[] x);
    }

    private record Fixed(double value) implements Port {
        @Override
        public double ohms(double[] x) {
            return value;
        }
    }

    private record Fraction(Wiring wiring, int element, double shorted, double rho, double y) implements Port {
        @Override
        public double ohms(double[] x) {
            double g = wiring.varyingSiemens(element, x);
            return (shorted * g + rho) / (g + y);
        }
    }

    private record Loaded(
            Wiring wiring, int[] elements, double base, double[] transfer, Loads loads, double[] more, double[] extra)
            implements Port {
        @Override
        public double ohms(double[] x) {
            for (int i = 0; i < elements.length; i++) {
                more[i] = wiring.varyingSiemens(elements[i], x) - Wiring.NOMINAL;
            }
            loads.solve(more, transfer, extra);
            double ohms = base;
            for (int i = 0; i < elements.length; i++) {
                ohms -= transfer[i] * extra[i];
            }
            return Math.max(0, ohms);
        }
    }
}
