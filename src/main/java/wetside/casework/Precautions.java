package wetside.casework;

/** What is said before hands do anything, whatever the machine. */
public final class Precautions {
    public static final String BEFORE_OPENING =
            "Switch off, unplug, shut the cock, let cool, open steam and water tap until nothing"
                    + " comes. Mind the motor's capacitor and sharp sheet edges.";

    public static final String FIRST = "Local codes and licensed practice come first.";

    private Precautions() {}
}
