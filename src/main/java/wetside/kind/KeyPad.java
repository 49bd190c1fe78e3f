package wetside.kind;

import static wetside.kind.Fault.log;
import static wetside.kind.Fault.set;

import java.util.ArrayList;
import java.util.List;
import wetside.blueprint.Blueprint;
import wetside.blueprint.CurrentPlan;
import wetside.machine.Component;
import wetside.machine.Declaration;
import wetside.machine.Parameter;
import wetside.machine.Port;

/**
 * The keys of one group and their lamp. Each key joins the two wires of the ribbon through a resistor of its own, by which
 * the {@link DosingUnit} knows it; two at once read as something between.
 */
public final class KeyPad implements Kind {
    /** The keys in the order of {@link #OHMS}. */
    static final List<String> KEYS = List.of("one dose", "two doses", "continuous", "programme");
    /** Resistor behind each key [Ω]. */
    static final List<Double> OHMS = List.of(1000.0, 2200.0, 4700.0, 10000.0);

    static final Parameter RIBBON = Ohms.closed("ribbon", 0.5, "resistance of the ribbon and its plug");
    static final Parameter SPILT = Ohms.open("ribbon insulation", Ohms.INSULATION, "between the wires of the ribbon");
    static final Parameter LAMP = Ohms.closed("lamp break", 0.5, "resistance in series with the lamp");

    private static final double LAMP_OHMS = 1200;
    private static final double LAMP_SEEN = 3;
    private static final List<Parameter> ON = new ArrayList<>();
    private static final List<Parameter> OFF = new ArrayList<>();

    static {
        KEYS.forEach(k -> {
            ON.add(Ohms.closed(k + " contact", 5, "resistance of the key \"" + k + "\" when pressed"));
            OFF.add(Ohms.open(k + " gap", Ohms.OPEN, "resistance of the key \"" + k + "\" when let go"));
        });
    }

    private static final Declaration DECLARATION = new Declaration(
            "push-button pad",
            List.of(
                    Port.current("keys", "ribbon to the dosing unit"),
                    Port.current("return", "ribbon, other wire"),
                    Port.current("lamp plus", "supply of the lamp"),
                    Port.current("lamp", "closed to minus by the dosing unit while the lamp is lit")),
            parameters());

    private static final List<Fault> FAULTS = List.of(
            Fault.of("one-dose key dead", 2.5, log(ON.get(0), 20e3, Ohms.OPEN)),
            Fault.of("two-dose key dead", 2.0, log(ON.get(1), 40e3, Ohms.OPEN)),
            Fault.of("continuous key dead", 1.5, log(ON.get(2), 90e3, Ohms.OPEN)),
            Fault.of("one-dose key sticks", 1.0, set(OFF.get(0), 5)),
            Fault.of("continuous key sticks", 0.8, set(OFF.get(2), 5)),
            Fault.of("ribbon broken", 1.0, set(RIBBON, Ohms.OPEN)),
            Fault.of("coffee got in", 1.0, log(SPILT, 3000, 200)),
            Fault.of("lamp dead", 1.0, set(LAMP, Ohms.OPEN)));

    private static List<Parameter> parameters() {
        List<Parameter> all = new ArrayList<>(ON);
        all.addAll(OFF);
        all.addAll(List.of(RIBBON, SPILT, LAMP));
        return List.copyOf(all);
    }

    @Override
    public Declaration declaration() {
        return DECLARATION;
    }

    @Override
    public List<Fault> faults() {
        return FAULTS;
    }

    @Override
    public void build(Component c, Blueprint b) {
        int inside = b.innerTerminal();
        int back = b.terminal(c, "return");
        CurrentPlan current = b.current();
        current.add(new CurrentPlan.Resistor(c.id() + " ribbon", b.terminal(c, "keys"), inside, c.get(RIBBON)));
        current.add(new CurrentPlan.Resistor(c.id() + " insulation", inside, back, c.get(SPILT)));
        List<String> positions = new ArrayList<>(List.of("none"));
        positions.addAll(KEYS);
        int key = b.handle(c, "key", positions, 0);
        int[] pressed = new int[KEYS.size()];
        for (int k = 0; k < pressed.length; k++) {
            pressed[k] = b.slots().state(c.id() + "." + KEYS.get(k) + " pressed", 0);
            int behind = b.innerTerminal();
            String name = c.id() + " " + KEYS.get(k);
            current.add(new CurrentPlan.Resistor(name + " resistor", inside, behind, OHMS.get(k)));
            current.add(new CurrentPlan.Contact(name, behind, back, pressed[k], c.get(ON.get(k)), c.get(OFF.get(k))));
        }
        b.control((x, dt) -> {
            for (int k = 0; k < pressed.length; k++) {
                x[pressed[k]] = x[key] == k + 1 ? 1 : 0;
            }
        });
        lamp(c, b);
    }

    private static void lamp(Component c, Blueprint b) {
        int plus = b.terminal(c, "lamp plus");
        int diode = b.innerTerminal();
        int end = b.terminal(c, "lamp");
        b.current().add(new CurrentPlan.Resistor(c.id() + " lamp break", plus, diode, c.get(LAMP)));
        b.current().add(new CurrentPlan.Resistor(c.id() + " lamp", diode, end, LAMP_OHMS));
        int lit = b.current().share(c.id() + " lamp", end, diode, LAMP_SEEN);
        b.choice(c, "lamp", LampPattern.WORDS, x -> LampPattern.of(x[lit]));
    }
}
