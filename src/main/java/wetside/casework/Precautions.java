package wetside.casework;

/** What is said before hands do anything, and before current comes back, whatever the machine. */
public final class Precautions {
    public static final String BEFORE_OPENING =
            "Switch off, unplug and keep the plug in sight, shut the cock, let cool, let the pressure off at steam tap, water"
                    + " tap and group until nothing comes; loosen the first joint slowly. Measure a terminal dead before it is"
                    + " touched. Mind the motor's capacitor and sharp sheet edges.";

    public static final String AFTER_OPENING =
            "If the case was open: covers back, then protective conductor and insulation by a qualified electrician before it"
                    + " gets current.";

    public static final String FIRST = "Local codes and licensed practice come first.";

    private Precautions() {}
}
