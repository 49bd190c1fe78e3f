package wetside.machine;

/** What passes through a port; a join may only connect ports of one medium. */
public enum Medium {
    /** Water, steam and what runs off: joined by lines. */
    FLUID("lines"),
    /** Mains and low voltage alike: joined by wires; several wires may share one terminal. */
    CURRENT("wires"),
    /** Heat through touching metal: joined by contacts; several contacts may share one port. */
    HEAT("contacts"),
    /** A shaft, a cam, a float's arm: joined by linkages. */
    MOTION("linkages");

    private final String section;

    Medium(String section) {
        this.section = section;
    }

    /** The section of a machine file that joins ports of this medium. */
    public String section() {
        return section;
    }
}
