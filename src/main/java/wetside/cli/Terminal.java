package wetside.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether a person sits at one of the program's three standard streams. */
final class Terminal {
    private static final Path STREAMS = Path.of("/proc/self/fd");

    private Terminal() {}

    /** Somebody types. */
    static boolean input() {
        return isTerminal(0);
    }

    /** Somebody reads the messages: bars may be drawn there. */
    static boolean errors() {
        return isTerminal(2);
    }

    /** Java tells of all streams together only; where the system has a file for each, that is asked. */
    private static boolean isTerminal(int stream) {
        try {
            String device = Files.readSymbolicLink(STREAMS.resolve(String.valueOf(stream)))
                    .toString();
            return device.startsWith("/dev/pts/") || device.startsWith("/dev/tty") || device.equals("/dev/console");
        } catch (IOException | UnsupportedOperationException | SecurityException e) {
            return !Files.exists(STREAMS) && System.console() != null;
        }
    }
}
