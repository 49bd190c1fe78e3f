package wetside.shop;

import java.nio.file.Path;
import java.util.Locale;

/** The shop's data cannot be read or written; the message says what is the matter and what would help. */
public final class ShopTrouble extends RuntimeException {
    private static final long serialVersionUID = 1;

    ShopTrouble(String message, Throwable cause) {
        super(message, cause);
    }

    static ShopTrouble of(Path file, RuntimeException e) {
        String said = deepest(e).toLowerCase(Locale.ROOT);
        if (said.contains("full")) {
            return new ShopTrouble("the disk is full: nothing was saved. Make room, then do it again.", e);
        }
        if (said.contains("readonly") || said.contains("read-only")) {
            return new ShopTrouble(file + " may not be written: nothing was saved", e);
        }
        if (said.contains("busy") || said.contains("locked")) {
            return new ShopTrouble(
                    file + " is held by another program: nothing was saved. Close that program, then do it again.", e);
        }
        if (said.contains("notadb") || said.contains("not a database") || said.contains("malformed")) {
            return new ShopTrouble(file + " is no file of a workshop, or is damaged; it was left as it is", e);
        }
        return new ShopTrouble("the workshop's file " + file + " gave trouble, nothing was saved: " + deepest(e), e);
    }

    static ShopTrouble migration(Path file, String newest, RuntimeException e) {
        String said = deepest(e).toLowerCase(Locale.ROOT);
        if (said.contains("not resolved locally") || said.contains("validate")) {
            return new ShopTrouble(
                    file + " was written by a newer Wetside (its version " + newest
                            + "); it was left as it is. Use that version, or another folder.",
                    e);
        }
        return of(file, e);
    }

    private static String deepest(Throwable e) {
        Throwable t = e;
        while (t.getCause() != null && t.getCause() != t) {
            t = t.getCause();
        }
        return String.valueOf(t.getMessage());
    }
}
