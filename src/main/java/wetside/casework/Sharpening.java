package wetside.casework;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import wetside.diagnosis.Library;

/** Signatures that get better in the background while people think. */
public final class Sharpening {
    private final Signing signing;
    private final CountDownLatch begun = new CountDownLatch(1);
    private final Set<Integer> close = new HashSet<>();
    private boolean over;
    private volatile Library newest;
    private volatile RuntimeException broken;

    public Sharpening(Signing signing) {
        this.signing = signing;
    }

    /** Waits for the first few draws; from then on nothing waits. */
    public Library first() {
        Thread builder = new Thread(this::build, "signatures");
        builder.setDaemon(true);
        builder.start();
        try {
            begun.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        }
        return newest();
    }

    /** Causes that may still be it: simulated more closely once the library is whole. */
    public synchronized void closer(Collection<Integer> causes) {
        if (close.addAll(causes)) {
            notifyAll();
        }
    }

    private void build() {
        try {
            Library base = signing.all(this::arrived);
            arrived(base);
            for (Set<Integer> causes = more(Set.of()); !causes.isEmpty(); causes = more(causes)) {
                arrived(signing.closer(base, causes));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (RuntimeException e) {
            broken = e;
            begun.countDown();
        }
    }

    /** All causes in play once there are others than some; none when it is over. */
    private synchronized Set<Integer> more(Set<Integer> known) throws InterruptedException {
        while (!over && known.containsAll(close)) {
            wait();
        }
        return over ? Set.of() : Set.copyOf(close);
    }

    private void arrived(Library library) {
        newest = library;
        begun.countDown();
    }

    /** The sharpest there is now. */
    public Library newest() {
        if (broken != null) {
            throw broken;
        }
        return newest;
    }

    public synchronized void end() {
        over = true;
        notifyAll();
        signing.stop();
    }
}
