package wetside.published;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.physics.Atmosphere;

class AtmospherePublishedTest {
    @RegisterExtension
    static final Published published = Published.topic("Air pressure and altitude");

    @Test
    void pressureAtHeight() {
        String source = "US Standard Atmosphere 1976, table by geopotential height (from memory)";
        double[][] table = {{0, 1013.25}, {1000, 898.75}, {2000, 794.95}, {3000, 701.09}};
        for (double[] row : table) {
            published.check(
                    "air pressure at %.0f m [hPa]".formatted(row[0]),
                    source,
                    row[1],
                    Atmosphere.pressure(row[0]) / 100,
                    Tolerance.digit(0.01),
                    "last printed digit");
        }
    }
}
