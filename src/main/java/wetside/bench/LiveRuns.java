package wetside.bench;

import io.javalin.http.NotFoundResponse;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import wetside.map.MachineMap;

/** The runs that are going; no more than this computer can be expected to carry. */
final class LiveRuns {
    /** Runs at a time. */
    static final int MOST = 8;

    private final Map<String, LiveRun> going = new ConcurrentHashMap<>();
    private final SecureRandom random = new SecureRandom();

    /** Starts one and says the name it is called by; empty when there are too many. */
    synchronized Optional<String> start(Subject subject, MachineMap map) {
        going.values().removeIf(LiveRun::isEnded);
        if (going.size() >= MOST) {
            return Optional.empty();
        }
        byte[] bytes = new byte[12];
        random.nextBytes(bytes);
        String name = HexFormat.of().formatHex(bytes);
        LiveRun run = new LiveRun(subject, map);
        going.put(name, run);
        Thread thread = new Thread(run, "live run");
        thread.setDaemon(true);
        thread.setPriority(Thread.NORM_PRIORITY - 1);
        thread.start();
        Thread behind = new Thread(run.course().siblings(), "band of a live run");
        behind.setDaemon(true);
        behind.setPriority(Thread.MIN_PRIORITY);
        behind.start();
        return Optional.of(name);
    }

    LiveRun of(String name) {
        LiveRun run = going.get(name);
        if (run == null || run.isEnded()) {
            throw new NotFoundResponse();
        }
        return run;
    }

    void endAll() {
        going.values().forEach(LiveRun::end);
    }
}
