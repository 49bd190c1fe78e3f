package wetside.docs;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.Locale;
import wetside.kind.Kinds;
import wetside.machine.Bodies;
import wetside.machine.Declaration;
import wetside.machine.Node;
import wetside.machine.Parameter;
import wetside.machine.Port;
import wetside.machine.Spread;
import wetside.units.Dimension;
import wetside.units.Display;

/** What every kind declares, as tables for the page on machine files. */
final class KindTables {
    private KindTables() {}

    static String all() {
        StringBuilder text = new StringBuilder("\n");
        Kinds.declarations().stream()
                .sorted(Comparator.comparing((Declaration d) -> d.name().toLowerCase(Locale.ROOT)))
                .forEach(d -> text.append(of(d)));
        return text.toString();
    }

    static String sizes() {
        StringBuilder text = new StringBuilder("\n| Kind | Usual size |\n|---|---|\n");
        Kinds.declarations().stream()
                .sorted(Comparator.comparing((Declaration d) -> d.name().toLowerCase(Locale.ROOT)))
                .forEach(d -> text.append("| " + d.name() + " | " + Bodies.words(d) + " |\n"));
        return text.append('\n').toString();
    }

    static String of(Declaration kind) {
        StringBuilder text = new StringBuilder("### " + kind.name() + "\n\n");
        String purpose = whatFor(kind);
        if (!purpose.isEmpty()) {
            text.append(Character.toUpperCase(purpose.charAt(0)))
                    .append(purpose.substring(1))
                    .append(".\n\n");
        }
        if (!kind.ports().isEmpty()) {
            text.append("| Port | Joined by | Meaning |\n|---|---|---|\n");
            kind.ports().forEach(p -> text.append(row(p)));
            text.append('\n');
        }
        if (!kind.parameters().isEmpty()) {
            text.append("| In `set` | Usual | From | To | Tolerance | Meaning |\n|---|---|---|---|---|---|\n");
            kind.parameters().forEach(p -> text.append(row(p)));
            text.append('\n');
        }
        return text.toString();
    }

    private static String row(Port p) {
        return "| " + p.name() + " | " + p.medium().section() + (p.optional() ? ", if at all" : "") + " | "
                + cell(p.meaning()) + " |\n";
    }

    private static String row(Parameter p) {
        String use = switch (p.use()) {
            case BUILD -> "";
            case SETTING -> " (set by a technician)";
            case CONDITION -> " (wear)";
        };
        return String.join(
                        " | ",
                        "| " + p.name(),
                        p.mustBeGiven() ? "must be given" : shown(p.usual(), p.dimension()),
                        shown(p.min(), p.dimension()),
                        shown(p.max(), p.dimension()),
                        tolerance(p),
                        cell(p.meaning()) + use)
                + " |\n";
    }

    private static String tolerance(Parameter p) {
        Spread spread = p.spread();
        Dimension difference = p.dimension() == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_RISE : p.dimension();
        return switch (spread.kind()) {
            case EXACT -> "none";
            case ABSOLUTE -> "± " + shown(spread.halfWidth(), difference);
            case RELATIVE -> "± " + shown(spread.halfWidth(), Dimension.RATIO);
        };
    }

    private static String shown(double si, Dimension dimension) {
        return Display.METRIC.print(si, dimension);
    }

    private static String whatFor(Declaration kind) {
        String file = kind.name() + ".yaml";
        try (InputStream words = Kinds.class.getResourceAsStream(file)) {
            return words == null
                    ? ""
                    : Node.read(file, new String(words.readAllBytes(), StandardCharsets.UTF_8))
                            .text("what for", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String cell(String text) {
        return text.replace("|", "\\|");
    }
}
