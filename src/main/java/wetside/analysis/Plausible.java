package wetside.analysis;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import wetside.machine.Node;
import wetside.water.Composition;
import wetside.water.Conductivity;

/** Holds an analysis against itself: what cannot be is told at its place, with the number that is probably wrong. */
final class Plausible {
    /** Above this share an analysis with all ions is refused. */
    private static final double WORST = 0.10;

    /** Slips that happen: what is reported, over what was meant. */
    private static final Map<String, Double> SLIPS = new TreeMap<>(Map.of(
            "the decimal point one place to the right", 10.0,
            "the decimal point one place to the left", 0.1,
            "meant as calcium carbonate", 2.4973,
            "meant as bicarbonate rather than calcium carbonate", 1.2193,
            "meant as calcium carbonate rather than bicarbonate", 0.8202,
            "meant as nitrogen", 1 / 4.4268,
            "meant as sulfur", 1 / 2.9963,
            "German degrees for French", 1.7848,
            "French degrees for German", 0.5603));

    private final Map<Content, Measured> measured;
    private final Map<Content, Node> nodes;

    Plausible(Map<Content, Measured> measured, Map<Content, Node> nodes) {
        this.measured = measured;
        this.nodes = nodes;
    }

    /** What can be told from single values; true when the rest may be looked at. */
    boolean parts() {
        boolean fine = within(Content.MAGNESIUM) & within(Content.CALCIUM);
        Measured h = measured.get(Content.HARDNESS);
        Measured ca = measured.get(Content.CALCIUM);
        Measured mg = measured.get(Content.MAGNESIUM);
        if (fine && h != null && ca != null && mg != null) {
            double sum = ca.value() + mg.value();
            double apart = Math.abs(sum - h.value());
            if (apart > 0.1 * Math.max(sum, h.value()) + h.half() + ca.half() + mg.half()) {
                nodes.get(Content.HARDNESS)
                        .problem(String.format(
                                Locale.ROOT,
                                "hardness is calcium and magnesium together: those make %s, not %s",
                                shown(sum, Content.HARDNESS),
                                shown(h.value(), Content.HARDNESS)));
                return false;
            }
        }
        return fine;
    }

    private boolean within(Content part) {
        Measured m = measured.get(part);
        Measured h = measured.get(Content.HARDNESS);
        if (m != null && h != null && m.value() - m.half() > h.value() + h.half()) {
            nodes.get(part)
                    .problem(String.format(
                            Locale.ROOT,
                            "%s alone is %s of hardness, more than the whole hardness of %s",
                            part.words(),
                            shown(m.value(), Content.HARDNESS),
                            shown(h.value(), Content.HARDNESS)));
            return false;
        }
        return true;
    }

    static String shown(double si, Content c) {
        String unit = c.usualUnit();
        return String.format(Locale.ROOT, c == Content.CONDUCTIVITY ? "%.0f %s" : "%.1f %s", c.shown(si, unit), unit);
    }

    /** Charges and conductivity of the whole water at its middle. */
    void whole(Composition c) {
        double error = c.chargeError();
        if (Math.abs(error) > WORST) {
            suspect(c, error);
            return;
        }
        Measured pen = measured.get(Content.CONDUCTIVITY);
        if (pen != null) {
            double ions = Conductivity.atRoom(c);
            if (pen.value() + pen.half() < 0.82 * ions) {
                nodes.get(Content.CONDUCTIVITY)
                        .problem(String.format(
                                Locale.ROOT,
                                "the ions that are certain conduct %s at 25 °C already: conductivity, hardness or alkalinity"
                                        + " is wrong. Was the pen rinsed and calibrated, does it correct to 25 °C, were the drops"
                                        + " of the right size?",
                                shown(ions, Content.CONDUCTIVITY)));
            } else if (isWhole() && pen.value() - pen.half() > 1.2 * ions) {
                nodes.get(Content.CONDUCTIVITY)
                        .problem(String.format(
                                Locale.ROOT,
                                "all ions of this analysis together conduct only %s at 25 °C: an ion is missing or the"
                                        + " conductivity is wrong",
                                shown(ions, Content.CONDUCTIVITY)));
            }
        }
    }

    private boolean isWhole() {
        return measured.keySet()
                .containsAll(List.of(Content.SODIUM, Content.CHLORIDE, Content.SULFATE, Content.NITRATE));
    }

    /** One ion put right that would close the balance, best by a slip that happens and by the conductivity. */
    private void suspect(Composition c, double error) {
        double owed = c.cations() - c.anions();
        Content worst = null;
        String why = "";
        double best = Double.POSITIVE_INFINITY;
        for (Map.Entry<Content, Double> e : charges(c).entrySet()) {
            boolean cation = e.getKey().ordinal() < Content.ALKALINITY.ordinal()
                    || e.getKey() == Content.SODIUM
                    || e.getKey() == Content.POTASSIUM;
            double right = e.getValue() + (cation ? -owed : owed);
            if (!(right > 0) || e.getValue() <= 0) {
                continue;
            }
            double factor = right / e.getValue();
            double score = 1 + Math.abs(Math.log(factor));
            String reason = "";
            for (Map.Entry<String, Double> slip : SLIPS.entrySet()) {
                double off = Math.abs(Math.log(factor * slip.getValue()));
                if (fits(slip.getKey(), e.getKey()) && off < 0.15 && off < score) {
                    score = off;
                    reason = slip.getKey();
                }
            }
            score += 5 * offConductivity(c, e.getKey(), factor);
            if (score < best) {
                best = score;
                worst = e.getKey();
                why = String.format(
                        Locale.ROOT,
                        "with %s instead of %s of %s charges would balance%s",
                        shown(measured.get(worst).value() * factor, worst),
                        shown(measured.get(worst).value(), worst),
                        worst.words(),
                        reason.isEmpty() ? "" : " (" + reason + "?)");
            }
        }
        String head = String.format(
                Locale.ROOT,
                "%s charges outweigh the others by %.0f %% (%.2f against %.2f meq/l; 10 %% is the most taken)",
                error > 0 ? "positive" : "negative",
                100 * Math.abs(error),
                1e3 * c.cations(),
                1e3 * c.anions());
        if (worst == null) {
            nodes.get(Content.ALKALINITY).problem(head);
        } else {
            nodes.get(worst).problem(head + ". Suspect is " + worst.words() + ": " + why);
        }
    }

    private static boolean fits(String slip, Content c) {
        return switch (slip) {
            case "meant as nitrogen" -> c == Content.NITRATE;
            case "meant as sulfur" -> c == Content.SULFATE;
            case "meant as calcium carbonate" -> c == Content.CALCIUM;
            case "German degrees for French", "French degrees for German" ->
                c == Content.HARDNESS || c == Content.ALKALINITY;
            default -> slip.startsWith("the decimal") || c == Content.ALKALINITY;
        };
    }

    private Map<Content, Double> charges(Composition c) {
        Map<Content, Double> m = new EnumMap<>(Content.class);
        m.put(Content.HARDNESS, 2 * c.hardness());
        m.put(Content.CALCIUM, 2 * c.calcium());
        m.put(Content.MAGNESIUM, 2 * c.magnesium());
        m.put(Content.SODIUM, c.sodium());
        m.put(Content.POTASSIUM, c.potassium());
        m.put(Content.ALKALINITY, c.alkalinity());
        m.put(Content.CHLORIDE, c.chloride());
        m.put(Content.SULFATE, 2 * c.sulfate());
        m.put(Content.NITRATE, c.nitrate());
        m.keySet().retainAll(measured.keySet());
        if (m.containsKey(Content.CALCIUM) && m.containsKey(Content.MAGNESIUM)) {
            m.remove(Content.HARDNESS);
        }
        return m;
    }

    /** How far the conductivity would be off with one ion changed; 0 where nobody measured it. */
    private double offConductivity(Composition c, Content ion, double factor) {
        Measured pen = measured.get(Content.CONDUCTIVITY);
        if (pen == null) {
            return 0;
        }
        double f = factor - 1;
        Composition put = c.plus(new Composition(
                ion == Content.CALCIUM || ion == Content.HARDNESS ? c.calcium() * f : 0,
                ion == Content.MAGNESIUM || ion == Content.HARDNESS ? c.magnesium() * f : 0,
                ion == Content.SODIUM ? c.sodium() * f : 0,
                ion == Content.POTASSIUM ? c.potassium() * f : 0,
                ion == Content.CHLORIDE ? c.chloride() * f : 0,
                ion == Content.SULFATE ? c.sulfate() * f : 0,
                ion == Content.NITRATE ? c.nitrate() * f : 0,
                0,
                ion == Content.ALKALINITY ? c.alkalinity() * f : 0,
                ion == Content.ALKALINITY ? c.carbon() * f : 0));
        return Math.max(0, Math.abs(Math.log(Conductivity.atRoom(put) / pen.value())) - 0.05);
    }
}
