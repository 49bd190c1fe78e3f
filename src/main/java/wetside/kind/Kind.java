package wetside.kind;

import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.machine.Component;
import wetside.machine.Declaration;

/** A kind of component. Stateless; one instance each, listed in {@link Kinds}. */
public interface Kind {
    Declaration declaration();

    /** Ways it goes wrong; each moves parameters of this kind only. */
    List<Fault> faults();

    /** Writes the physics of one component of this kind into the blueprint. */
    void build(Component c, Blueprint b);
}
