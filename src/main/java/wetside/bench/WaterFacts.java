package wetside.bench;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import wetside.feedwater.MachineFacts;
import wetside.shop.RegisteredMachine;

/** What waters meet in machines: the twin needs seconds for it, runs behind, and what it found is kept. */
final class WaterFacts {
    private static final int KEPT = 32;

    private final Subjects subjects;
    private final Kept<String, CompletableFuture<MachineFacts>> kept = new Kept<>(KEPT);
    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "waters in machines");
        thread.setDaemon(true);
        return thread;
    });

    WaterFacts(Subjects subjects) {
        this.subjects = subjects;
    }

    /** Empty while the twin runs; what is usual, named assumed, where it cannot run this machine. */
    Optional<MachineFacts> of(Subject subject) {
        if (subject == null) {
            return Optional.of(MachineFacts.NONE);
        }
        Subject s = subject.onRegister() == null ? subject : subjects.registered(anyWater(subject.onRegister()));
        CompletableFuture<MachineFacts> found =
                kept.of(s.key(), () -> CompletableFuture.supplyAsync(() -> MachineFacts.of(s.installed()), behind));
        if (found.isCompletedExceptionally()) {
            return Optional.of(MachineFacts.NONE);
        }
        return found.isDone() ? Optional.of(found.join()) : Optional.empty();
    }

    /** Facts are good for every water: another one does not make the twin run again. */
    private static RegisteredMachine anyWater(RegisteredMachine m) {
        return new RegisteredMachine(
                m.id(),
                m.serial(),
                m.file(),
                m.revision(),
                m.supply(),
                m.ownerId(),
                m.fedFrom(),
                m.supplyPressure(),
                null,
                m.voltage(),
                m.altitude(),
                m.ambient(),
                m.bought(),
                m.note(),
                0);
    }
}
