package wetside.casework;

/** The twin could not be run: which machine it was, and what it said. */
public final class TwinFailed extends IllegalStateException {
    private static final long serialVersionUID = 1;

    /**
     * @param what which machine was run, with what in it
     * @param why  what went wrong in the twin
     */
    public TwinFailed(String what, RuntimeException why) {
        super("the twin failed: " + what + ": " + said(why), why);
    }

    /** What an exception has to say, and its sort where it is not one of these. */
    public static String said(RuntimeException why) {
        String sort = why.getClass().getSimpleName();
        return why instanceof TwinFailed
                ? why.getMessage()
                : why.getMessage() == null ? sort : sort + ": " + why.getMessage();
    }
}
