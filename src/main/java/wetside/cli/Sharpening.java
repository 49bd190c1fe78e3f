package wetside.cli;

import java.util.concurrent.CountDownLatch;
import wetside.diagnosis.Library;

/** Signatures that get better in the background while people think. */
final class Sharpening {
    private final Signing signing;
    private final CountDownLatch begun = new CountDownLatch(1);
    private volatile Library newest;
    private volatile RuntimeException broken;

    Sharpening(Signing signing) {
        this.signing = signing;
    }

    /** Waits for the first few draws, a bar in view; from then on nothing waits and nothing is drawn. */
    Library first() {
        Thread builder = new Thread(this::build, "signatures");
        builder.setDaemon(true);
        builder.start();
        try {
            begun.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted", e);
        }
        signing.quiet();
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
    Library newest() {
        if (broken != null) {
            throw broken;
        }
        return newest;
    }

    void end() {
        signing.stop();
    }
}
