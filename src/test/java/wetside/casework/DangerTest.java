package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Safety rules of the trade; common practice, no source. */
class DangerTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "It smells burnt",
                "there was a bang and then nothing",
                "it trips the breaker every morning",
                "Smoke came out at the back",
                "steam hisses out of the back",
                "I burned my hand on it",
                "the coffee tastes burnt and it smells of rubber"
            })
    void switchesOffAndUnplugsWithDryHands(String complaint) {
        assertThat(Danger.said(complaint)).get().asString().contains("switch it off", "hands are dry", "fire service");
    }

    @ParameterizedTest
    @ValueSource(strings = {"I got a shock from the cup rail", "the case tingles when I touch it"})
    void touchesNothingOfAMachineThatMayBeLive(String complaint) {
        assertThat(Danger.said(complaint)).get().asString().contains("not even its switch", "doctor");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "The coffee tastes burnt and bitter",
                "it hisses while it warms up",
                "weak, sour coffee, takes for ever",
                "no steam, the lamp is dark"
            })
    void ordinaryTroubleStopsNothing(String complaint) {
        assertThat(Danger.said(complaint)).isEmpty();
    }
}
