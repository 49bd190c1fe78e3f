package wetside.machine;

/**
 * Where something enters or leaves a component.
 *
 * @param name     as written in machine files, e.g. {@code in}
 * @param medium   what passes
 * @param optional true when a machine may leave it unjoined (a fluid port left open is then plugged)
 * @param meaning  one line for the machine-file reference
 */
public record Port(String name, Medium medium, boolean optional, String meaning) {
    public static Port fluid(String name, String meaning) {
        return new Port(name, Medium.FLUID, false, meaning);
    }

    public static Port current(String name, String meaning) {
        return new Port(name, Medium.CURRENT, false, meaning);
    }

    public static Port heat(String name, String meaning) {
        return new Port(name, Medium.HEAT, false, meaning);
    }

    public static Port motion(String name, String meaning) {
        return new Port(name, Medium.MOTION, false, meaning);
    }

    public Port orPlugged() {
        return new Port(name, medium, true, meaning);
    }
}
