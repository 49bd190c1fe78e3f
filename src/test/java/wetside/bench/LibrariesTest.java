package wetside.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wetside.setting.Setting;
import wetside.shop.RegisteredMachine;

/** A beginning is made for the workshop's machines, and never in anybody's way. */
class LibrariesTest {
    @TempDir
    Path folder;

    private Setting cache;

    @BeforeEach
    void cache() {
        cache = new Setting("wetside.cache", folder.toString());
    }

    @AfterEach
    void formerCache() {
        cache.close();
    }

    private static Libraries.Place stand(String revision) throws Exception {
        String file = Path.of(LibrariesTest.class
                        .getResource("/wetside/cli/stand.yaml")
                        .toURI())
                .toString();
        return Libraries.Place.of(
                new RegisteredMachine(0, "", file, revision, "", 0, "mains", 2e5, null, 230.0, null, null, "", "", 0));
    }

    private static boolean within(int seconds, BooleanSupplier wanted) throws InterruptedException {
        for (int i = 0; i < 20 * seconds && !wanted.getAsBoolean(); i++) {
            Thread.sleep(50);
        }
        return wanted.getAsBoolean();
    }

    /** What a bench started tomorrow would find. */
    private static int stored(Libraries.Place place) {
        return new Ground(place.installed().get(), 64, 1).drawn();
    }

    @Test
    void machinesNobodyAskedAboutHaveAFirstAnswerOneAfterTheOther() throws Exception {
        Libraries.Place gone = new Libraries.Place("gone", () -> {
            throw new BadForm("its file is gone");
        });
        Libraries.Place first = stand("A");
        Libraries.Place second = stand("B");
        try (Libraries libraries = new Libraries(() -> false)) {
            libraries.warm(List.of(gone, first, second));
            assertThat(within(60, () -> stored(second) >= 8)).isTrue();
            assertThat(stored(first)).isEqualTo(8);
            assertThat(libraries.of(first).drawn()).as("there at once").isGreaterThanOrEqualTo(8);
        }
    }

    @Test
    void nothingIsRunBeforehandWhileTheComputerIsBusyOrSomebodyWaits() throws Exception {
        AtomicBoolean busy = new AtomicBoolean(true);
        Libraries.Place place = stand("A");
        Libraries.Place wanted = stand("B");
        try (Libraries libraries = new Libraries(busy::get)) {
            libraries.warm(List.of(place));
            Ground asked = libraries.of(wanted);
            assertThat(within(60, () -> asked.drawn() >= 8))
                    .as("whoever asks is served")
                    .isTrue();
            assertThat(stored(place)).isZero();
            asked.pause();
            busy.set(false);
            assertThat(within(60, () -> stored(place) >= 8)).isTrue();
        }
    }
}
