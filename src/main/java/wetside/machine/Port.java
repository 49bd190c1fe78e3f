package wetside.machine;

/**
 * Where something enters or leaves a component.
 *
 * @param name     as written in machine files, e.g. {@code in}
 * @param medium   what passes
 * @param optional true when a machine may leave it unjoined (a fluid port left open is then plugged)
 * @param spent    true when what leaves here is not used any more: let off, emptied
 * @param screwed  true when it belongs straight into a boiler, with no pipe between: the part looks into it
 * @param meaning  one line for the machine-file reference
 */
public record Port(String name, Medium medium, boolean optional, boolean spent, boolean screwed, String meaning) {
    public static Port fluid(String name, String meaning) {
        return new Port(name, Medium.FLUID, false, false, false, meaning);
    }

    public static Port current(String name, String meaning) {
        return new Port(name, Medium.CURRENT, false, false, false, meaning);
    }

    public static Port heat(String name, String meaning) {
        return new Port(name, Medium.HEAT, false, false, false, meaning);
    }

    public static Port motion(String name, String meaning) {
        return new Port(name, Medium.MOTION, false, false, false, meaning);
    }

    public Port orPlugged() {
        return new Port(name, medium, true, spent, screwed, meaning);
    }

    /** What leaves here runs to waste. */
    public Port toWaste() {
        return new Port(name, medium, optional, true, screwed, meaning);
    }

    /** A part that looks into the boiler it is screwed into: a level probe, a sight glass. */
    public Port intoBoiler() {
        return new Port(name, medium, optional, spent, true, meaning);
    }
}
