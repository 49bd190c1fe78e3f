package wetside.published;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import wetside.physics.Netlist;
import wetside.physics.ResistiveNetwork;

/** Eighteen states of a small appliance's wiring, each also solved by a circuit simulator and by a dense nodal solve. */
class ResistiveNetworkPublishedTest {
    private static final String SOURCE = "ngspice-39, own netlist, gmin 1e-18 (run)";

    @RegisterExtension
    static final Published published = Published.topic("Current in a network");

    @Test
    void ngspice() throws IOException {
        try (InputStream in = ResistiveNetworkPublishedTest.class.getResourceAsStream("ngspice_reference.json")) {
            JsonNode cases = JsonMapper.shared().readTree(in).get("cases");
            for (Map.Entry<String, JsonNode> one : cases.properties()) {
                compare(
                        one.getKey().replace('_', ' '),
                        Netlist.parse(one.getValue().get("netlist").asString()),
                        one.getValue().get("result"));
            }
        }
    }

    private static void compare(String name, Netlist list, JsonNode result) {
        double[] volts = new double[list.nodes.size()];
        double[] drop = new double[list.branches.size()];
        ResistiveNetwork network = list.network();
        network.conduct(list.siemens);
        network.excite(list.emf, volts, drop);
        double worst = 0;
        for (Map.Entry<String, JsonNode> v : result.get("voltages").properties()) {
            worst = Math.max(
                    worst,
                    Math.abs(list.potential(v.getKey(), volts) - v.getValue().asDouble()));
        }
        published.atMost(
                name + ": largest difference of a potential [V]",
                SOURCE,
                1e-10,
                worst,
                "twice its difference to a dense solve");
        current(name + ": line current [A]", result.get("i_line"), list.current("R_RsL", drop), 5e-11 / 0.35);
        current(name + ": earth current [A]", result.get("i_pe"), list.current("R_Rpe", drop), 5e-11 / 0.1);
        power(name + ": element 1 [W]", result.get("p_el1"), both(list, drop, "R_E1a", "R_E1b"));
        power(name + ": element 2 [W]", result.get("p_el2"), both(list, drop, "R_E2a", "R_E2b"));
    }

    private static double both(Netlist list, double[] drop, String a, String b) {
        return list.power(a, drop) + list.power(b, drop);
    }

    private static void current(String quantity, JsonNode expected, double computed, double absolute) {
        published.check(
                quantity,
                SOURCE,
                expected.asDouble(),
                computed,
                new Tolerance(1e-8, absolute),
                "5e-11 V, the source's own noise, across the resistance it is read from");
    }

    private static void power(String quantity, JsonNode expected, double computed) {
        published.check(
                quantity, SOURCE, expected.asDouble(), computed, new Tolerance(1e-8, 1e-12), "the source's own noise");
    }

    @Test
    void rated() {
        String source = "P = V²/R: 1400 W and 1200 W at 230 V; power goes with the square of the voltage (arithmetic)";
        double[][] table = {
            {37.786, 230, 1400}, {44.083, 230, 1200}, {37.786, 207, 1400 * 0.81}, {44.083, 253, 1200 * 1.21}
        };
        for (double[] row : table) {
            published.check(
                    "element of %s Ω at %.0f V [W]".formatted(row[0], row[1]),
                    source,
                    row[2],
                    alone(row[0], row[1]),
                    Tolerance.relative(1e-5),
                    "resistance printed to five digits");
        }
    }

    private static double alone(double ohms, double volts) {
        ResistiveNetwork network = new ResistiveNetwork(2, new int[] {0, 1}, new int[] {1, 0}, 0);
        network.conduct(new double[] {1e9, 1 / ohms});
        double[] drop = new double[2];
        network.excite(new double[] {volts, 0}, new double[2], drop);
        return drop[1] * drop[1] / ohms;
    }
}
