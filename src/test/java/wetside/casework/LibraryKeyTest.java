package wetside.casework;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.procedure.Edited;
import wetside.procedure.Procedures;

/** A stored library is thrown away when a reading might change, and not when a sentence does. */
class LibraryKeyTest {
    private static final Installed MACHINE = Installed.of(
            MachineFile.bundled("single-boiler", Kinds.declarations()).newest(), Installation.UNKNOWN);

    private static String hash(Procedures procedures) {
        return LibraryKey.of(MACHINE.casework(procedures), "code").hash();
    }

    private static final String AS_SHIPPED = hash(Procedures.bundled());

    @Test
    void wordsMayChange() {
        assertThat(hash(Edited.procedures("Near boiling: keep your hands away", "Hot: keep your hands away")))
                .isEqualTo(AS_SHIPPED);
        assertThat(hash(Edited.procedures("switched on from cold, left alone for 40 minutes", "warmed up")))
                .isEqualTo(AS_SHIPPED);
    }

    @Test
    void whatIsDoneMayNot() {
        assertThat(hash(Edited.procedures("wait: 39 min", "wait: 38 min"))).isNotEqualTo(AS_SHIPPED);
    }

    @Test
    void howExactlyItIsReadMayNot() {
        assertThat(hash(Edited.procedures("answer: {error: 0.15 bar}", "answer: {error: 0.2 bar}")))
                .isNotEqualTo(AS_SHIPPED);
    }

    @Test
    void theCodeMayNot() {
        assertThat(LibraryKey.of(MACHINE.casework(Procedures.bundled()), "other code")
                        .hash())
                .isNotEqualTo(AS_SHIPPED);
    }
}
