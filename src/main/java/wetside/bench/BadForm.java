package wetside.bench;

/** What was typed makes no sense; the message says what would. */
final class BadForm extends RuntimeException {
    private static final long serialVersionUID = 1;

    BadForm(String message) {
        super(message);
    }
}
