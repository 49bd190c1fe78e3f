package wetside.kind;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.machine.Component;

/** A wrong supply begins where a right one ends: ± 10 % of what it is meant to be (EN 50160). */
class SocketTest {
    private static final double ALLOWED = 0.10;

    private static Component socket(double volts) {
        return Workbench.usual("socket", new Socket()).with(Socket.VOLTAGE, volts);
    }

    private static Fault fault(String name) {
        return new Socket()
                .faults().stream()
                        .filter(f -> f.name().equals(name))
                        .findFirst()
                        .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(doubles = {209, 221, 230, 239, 251})
    void whereverWithinItsToleranceAHouseLies(double volts) {
        for (double severity = 0; severity <= 1; severity += 0.25) {
            double low = fault("low voltage")
                    .on(socket(volts), socket(230), severity)
                    .get(Socket.VOLTAGE);
            double high = fault("high voltage")
                    .on(socket(volts), socket(230), severity)
                    .get(Socket.VOLTAGE);
            assertThat(low).isLessThanOrEqualTo(230 * (1 - ALLOWED));
            assertThat(high).isGreaterThanOrEqualTo(230 * (1 + ALLOWED) - 1e-9);
        }
    }
}
