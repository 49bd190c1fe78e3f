package wetside.cli;

/** An argument that makes no sense; the message says what would. */
final class BadArgument extends RuntimeException {
    private static final long serialVersionUID = 1;

    BadArgument(String message) {
        super(message);
    }
}
