package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wetside.casework.Answers;
import wetside.casework.Session;
import wetside.casework.Signing;
import wetside.casework.Standing;
import wetside.diagnosis.Earlier;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Alike;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Parting;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;

/** Causes by their share of belief, with reasons; and what cannot be told from what. */
final class CausesText {
    private static final int REASONS = 3;
    private static final int WORDS = 62;
    private static final String INDENT = "      ";

    private final Console console;
    private final Session session;
    private final Posterior posterior;
    private final Evidence evidence;
    private List<String> above = List.of();

    CausesText(Console console, Session session) {
        this.console = console;
        this.session = session;
        posterior = session.posterior();
        evidence = session.evidence();
    }

    /** @param wanted draws of every cause still to come up to */
    void print(int wanted) {
        int drawn = Signing.drawn(session.library());
        String standing = drawn < wanted ? "Causes so far, from " + drawn + " of " + wanted + " draws each" : "Causes";
        console.line(Lines.padded(standing, WORDS + 4) + "share   range");
        List<Posterior.Ranked> ranking = posterior.ranking();
        int listed = session.leading().size();
        for (int i = 0; i < listed; i++) {
            cause(i + 1, ranking.get(i));
        }
        double rest = ranking.stream()
                .skip(listed)
                .mapToDouble(Posterior.Ranked::share)
                .sum();
        line("  ", (ranking.size() - listed) + " others together", FindingText.percent(rest), "");
        if (drawn >= wanted && !Standing.of(session.library()).allSimulated()) {
            console.text("  ", Standing.of(session.library()).words());
        }
        odd();
    }

    private void cause(int number, Posterior.Ranked r) {
        var range = posterior.range(r.position());
        line(number + " ", r.words(), FindingText.percent(r.share()), range(range.low(), range.high()));
        if (r.position() != posterior.somethingElse()) {
            List<String> reasons = new ArrayList<>(reasons(evidence.of(r.position()), REASONS));
            session.often(r.position()).map(CausesText::often).ifPresent(reasons::add);
            if (!reasons.isEmpty() && reasons.equals(above)) {
                console.line("      reasons as above");
            } else {
                reasons.forEach(reason -> console.text(INDENT + reason.substring(0, 2), reason.substring(2)));
            }
            above = reasons;
        }
    }

    private static String often(Session.Often o) {
        return String.format(
                Locale.ROOT,
                "%s before any answer %.1f %% here, shipped %.1f %%",
                o.here() > o.shipped() ? "+" : "−",
                100 * o.here(),
                100 * o.shipped());
    }

    private static String range(double low, double high) {
        long from = Math.round(100 * low);
        long to = Math.round(100 * high);
        return from == to ? FindingText.percent(high) : from + "–" + to + " %";
    }

    private void line(String number, String words, String share, String range) {
        List<String> lines = Lines.wrap(words, WORDS - 2);
        for (int i = 0; i < lines.size() - 1; i++) {
            console.line("  " + (i == 0 ? number : "  ") + lines.get(i));
        }
        String last = (lines.size() == 1 ? number : "  ") + lines.get(lines.size() - 1);
        console.line(String.format("  %s  %5s   %s", Lines.padded(last, WORDS), share, range)
                .stripTrailing());
    }

    /** The loudest observations for (+) and against (−). */
    private List<String> reasons(List<Evidence.Weight> weights, int most) {
        return weights.stream()
                .filter(w -> w.strength() != Evidence.Strength.NONE)
                .limit(most)
                .map(w -> (w.speaksFor() ? "+ " : "− ") + said(w.observation()) + " ("
                        + w.strength().name().toLowerCase(Locale.ROOT) + ")")
                .toList();
    }

    private String said(Observation o) {
        String reading = Earlier.reading(o.about());
        return session.casework()
                .asking(reading)
                .map(a -> o.about() + ": " + Answers.words(a, o))
                .orElse(o.about() + " did not help");
    }

    /** Says so when not one of the leading causes explains everything. */
    private void odd() {
        if (session.pairsTried() > 0) {
            console.line("");
            console.text("", "Pairs of causes were thought of as well: " + session.pairsTried() + ".");
        }
        if (session.isExplained()) {
            return;
        }
        console.line("");
        console.line("None of the causes I know explains all of this well.");
        session.plausibility().odd().stream()
                .limit(2)
                .forEach(o -> console.text(
                        "  ▲ ",
                        said(o.observation()) + " is odd beside the best of them ("
                                + posterior.best().words()
                                + "). Check that reading again."));
    }

    /** Causes that nothing this person can still ask will part. */
    void apart(Advice advice) {
        for (Alike a : advice.alike()) {
            List<String> names = a.positions().stream()
                    .filter(p -> posterior.share(p) >= Session.WORTH_NAMING)
                    .map(posterior::words)
                    .toList();
            if (names.size() > 1) {
                String where = session.who() == Who.OWNER ? " with what an owner can see" : "";
                console.line("");
                console.text("", "Cannot be told apart" + where + ": " + String.join("; ", names) + ".");
                a.parting().ifPresent(q -> console.text("  What would: ", q.words() + "."));
            }
        }
    }

    /** Why, or why not, causes with {@code part} in their names. */
    void why(String part, boolean not) {
        List<Posterior.Ranked> meant = posterior.ranking().stream()
                .filter(r -> r.words().contains(part) || r.id().contains(part))
                .limit(3)
                .toList();
        if (meant.isEmpty()) {
            console.line("No cause has \"" + part + "\" in its name. Type causes to see them.");
        }
        for (Posterior.Ranked r : meant) {
            int best = posterior.best().position();
            boolean compare = not && r.position() != best && r.position() != posterior.somethingElse();
            String beside = compare ? ", beside " + posterior.words(best) : "";
            console.text("  ", r.words() + ", " + FindingText.percent(r.share()) + beside);
            List<Evidence.Weight> weights = compare ? evidence.of(r.position(), best) : evidence.of(r.position());
            if (weights.stream().allMatch(w -> w.strength() == Evidence.Strength.NONE)) {
                console.line("      nothing known speaks for or against it; what is left is how often it happens");
            }
            reasons(weights, Integer.MAX_VALUE)
                    .forEach(reason -> console.text(INDENT + reason.substring(0, 2), reason.substring(2)));
            if (compare) {
                parting(r.position(), best);
            }
        }
    }

    private void parting(int one, int other) {
        List<Parting> open = Parting.of(posterior, one, other);
        if (open.isEmpty()) {
            console.line(INDENT + "nothing that can still be asked would part the two");
        }
        open.stream()
                .filter(p -> p.question().effort().allowed(session.who()))
                .findFirst()
                .or(() -> open.stream().findFirst())
                .ifPresent(p -> console.text(
                        INDENT + "what would part the two: ",
                        p.question().words() + " "
                                + People.mark(p.question().effort().who())));
    }
}
