package wetside.diagnosis;

/** Who is on the line, least qualified first; whoever comes later may do all the earlier ones may. */
public enum Who {
    OWNER,
    TECHNICIAN,
    ELECTRICIAN;

    /** True when this person may do what asks for at least {@code needed}. */
    public boolean covers(Who needed) {
        return ordinal() >= needed.ordinal();
    }
}
