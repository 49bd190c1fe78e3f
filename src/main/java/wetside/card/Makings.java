package wetside.card;

import java.util.ArrayList;
import java.util.List;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/** A part through all makings of its machine. */
final class Makings {
    private Makings() {}

    static List<Card.Making> of(MachineFile file, Machine machine, String id) {
        String own = machine.identity().making();
        Component here = file.machines().stream()
                .filter(m -> m.identity().making().equals(own))
                .findFirst()
                .orElseThrow()
                .component(id);
        List<Card.Making> makings = new ArrayList<>();
        for (Machine m : file.machines()) {
            boolean isOwn = m.identity().making().equals(own);
            if (!m.has(id)) {
                makings.add(new Card.Making(m.identity().making(), "", "not there", false));
            } else {
                Component c = m.component(id);
                makings.add(new Card.Making(m.identity().making(), c.place().part(), differs(here, c), isOwn));
            }
        }
        return makings;
    }

    private static String differs(Component here, Component there) {
        List<String> differs = new ArrayList<>(Settings.differences(here, there));
        if (!there.place().mark().equals(here.place().mark())) {
            differs.add(there.place().mark());
        }
        return String.join(", ", differs);
    }
}
