package wetside.card;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import wetside.cabinet.Cabinet;
import wetside.cabinet.CabinetDrawing;
import wetside.cabinet.Fitted;
import wetside.casework.Installed;
import wetside.diagnosis.Who;
import wetside.machine.Machine;
import wetside.machine.Side;
import wetside.machine.Wording;
import wetside.page.Block;
import wetside.page.Level;
import wetside.page.Sheet;

/** A card as a printable sheet. */
public final class CardSheet {
    /** Width of a sheet's text, in the units of drawings. */
    private static final double SHEET = 664;

    private final Card card;
    private final CardWords words;
    private final Installed installed;
    private final Optional<Cabinet> cabinet;

    public CardSheet(Card card, Installed installed, Optional<Cabinet> cabinet) {
        this.card = card;
        this.installed = installed;
        this.cabinet = cabinet;
        words = new CardWords(card);
    }

    public Sheet sheet() {
        List<Sheet.Section> sections = new ArrayList<>();
        List<Block> first = new ArrayList<>();
        List<Block.Fact> facts = new ArrayList<>();
        words.facts().forEach((name, text) -> facts.add(new Block.Fact(name, text)));
        first.add(new Block.Facts(facts));
        first.add(caution());
        drawings().ifPresent(first::add);
        sections.add(new Sheet.Section("The part", first));
        if (!card.fails().isEmpty()) {
            sections.add(new Sheet.Section("How it fails", fails()));
        }
        if (!card.checks().isEmpty()) {
            sections.add(new Sheet.Section(
                    "How to test it",
                    words.mayWork()
                            ? List.of(
                                    new Block.Prose(
                                            Wording.sentence(card.words().test())),
                                    checks())
                            : List.of(checks())));
        }
        return new Sheet(words.title(), "part card", plate(), "", sections, note());
    }

    private Sheet.Plate plate() {
        Machine.Identity m = installed.machine().identity();
        String number = card.part().place().part();
        return Sheet.Plate.of(
                "Machine", m.title(),
                "Making", m.making(),
                "Fed from", installed.source(),
                "Part number", number.isEmpty() ? "none given" : number);
    }

    private Block caution() {
        List<String> parts = words.caution();
        Who who = Cards.who(card.words().caution().who());
        if (!card.reader().covers(card.level())) {
            return new Block.Caution(
                    level(card.level()),
                    "Leave it to a " + CardWords.who(card.level()),
                    "An owner does not open the machine and does not work on this part.");
        }
        return new Block.Caution(level(who.covers(card.level()) ? who : card.level()), parts.get(0), parts.get(1));
    }

    /** Where it is: from where it is seen best, and from beside that. */
    private Optional<Block> drawings() {
        if (card.fitted().isEmpty() || cabinet.isEmpty()) {
            return Optional.empty();
        }
        List<Block.Drawing> drawings = new ArrayList<>();
        for (Side side : sides(cabinet.get(), card.fitted().get())) {
            CabinetDrawing drawing = drawing(card, cabinet.get(), CabinetDrawing.Room.HALF);
            String caption = card.reader() == Who.OWNER ? drawing.captionShut(side) : drawing.caption(side);
            drawings.add(new Block.Drawing(drawing.bare(side), caption, caption, drawing.bareWidth(side) / SHEET));
        }
        return Optional.of(new Block.Drawings(drawings));
    }

    /** The part pointed out, numbers for it, what it could be taken for and what comes off first. */
    public static CabinetDrawing drawing(Card card, Cabinet cabinet, CabinetDrawing.Room room) {
        Set<String> named = new LinkedHashSet<>(Set.of(card.part().id()));
        card.lookAlike().ifPresent(l -> named.add(l.other().id()));
        card.reach().ifPresent(r -> r.first().forEach(f -> named.add(f.id())));
        return new CabinetDrawing(cabinet, card.fitted(), named, room);
    }

    /** The side it is best seen from, and the one beside it from which more of it is free. */
    public static List<Side> sides(Cabinet cabinet, Fitted part) {
        Side best = cabinet.best(part);
        Side beside = best;
        double most = -1;
        for (Side side : cabinet.sides()) {
            double free = cabinet.from(side).of(part).free();
            if (side.axis() != best.axis() && free > most) {
                beside = side;
                most = free;
            }
        }
        return List.of(best, beside);
    }

    private Block fails() {
        List<Block.Row> rows = new ArrayList<>();
        for (Card.Failure f : card.fails()) {
            String shows =
                    String.join("; ", f.notices().stream().map(words::notice).toList());
            String says =
                    card.reader() == Who.OWNER ? f.words().owner() : f.words().says();
            rows.add(new Block.Row(
                    level(words.mender(f)),
                    false,
                    List.of(words.failure(f) + ": " + says, shows.isEmpty() ? "no reading tells it clearly" : shows)));
        }
        return new Block.Table(List.of(Block.Column.words("What happens"), Block.Column.words("What shows it")), rows);
    }

    private Block checks() {
        List<Block.Row> rows = new ArrayList<>();
        for (Card.Check c : card.checks()) {
            rows.add(new Block.Row(
                    level(c.asking().question().effort().who()),
                    c.direct(),
                    List.of(
                            Wording.capital(c.asking().procedure().says()),
                            c.expected().words(),
                            String.format(Locale.ROOT, "%.0f min", c.minutes()))));
        }
        return new Block.Table(
                List.of(
                        Block.Column.words("Check"),
                        Block.Column.words("Reads when all is well"),
                        Block.Column.figures("Takes")),
                rows);
    }

    private String note() {
        String beyond = card.withheld() == 0 ? "" : " More checks are for others than the reader.";
        return "Readings are what the machine's twin gives: 5 to 95 % of machines, tolerances × 1.3, instrument included."
                + " Shares of failures are assumed rates. Local codes come first." + beyond;
    }

    private static Level level(Who who) {
        return Level.values()[who.ordinal()];
    }
}
