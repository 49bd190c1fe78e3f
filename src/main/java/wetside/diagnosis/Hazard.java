package wetside.diagnosis;

/** What could hurt, mildest first, and who may face it at all. */
public enum Hazard {
    /** Nothing beyond ordinary use. */
    NONE(Who.OWNER),
    /** Ordinary use that asks for care: a hot outlet, steam from the wand. */
    CARE(Who.OWNER),
    /** Inside the machine, hot parts, steam or water under pressure, acid. */
    INSIDE(Who.TECHNICIAN),
    /** Inside the machine with mains voltage on bare parts. */
    LIVE(Who.TECHNICIAN);

    private final Who least;

    Hazard(Who least) {
        this.least = least;
    }

    /** The least qualified person who may face this. */
    public Who least() {
        return least;
    }
}
