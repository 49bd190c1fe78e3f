package wetside.machine;

/** What the checks of a machine must know of a kind beyond its ports. */
public enum Trait {
    /** Heats water that is shut in: must reach a {@link #RELIEF} along open ways. */
    CLOSED_VESSEL,
    /** Lets water or steam out by itself before anything bursts. */
    RELIEF,
    /** Can stop the flow between its ports, so a way to a relief must not lead through it. */
    SHUTS,
    /** Live parts in metal a person can touch: its port {@code earth} must be wired. */
    NEEDS_EARTH,
    /** Made to let steam pass, whatever stands before it when cold. */
    FOR_STEAM
}
