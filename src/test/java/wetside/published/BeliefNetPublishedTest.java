package wetside.published;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wetside.diagnosis.exact.BeliefNet;

class BeliefNetPublishedTest {
    private static final String ASIA =
            "chest clinic of Lauritzen and Spiegelhalter 1988, tables as in the gRain package; queries by enumeration";
    private static final String SPRINKLER = "cloudy, sprinkler, rain, wet grass (textbook example, from memory)";
    private static final String ALARM = "burglary alarm (textbook example, from memory)";
    private static final String NOISY = "noisy-or of fevers (textbook example); three more by enumeration";
    private static final Tolerance EIGHT = Tolerance.absolute(5.1e-9);
    private static final Tolerance SIX = Tolerance.absolute(5e-7);
    private static final String DIGITS = "printed digits";

    @RegisterExtension
    static final Published published = Published.topic("Belief networks");

    private static final BeliefNet CLINIC = new BeliefNet()
            .with("asia", List.of(), 0.01)
            .with("smoke", List.of(), 0.5)
            .with("tub", List.of("asia"), 0.05, 0.01)
            .with("lung", List.of("smoke"), 0.1, 0.01)
            .with("bronc", List.of("smoke"), 0.6, 0.3)
            .with("either", List.of("tub", "lung"), 1, 1, 1, 0)
            .with("xray", List.of("either"), 0.98, 0.05)
            .with("dysp", List.of("bronc", "either"), 0.9, 0.8, 0.7, 0.1);

    private static void clinic(String words, Map<String, Boolean> known, double tub, double lung, double bronc) {
        published.check("tuberculosis, " + words, ASIA, tub, CLINIC.chance("tub", known), EIGHT, DIGITS);
        published.check("cancer, " + words, ASIA, lung, CLINIC.chance("lung", known), EIGHT, DIGITS);
        published.check("bronchitis, " + words, ASIA, bronc, CLINIC.chance("bronc", known), EIGHT, DIGITS);
    }

    @Test
    void asia() {
        clinic("nothing known", Map.of(), 0.0104, 0.055, 0.45);
        published.check("bad breath", ASIA, 0.4359706, CLINIC.chance("dysp", Map.of()), EIGHT, DIGITS);
        published.check("dark x-ray", ASIA, 0.11029004, CLINIC.chance("xray", Map.of()), EIGHT, DIGITS);
        Map<String, Boolean> known = Map.of("asia", true, "dysp", true);
        published.check("asia and bad breath", ASIA, 0.004501375, CLINIC.chance(known), EIGHT, DIGITS);
        clinic("asia, bad breath", known, 0.08775096, 0.09952515, 0.81140207);
        clinic(
                "asia, bad breath, smoker",
                Map.of("asia", true, "dysp", true, "smoke", true),
                0.07275954,
                0.14551908,
                0.86725821);
        clinic("asia, dark x-ray", Map.of("asia", true, "xray", true), 0.33771560, 0.37148715, 0.49110223);
        clinic(
                "asia, dark x-ray, bad breath, no smoker",
                Map.of("asia", true, "xray", true, "dysp", true, "smoke", false),
                0.63232946,
                0.12646589,
                0.45896014);
        clinic("bad breath", Map.of("dysp", true), 0.01884531, 0.10275922, 0.83396734);
        clinic("dark x-ray", Map.of("xray", true), 0.09241088, 0.48871140, 0.50632616);
    }

    @Test
    void sprinkler() {
        BeliefNet net = new BeliefNet()
                .with("cloudy", List.of(), 0.5)
                .with("sprinkler", List.of("cloudy"), 0.1, 0.5)
                .with("rain", List.of("cloudy"), 0.8, 0.2)
                .with("wet", List.of("sprinkler", "rain"), 0.99, 0.9, 0.9, 0);
        Map<String, Boolean> wet = Map.of("wet", true);
        published.check("wet", SPRINKLER, 0.6471, net.chance(wet), SIX, DIGITS);
        published.check("sprinkler, when wet", SPRINKLER, 0.429764, net.chance("sprinkler", wet), SIX, DIGITS);
        published.check("rain, when wet", SPRINKLER, 0.707928, net.chance("rain", wet), SIX, DIGITS);
        published.check(
                "sprinkler, when wet and rain",
                SPRINKLER,
                0.194499,
                net.chance("sprinkler", Map.of("wet", true, "rain", true)),
                SIX,
                DIGITS);
        BeliefNet grass = new BeliefNet()
                .with("rain", List.of(), 0.2)
                .with("sprinkler", List.of("rain"), 0.01, 0.4)
                .with("wet", List.of("sprinkler", "rain"), 0.99, 0.9, 0.8, 0);
        published.check("rain, when the grass is wet", SPRINKLER, 0.357688, grass.chance("rain", wet), SIX, DIGITS);
    }

    @Test
    void alarm() {
        BeliefNet net = new BeliefNet()
                .with("burglary", List.of(), 0.001)
                .with("earthquake", List.of(), 0.002)
                .with("alarm", List.of("burglary", "earthquake"), 0.95, 0.94, 0.29, 0.001)
                .with("john", List.of("alarm"), 0.9, 0.05)
                .with("mary", List.of("alarm"), 0.7, 0.01);
        Map<String, Boolean> both = Map.of("john", true, "mary", true);
        published.check("burglary, both call", ALARM, 0.284172, net.chance("burglary", both), SIX, DIGITS);
        published.check("earthquake, both call", ALARM, 0.176067, net.chance("earthquake", both), SIX, DIGITS);
        published.check("alarm, both call", ALARM, 0.760692, net.chance("alarm", both), SIX, DIGITS);
    }

    @Test
    void noisyOr() {
        BeliefNet fever = new BeliefNet()
                .with("cold", List.of(), 0.5)
                .with("flu", List.of(), 0.5)
                .with("malaria", List.of(), 0.5)
                .withAny("fever", List.of("cold", "flu", "malaria"), 0, 0.4, 0.8, 0.9);
        double[] expected = {0.12, 0.06, 0.02, 0.012};
        boolean[][] had = {{true, true, false}, {true, false, true}, {false, true, true}, {true, true, true}};
        for (int i = 0; i < 4; i++) {
            Map<String, Boolean> known = Map.of("cold", had[i][0], "flu", had[i][1], "malaria", had[i][2]);
            published.check(
                    "no fever, case " + (i + 1), NOISY, expected[i], 1 - fever.chance("fever", known), EIGHT, DIGITS);
        }
        BeliefNet mini = new BeliefNet()
                .with("f1", List.of(), 0.02)
                .with("f2", List.of(), 0.05)
                .with("f3", List.of(), 0.01)
                .withAny("m1", List.of("f1", "f2"), 0.02, 0.8, 0.3)
                .withAny("m2", List.of("f2", "f3"), 0.02, 0.6, 0.4)
                .withAny("m3", List.of("f1", "f3"), 0.02, 0.2, 0.9);
        mini(mini, "m1", Map.of("m1", true), 0.32184394, 0.32403759, 0.01);
        mini(mini, "m1 m2", Map.of("m1", true, "m2", true), 0.08318173, 0.92433491, 0.02462987);
        mini(mini, "m1 m2, not m3", Map.of("m1", true, "m2", true, "m3", false), 0.06429279, 0.93955212, 0.00242445);
        published.check("m1", NOISY, 0.0501448, mini.chance(Map.of("m1", true)), EIGHT, DIGITS);
        published.check("m1 and m2", NOISY, 0.0107155408, mini.chance(Map.of("m1", true, "m2", true)), EIGHT, DIGITS);
    }

    private static void mini(BeliefNet net, String words, Map<String, Boolean> known, double... expected) {
        for (int i = 0; i < 3; i++) {
            String name = "f" + (i + 1);
            published.check(name + " given " + words, NOISY, expected[i], net.chance(name, known), EIGHT, DIGITS);
        }
    }
}
