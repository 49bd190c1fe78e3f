package wetside.card;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wetside.machine.Component;
import wetside.machine.Parameter;
import wetside.machine.Spread;
import wetside.units.Dimension;
import wetside.units.Display;

/** What a part is set to: what a technician can turn, and what the machine file says of it. */
final class Settings {
    private static final Set<Dimension> THERMAL =
            EnumSet.of(Dimension.HEAT_CAPACITY, Dimension.THERMAL_CONDUCTANCE, Dimension.RATIO);

    private Settings() {}

    static List<Card.Setting> of(Component c) {
        List<Card.Setting> settings = new ArrayList<>();
        for (int i = 0; i < c.kind().parameters().size(); i++) {
            Parameter p = c.kind().parameters().get(i);
            boolean said =
                    p.mustBeGiven() || c.value(i) != p.usual() || !c.spread(i).equals(p.spread());
            if (p.use() == Parameter.Use.SETTING || said && canBeLookedUp(p)) {
                settings.add(new Card.Setting(
                        p.name(), value(c, i), said ? "by the machine file" : "usual for its kind", p.meaning()));
            }
        }
        return settings;
    }

    /** What is printed on a part or can be measured on it, not what only its warming up tells. */
    private static boolean canBeLookedUp(Parameter p) {
        return p.mustBeGiven() || p.use() == Parameter.Use.BUILD && !THERMAL.contains(p.dimension());
    }

    /** "11.5 bar ± 0.5 bar". */
    static String value(Component c, int i) {
        Parameter p = c.kind().parameters().get(i);
        Spread spread = c.spread(i);
        Dimension difference = p.dimension() == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_RISE : p.dimension();
        String value = Display.METRIC.print(c.value(i), p.dimension());
        return switch (spread.kind()) {
            case EXACT -> value;
            case ABSOLUTE -> value + " ± " + Display.METRIC.print(spread.halfWidth(), difference);
            case RELATIVE -> value + String.format(Locale.ROOT, " ± %.0f %%", 100 * spread.halfWidth());
        };
    }

    /** What of {@code other} is set otherwise than of {@code own}. */
    static List<String> differences(Component own, Component other) {
        List<String> differences = new ArrayList<>();
        for (int i = 0; i < own.kind().parameters().size(); i++) {
            if (other.kind() == own.kind() && other.value(i) != own.value(i)) {
                Parameter p = own.kind().parameters().get(i);
                differences.add(p.name() + " " + Display.METRIC.print(other.value(i), p.dimension()));
            }
        }
        return differences;
    }
}
