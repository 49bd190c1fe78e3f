package wetside.feedwater;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** When scale should come off, who may do it, and what is never done. */
public final class Descaling {
    /** Cautions in the order they matter. */
    public static final List<String> CAUTIONS = List.of(
            "Only where the machine's maker allows it, with the acid and strength the maker names: acid eats brass, chrome"
                    + " plating, aluminium and some seals.",
            "Never mix acids, and never acid with bleach or any cleaner with chlorine: the gas kills. Goggles, gloves, open"
                    + " window; acid into water, never water into acid. On skin or in an eye: rinse with plenty of water, an eye"
                    + " for a quarter of an hour, then to a doctor.",
            "The boiler is cold, without pressure, unplugged and the water shut before it is opened: technician. Never heat"
                    + " acid in a closed boiler under pressure, never leave it in overnight, never leave it unattended: a note on"
                    + " the machine says that nobody draws from it.",
            "Rinse until the water drawn has the pH and conductivity of the water fed; throw the first drinks away.",
            "A level probe or a jet is taken out of the cold machine and cleaned on the bench: technician. A safety valve is"
                    + " never descaled and never reset: it is replaced by one of the same rating.");

    private Descaling() {}

    /** A line for each place scale grows. */
    public static List<String> dates(List<Forecast> forecasts, LocalDate from) {
        List<String> lines = new ArrayList<>();
        for (Forecast f : forecasts) {
            lines.add(line(f, from));
        }
        return lines;
    }

    private static String line(Forecast f, LocalDate from) {
        StringBuilder s = new StringBuilder(f.place().name()).append(": ");
        if (f.falls().high() < 1e-4) {
            return s.append("next to nothing falls; no descaling needed.").toString();
        }
        s.append(Said.short2(f.falls().middle() * 1e3))
                .append(" g a year can fall (")
                .append(Said.short2(Math.max(0, f.falls().low() * 1e3)))
                .append(" to ")
                .append(Said.short2(f.falls().high() * 1e3))
                .append(')');
        grows(s, "where it is heated", f.element());
        grows(s, "on walls and probe", f.wall());
        grows(s, "in the jet", f.jet());
        if (f.hasDate()) {
            s.append(". Descale after ").append(Said.times(f.years()));
            s.append(String.format(
                    Locale.ROOT, ", about %s l heated", Said.short2(f.litres().middle())));
            if (from != null) {
                s.append("; due ").append(date(from, f.years().middle()));
                s.append(", at the earliest ").append(date(from, f.years().low()));
            }
        } else if (!Double.isNaN(f.years().middle())) {
            s.append(". No descaling needed for years");
        }
        return s.append('.').toString();
    }

    private static void grows(StringBuilder s, String where, wetside.analysis.Ranged rate) {
        if (!Double.isNaN(rate.middle()) && rate.high() > 1e-5) {
            s.append("; ")
                    .append(where)
                    .append(' ')
                    .append(Said.short2(rate.middle() * 1e3))
                    .append(" mm a year (")
                    .append(Said.short2(Math.max(0, rate.low() * 1e3)))
                    .append(" to ")
                    .append(Said.short2(rate.high() * 1e3))
                    .append(')');
        }
    }

    private static LocalDate date(LocalDate from, double years) {
        return from.plusDays(Math.round(Math.min(years, Forecast.NEVER) * 365.25));
    }

    /** What the forecast rests on. */
    public static final String ASSUMED =
            "Assumed: 25 to 70 % of what falls sticks to what heats, 10 to 50 % of the rest to"
                    + " walls and probe, 0.005 to 0.08 % of what brewing water can drop in the jet; a cake of 1600 to 2500 kg/m³;"
                    + " carbon dioxide between kept and lost. Descaled at 0.5 mm.";
}
