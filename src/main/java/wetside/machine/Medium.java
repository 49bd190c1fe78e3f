package wetside.machine;

/** What passes through a port; a join may only connect ports of one medium. */
public enum Medium {
    /** Water, steam and what runs off: joined by lines. */
    FLUID("lines", "water and steam"),
    /** Mains and low voltage alike: joined by wires; several wires may share one terminal. */
    CURRENT("wires", "current"),
    /** Heat through touching metal: joined by contacts; several contacts may share one port. */
    HEAT("contacts", "heat"),
    /** A shaft, a cam, a float's arm: joined by linkages. */
    MOTION("linkages", "motion");

    private final String section;
    private final String words;

    Medium(String section, String words) {
        this.section = section;
        this.words = words;
    }

    /** What passes, in words. */
    public String inWords() {
        return words;
    }

    /** The section of a machine file that joins ports of this medium. */
    public String section() {
        return section;
    }
}
