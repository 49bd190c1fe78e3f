package wetside.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import wetside.diagnosis.Who;
import wetside.machine.Wording;

/** The sentences of a card, the same in text and on paper. */
public final class CardWords {
    private static final List<String> WHO = List.of("owner", "technician", "qualified electrician");

    private final Card card;

    public CardWords(Card card) {
        this.card = card;
    }

    public static String who(Who who) {
        return WHO.get(who.ordinal());
    }

    /** "16 Over-pressure valve". */
    public String title() {
        String name = Wording.capital(card.part().name());
        return card.number().isPresent() ? card.number().getAsInt() + " " + name : name;
    }

    /** Name and text of each fact, in the order of reading. */
    public Map<String, String> facts() {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("What for", Wording.capital(card.words().whatFor()) + ".");
        facts.put("Know it", knowIt());
        card.lookAlike().ifPresent(other -> facts.put("Not to be taken for", lookAlike(other)));
        facts.put("Who may", whoMay());
        if (mayWork()) {
            facts.put("Reach it", reach());
        }
        if (!card.settings().isEmpty() && mayWork()) {
            facts.put("Set to", settings());
        }
        facts.put("Part", makings());
        return facts;
    }

    boolean mayWork() {
        return card.reader().covers(card.level());
    }

    private String knowIt() {
        String mark = card.part().place().mark();
        return Wording.sentence(mark.isEmpty() ? card.words().knowIt() : mark);
    }

    private static String lookAlike(LookAlike other) {
        String kind = other.sameKind() ? "the same kind" : "much the same shape";
        return Wording.capital(other.other().name()) + " (" + other.other().number() + "), " + kind + ": "
                + String.join("; ", other.differs()) + ".";
    }

    private String whoMay() {
        if (mayWork()) {
            return card.level() == Who.OWNER
                    ? "The owner may use and clean it; each failure below says who mends it."
                    : Wording.capital(who(card.level())) + ".";
        }
        return "Not for an owner: this part is looked after by a " + who(card.level())
                + (card.part().place().behind().isEmpty() ? "." : ", the case stays shut.");
    }

    private String reach() {
        if (card.reach().isEmpty()) {
            List<String> behind = card.part().place().behind();
            return behind.isEmpty()
                    ? "Outside the case."
                    : "Behind " + String.join(" and ", behind) + "; the machine file does not say where.";
        }
        return Wording.capital(card.reach().get().words()) + ".";
    }

    private String settings() {
        return card.settings().stream()
                        .map(s -> s.name() + " " + s.value() + " (" + s.source() + ")")
                        .collect(Collectors.joining("; "))
                + ".";
    }

    /** Its part number here, and what other makings have. */
    private String makings() {
        Card.Making own =
                card.makings().stream().filter(Card.Making::own).findFirst().orElseThrow();
        String number = own.part().isEmpty() ? "no part number in the machine file" : own.part();
        List<String> words = new ArrayList<>(List.of(Wording.capital(own.making()) + ": " + number));
        Map<String, List<String>> others = new LinkedHashMap<>();
        for (Card.Making m : card.makings()) {
            if (!m.own()) {
                others.computeIfAbsent(other(m, own), w -> new ArrayList<>()).add(m.making());
            }
        }
        others.forEach((what, in) ->
                words.add(Wording.capital(others.size() == 1 && in.size() > 1 ? "all others" : String.join(", ", in))
                        + ": " + what));
        return String.join(". ", words) + ".";
    }

    private static String other(Card.Making m, Card.Making own) {
        boolean samePart = m.part().isEmpty() || m.part().equals(own.part());
        if (samePart) {
            return m.differs().isEmpty() ? "the same" : m.differs();
        }
        return m.differs().isEmpty() ? m.part() : m.part() + ", " + m.differs();
    }

    /** "Held open by grit (38 % of its failures; mended by a technician)". */
    public String failure(Card.Failure f) {
        return String.format(
                Locale.ROOT,
                "%s (%.0f %% of its failures; mended by %s)",
                Wording.capital(f.name()),
                100 * f.share(),
                mender(f) == Who.OWNER ? "the owner" : "a " + who(mender(f)));
    }

    /** The least trained person who may put it right: behind a panel never the owner. */
    Who mender(Card.Failure f) {
        Who said = Cards.who(f.words().remedy().who());
        return said == Who.OWNER && !card.part().place().behind().isEmpty() ? Who.TECHNICIAN : said;
    }

    /** What shows a failure: "look at the drain tube: runs (normally dry)". */
    public String notice(Card.Notice n) {
        return n.asking().procedure().says() + ": " + n.then().words() + " (normally "
                + n.normally().words() + ")";
    }

    /** How its kind is tested, a sentence with a blank after it; nothing for who may not work on it. */
    public String test() {
        return mayWork() ? "How to test it: " + card.words().test() + ". " : "";
    }

    /** That others may check more, empty when there is no more. */
    public String beyond() {
        return switch (card.withheld()) {
            case 0 -> "";
            case 1 -> "One more check is for others: --who technician or qualified.";
            default -> card.withheld() + " more checks are for others: --who technician or qualified.";
        };
    }

    /** The rule of a caution and how to keep it. */
    public List<String> caution() {
        String says = card.words().caution().says();
        int end = says.indexOf("; ");
        String rule = end < 0 ? says : says.substring(0, end);
        return List.of(Wording.capital(rule), end < 0 ? "" : Wording.sentence(says.substring(end + 2)));
    }
}
