package wetside.casework;

import java.util.concurrent.CountDownLatch;
import wetside.diagnosis.Library;

/** Signatures that get better in the background while people think. */
public final class Sharpening {
    private final Signing signing;
    private final CountDownLatch begun = new CountDownLatch(1);
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

    private void build() {
        try {
            arrived(signing.all(this::arrived));
        } catch (RuntimeException e) {
            broken = e;
            begun.countDown();
        }
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

    public void end() {
        signing.stop();
    }
}
