package wetside.run;

/** One thing an operator does, as written; names are roles or component ids, values are words or numbers with units. */
public sealed interface Action {
    /** Sets a handle, e.g. {@code lever.position} to {@code brew}. */
    record Move(String handle, String value) implements Action {}

    /** Lets time pass [s]. */
    record Wait(double seconds) implements Action {}

    /** Waits until a reading is above, below or is something, but no longer than {@code atMost} [s]. */
    record Until(String reading, Test test, String value, double atMost) implements Action {}

    /** Names a moment. */
    record Mark(String name) implements Action {}

    /** How a reading is compared. */
    enum Test {
        ABOVE,
        BELOW,
        IS
    }
}
