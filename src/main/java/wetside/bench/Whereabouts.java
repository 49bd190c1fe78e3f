package wetside.bench;

import java.util.Optional;
import java.util.Set;
import wetside.cabinet.Cabinet;
import wetside.cabinet.CabinetDrawing;
import wetside.cabinet.Fitted;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.Side;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.shop.RegisteredMachine;

/** Where a part sits, drawn from the side it is seen best from. */
final class Whereabouts {
    private Whereabouts() {}

    /** Empty for what is outside the case, and where a machine file has no measures. */
    static Optional<Block.Drawing> of(RegisteredMachine registered, Machine machine, Component part, double share) {
        Cabinet cabinet =
                Cabinet.of(MachineFiles.find(registered.file()), machine).orElse(null);
        Fitted fitted = cabinet == null ? null : cabinet.part(part.id()).orElse(null);
        if (fitted == null) {
            return Optional.empty();
        }
        Side side = cabinet.best(fitted);
        CabinetDrawing drawing =
                new CabinetDrawing(cabinet, Optional.of(fitted), Set.of(fitted.id()), CabinetDrawing.Room.HALF);
        String caption = Wording.capital(part.name()) + ", from the " + side.word();
        return Optional.of(new Block.Drawing(drawing.bare(side), caption, caption, share));
    }
}
