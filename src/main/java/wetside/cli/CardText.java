package wetside.cli;

import java.util.List;
import java.util.Locale;
import wetside.card.Card;
import wetside.card.CardWords;
import wetside.casework.Installed;
import wetside.diagnosis.Who;

/** A part card on the screen. */
final class CardText {
    private static final int LABEL = 21;

    private final Card card;
    private final CardWords words;
    private final Installed installed;
    private final Console console;

    CardText(Card card, Installed installed, Console console) {
        this.card = card;
        this.installed = installed;
        this.console = console;
        words = new CardWords(card);
    }

    void print() {
        console.line(FindingText.heading(installed));
        console.line("");
        console.line(words.title() + "  " + People.mark(card.level()) + " " + CardWords.who(card.level()));
        console.line("");
        words.facts().forEach((name, text) -> console.text(Lines.padded(name, LABEL), text));
        caution();
        fails();
        checks();
    }

    private void caution() {
        if (card.reader().covers(card.level())) {
            List<String> parts = words.caution();
            console.text(
                    Lines.padded("Caution " + People.mark(card.level()), LABEL),
                    parts.get(0) + (parts.get(1).isEmpty() ? "." : ". " + parts.get(1)));
        }
    }

    private void fails() {
        if (card.fails().isEmpty()) {
            return;
        }
        console.line("");
        console.line("How it fails, the most frequent first (rates are assumed)");
        for (Card.Failure f : card.fails()) {
            boolean owner = card.reader() == Who.OWNER;
            console.text(
                    "  ",
                    words.failure(f) + ": "
                            + (owner ? f.words().owner() : f.words().says()) + ".");
            f.notices().forEach(n -> console.text("      shows: ", words.notice(n)));
            if (f.notices().isEmpty()) {
                console.text("      shows: ", "no reading tells it clearly");
            }
        }
    }

    private void checks() {
        if (!card.checks().isEmpty()) {
            console.line("");
            console.text("", words.test() + "What is read when all is well:");
            Table table = new Table("lllr").most(1, 56).most(2, 24);
            for (Card.Check c : card.checks()) {
                table.row(
                        People.mark(c.asking().question().effort().who()),
                        c.asking().procedure().says(),
                        c.expected().words(),
                        String.format(Locale.ROOT, "%.0f min", c.minutes()));
            }
            table.print(console, "  ");
        }
        if (card.withheld() > 0) {
            console.line("");
            console.line(words.beyond());
        }
    }
}
