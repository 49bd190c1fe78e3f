package wetside.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wetside.kind.Kinds;

class BodyTest {
    private static final MachineFile TWIN = MachineFile.bundled("twin-boiler-lever", Kinds.declarations());

    @Test
    void everyKindHasALine() {
        TreeSet<String> kinds = new TreeSet<>();
        Kinds.declarations().forEach(d -> kinds.add(d.name()));
        assertThat(new TreeSet<>(Bodies.kinds()))
                .as("src/main/resources/wetside/machine/bodies.yaml says how large parts of each kind usually are")
                .containsAll(kinds);
    }

    @Test
    void aBoilerGrowsWithItsVolumeAndTheFileOverrules() {
        Component small = TWIN.newest().component("brew-boiler");
        Component large = TWIN.newest().component("steam-boiler");
        Body a = body(small);
        Body b = body(large);
        assertThat(b.volume() / a.volume()).as("2 l to 0.75 l").isCloseTo(2 / 0.75, within(1e-6));
        Component standing = sized(large, List.of(0.12, 0.12, 0.20));
        assertThat(b.axis()).as("lies from left to right").isZero();
        assertThat(body(standing).axis()).as("stands").isEqualTo(2);
        assertThat(body(standing).low().get(2)).isCloseTo(0.23 - 0.10, within(1e-9));
    }

    @Test
    void whatIsSeenThroughAWallIsPushedInwards() {
        Body gauge = body(TWIN.newest().component("pump-gauge"));
        assertThat(gauge.high().get(1)).isCloseTo(TWIN.size().orElseThrow().depth(), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"top", "top-front", "upper-top"})
    void aPanelSaysItsSideInItsId(String id) {
        assertThat(Side.of(id.split("-"))).contains(Side.TOP);
        assertThat(Side.of("lid")).isEmpty();
    }

    private static Component sized(Component c, List<Double> size) {
        Component.Place p = c.place();
        return new Component(
                c.id(),
                c.kind(),
                c.values(),
                java.util.stream.IntStream.range(0, c.values().length)
                        .mapToObj(c::spread)
                        .toArray(Spread[]::new),
                new Component.Place(p.name(), p.xyz(), size, p.behind(), p.mark(), p.part(), p.roles(), p.station()));
    }

    private static Body body(Component c) {
        Optional<MachineFile.Case> around = TWIN.size();
        return Body.of(c, around).orElseThrow();
    }
}
