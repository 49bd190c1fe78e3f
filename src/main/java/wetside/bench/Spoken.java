package wetside.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Who;
import wetside.machine.Wording;
import wetside.page.Level;
import wetside.procedure.Trial;
import wetside.units.Dimension;
import wetside.units.Display;

/** Shares, answers and people as the pages of fault finding word them. */
final class Spoken {
    private static final Pattern TEXT = Pattern.compile("(?<=>)[^<>]+(?=<)");

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private Spoken() {}

    /** "29 Oct 2026". */
    static String day(LocalDate day) {
        return DAY.format(day);
    }

    static String percent(double share) {
        if (share > 0 && share < 0.005) {
            return "<1 %";
        }
        return share < 1 && share >= 0.995 ? ">99 %" : Math.round(100 * share) + " %";
    }

    static String range(double low, double high) {
        long from = Math.round(100 * low);
        long to = Math.round(100 * high);
        return from == to ? Long.toString(to) : from + "–" + to;
    }

    static String answer(Asking asking, Observation o, String said, Display units) {
        return switch (o.kind()) {
            case NUMBER ->
                asking.dimension() == Dimension.RESISTANCE && asking.si(o.value()) >= Trial.OPEN * 0.99
                        ? "Open"
                        : units.print(asking.si(o.value()), asking.dimension());
            case CHOICE -> Wording.capital(Answers.words(asking, o));
            case UNKNOWN -> Wording.capital(said.replace("'", "’"));
            case STILL_BAD -> "Done, still there";
        };
    }

    static Level level(Who who) {
        return Level.values()[who.ordinal()];
    }

    static String word(Who who) {
        return level(who).style();
    }

    static Who who(String word) {
        for (Who who : Who.values()) {
            if (word(who).equals(word) || who.name().equalsIgnoreCase(word)) {
                return who;
            }
        }
        return Who.OWNER;
    }

    /** A measure in the reader's unit. */
    static double shown(Asking asking, double kept, Display units) {
        return units.unit(asking.dimension()).fromSi(asking.si(kept));
    }

    /** With the four figures that any instrument here can have. */
    static String figures(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A drawing with the measures in its words as a reader wants them. */
    static String drawing(String svg, Display units) {
        return units.equals(Display.METRIC)
                ? svg
                : TEXT.matcher(svg).replaceAll(m -> Matcher.quoteReplacement(units.prose(m.group())));
    }

    static String number(double value, double step) {
        int places = (int) Math.max(0, Math.min(3, Math.ceil(-Math.log10(step) - 1e-9)));
        return String.format(Locale.ROOT, "%." + places + "f", value);
    }
}
