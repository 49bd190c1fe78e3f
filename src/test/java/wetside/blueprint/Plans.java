package wetside.blueprint;

/** Plans without a machine around them, for tests of what solves them. */
public final class Plans {
    private Plans() {}

    public static CurrentPlan current(Slots slots) {
        return new CurrentPlan(slots);
    }
}
