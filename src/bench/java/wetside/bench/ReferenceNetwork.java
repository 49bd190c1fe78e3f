package wetside.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import wetside.physics.Netlist;
import wetside.physics.ResistiveNetwork;

/** The network of {@code src/bench/compare/resistive-network.cir}. */
final class ReferenceNetwork {
    private final Netlist list = Netlist.parse(text());
    private final ResistiveNetwork network = list.network();
    private final int relay = list.branches.get("R_Rssr1");
    private final int source = list.branches.get("R_RsL");
    private final double[] volts = new double[network.nodes()];
    private final double[] drop = new double[network.branches()];

    ReferenceNetwork() {
        network.conduct(list.siemens);
    }

    private static String text() {
        try {
            return Files.readString(Path.of("src/bench/compare/resistive-network.cir"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Potential behind the relay [V] for its resistance [Ω]. */
    double solve(double relayOhms) {
        list.siemens[relay] = 1 / relayOhms;
        network.conduct(list.siemens);
        network.excite(list.emf, volts, drop);
        return list.potential("a1", volts);
    }

    /** The same for a source voltage [V], relay as it was. */
    double solveAgain(double mains) {
        list.emf[source] = mains;
        network.excite(list.emf, volts, drop);
        return list.potential("a1", volts);
    }
}
