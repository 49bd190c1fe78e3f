package wetside.units;

import java.util.Optional;

/** A text that should have been a quantity and is not: what is wrong, and what was probably meant. */
public final class NotAQuantity extends RuntimeException {
    private final String suggestion;

    /** {@code suggestion} may be null. */
    public NotAQuantity(String message, String suggestion) {
        super(message, null, false, false);
        this.suggestion = suggestion;
    }

    /** The text that was probably meant, ready to be shown after "Maybe". */
    public Optional<String> suggestion() {
        return Optional.ofNullable(suggestion);
    }
}
