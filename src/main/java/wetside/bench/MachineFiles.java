package wetside.bench;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import wetside.kind.Kinds;
import wetside.machine.MachineFile;

/** Machine files, read once: those that come with the program cannot change under it. Others are read anew each time. */
final class MachineFiles {
    private static final Map<String, MachineFile> BUNDLED = new ConcurrentHashMap<>();

    private MachineFiles() {}

    static MachineFile find(String name) {
        return MachineFile.names().contains(name)
                ? BUNDLED.computeIfAbsent(name, n -> MachineFile.bundled(n, Kinds.declarations()))
                : MachineFile.find(name, Kinds.declarations());
    }
}
