package wetside.published;

import java.util.Locale;

/** How far a computed value may be from the published one. */
public record Tolerance(double relative, double absolute) {
    /** A share of the expected value, for example 1e-3. */
    public static Tolerance relative(double share) {
        return new Tolerance(share, 0);
    }

    /** In units of the quantity itself. */
    public static Tolerance absolute(double amount) {
        return new Tolerance(0, amount);
    }

    /** Half a unit of the last printed digit: {@code digit(0.01)} for a value printed as 12.34. */
    public static Tolerance digit(double lastDigit) {
        return new Tolerance(0, lastDigit * 0.5000001);
    }

    double allowed(double expected) {
        return relative * Math.abs(expected) + absolute;
    }

    String inWords() {
        String share = relative == 0
                ? ""
                : relative < 1e-4
                        ? String.format(Locale.ROOT, "%.1e", relative)
                        : Published.digits(relative * 100, 3) + " %";
        String amount = absolute == 0 ? "" : Published.digits(absolute, 3);
        return share.isEmpty() ? amount.isEmpty() ? "none" : amount : amount.isEmpty() ? share : share + " + " + amount;
    }
}
