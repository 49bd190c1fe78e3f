package wetside.shop;

/** Somebody else changed the same thing in between; nothing was saved, what was typed is still in the form. */
public final class Conflict extends RuntimeException {
    private static final long serialVersionUID = 1;

    Conflict(String what) {
        this(what, "somebody else");
    }

    Conflict(String what, String who) {
        super(what + " was changed by " + who + " in the meantime; look at it again, then save");
    }
}
