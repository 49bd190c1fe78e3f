package wetside.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import wetside.plant.PipeNetwork;

/** Eight states of a small network with pump, checks, relief and regulator, each solved by a water-network program. */
class PipeNetworkPublishedTest {
    private static final String SOURCE = "EPANET 2.3.5 by epanet-js 0.9.0, own network (run)";
    private static final String IDEAL = "independent Newton solve in which shut links carry nothing (run)";

    @RegisterExtension
    static final Published published = Published.topic("Flow in a network");

    @Test
    void epanet() throws IOException {
        try (InputStream in = getClass().getResourceAsStream("epanet-small-network.json")) {
            JsonNode cases = JsonMapper.shared().readTree(in).get("cases");
            assertThat(cases.size()).isEqualTo(8);
            for (Map.Entry<String, JsonNode> one : cases.properties()) {
                compare(one.getKey().replace('_', ' '), one.getValue());
            }
        }
    }

    private static void compare(String name, JsonNode one) {
        PipeNetwork network = new PipeNetwork(one.get("inp").asString());
        network.settle();
        published.atMost(
                name + ": largest difference of a flow [l/min]",
                SOURCE,
                0.011,
                flows(network, one.get("flows")),
                "its shut links leak up to 0.007");
        published.atMost(
                name + ": largest difference of a head [m]",
                SOURCE,
                0.06,
                heads(network, one.get("heads")),
                "the same leaks; our open regulator keeps back 0.05");
        if (one.has("ideal")) {
            JsonNode ideal = one.get("ideal");
            published.atMost(
                    name + ": largest difference of a flow to the ideal [l/min]",
                    IDEAL,
                    0.003,
                    flows(network, ideal.get("flows")),
                    "a relief of finite stiffness, a check that takes 5 Pa");
            published.atMost(
                    name + ": largest difference of a head to the ideal [m]",
                    IDEAL,
                    0.06,
                    heads(network, ideal.get("heads")),
                    "our open regulator keeps back 0.05");
        }
    }

    private static double flows(PipeNetwork network, JsonNode flows) {
        return flows.properties().stream()
                .mapToDouble(
                        f -> Math.abs(network.flow(f.getKey()) - f.getValue().asDouble()))
                .max()
                .orElseThrow();
    }

    private static double heads(PipeNetwork network, JsonNode heads) {
        return heads.properties().stream()
                .filter(h -> network.throughput(h.getKey()) > 0.01)
                .mapToDouble(
                        h -> Math.abs(network.head(h.getKey()) - h.getValue().asDouble()))
                .max()
                .orElse(0);
    }
}
