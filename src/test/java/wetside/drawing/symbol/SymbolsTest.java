package wetside.drawing.symbol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wetside.kind.Kind;
import wetside.kind.Kinds;
import wetside.machine.Medium;
import wetside.machine.Port;

class SymbolsTest {
    /** Everything but the weather. */
    static Stream<Kind> kinds() {
        return Kinds.all().stream().filter(k -> !k.declaration().ports().isEmpty());
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyKindHasOneWithAPlaceForEachPort(Kind kind) {
        String name = kind.declaration().name();
        assertThat(Symbols.of(name).isPresent() || Symbols.wired(name).isPresent())
                .as("a symbol in wetside/drawing/symbol/%s.svg", name)
                .isTrue();
        ports(kind, Medium.FLUID)
                .forEach(p -> assertThat(Symbols.of(name).orElseThrow().port(p.name()))
                        .as("%s, port %s", name, p.name())
                        .isPresent());
        Symbol wired = Symbols.wired(name).orElseThrow();
        if (wired.form() != Symbol.Form.TERMINALS && wired.form() != Symbol.Form.LINE) {
            ports(kind, Medium.CURRENT)
                    .filter(p -> !p.optional())
                    .forEach(p -> assertThat(wired.port(p.name()))
                            .as("%s, terminal %s", name, p.name())
                            .isPresent());
        }
    }

    private static Stream<Port> ports(Kind kind, Medium medium) {
        return kind.declaration().ports().stream().filter(p -> p.medium() == medium);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void portsLieOnTheEdgeEachAtAPlaceOfItsOwn(Kind kind) {
        String name = kind.declaration().name();
        for (Symbol s : List.of(
                Symbols.wired(name).orElseThrow(),
                Symbols.of(name).orElse(Symbols.wired(name).orElseThrow()))) {
            assertThat(s.ports().values()).as(name).doesNotHaveDuplicates();
            s.ports()
                    .forEach((port, at) -> assertThat(
                                    at.x() <= 0 || at.x() >= s.width() || at.y() <= 0 || at.y() >= s.height())
                            .as("%s, port %s", name, port)
                            .isTrue());
        }
    }
}
