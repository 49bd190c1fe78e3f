package wetside.cabinet;

import java.util.List;
import wetside.kind.Kinds;
import wetside.machine.Declaration;
import wetside.machine.MachineFile;
import wetside.machine.Port;

/** Machines of boxes: real kinds' names with every port optional, so that nothing needs to be joined. */
final class Boxes {
    private Boxes() {}

    static MachineFile read(String text) {
        List<Declaration> kinds =
                Kinds.declarations().stream().map(Boxes::unjoined).toList();
        return MachineFile.read("boxes.yaml", text, kinds);
    }

    private static Declaration unjoined(Declaration kind) {
        List<Port> ports = kind.ports().stream().map(Port::orPlugged).toList();
        return new Declaration(kind.name(), ports, kind.parameters());
    }
}
