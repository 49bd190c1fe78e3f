package wetside.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wetside.card.Card;
import wetside.card.CardWords;
import wetside.casework.Installed;

/** A part card for programs. */
final class CardJson {
    private CardJson() {}

    static Map<String, Object> of(Card card, Installed installed) {
        Map<String, Object> m = Json.machine(installed);
        m.put("number", card.number().isPresent() ? card.number().getAsInt() : null);
        m.put("component", card.part().id());
        m.put("name", card.part().name());
        m.put("kind", card.part().kind().name());
        m.put("who", People.word(card.level()));
        m.put("facts", new CardWords(card).facts());
        card.lookAlike().ifPresent(l -> m.put("lookAlike", l.other().id()));
        card.reach().ifPresent(r -> {
            m.put("panels", r.panels().stream().map(p -> p.id()).toList());
            m.put("comesOffFirst", r.first().stream().map(f -> f.id()).toList());
        });
        m.put("fails", card.fails().stream().map(CardJson::failure).toList());
        m.put("checks", card.checks().stream().map(CardJson::check).toList());
        m.put("makings", card.makings());
        return m;
    }

    private static Map<String, Object> failure(Card.Failure f) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("fault", f.name());
        m.put("share", Json.number(f.share()));
        m.put("says", f.words().says());
        m.put("owner", f.words().owner());
        List<Map<String, Object>> shows = f.notices().stream()
                .map(n -> {
                    Map<String, Object> one = new LinkedHashMap<>();
                    one.put("reading", n.asking().procedure().id());
                    one.put("normally", n.normally().words());
                    one.put("then", n.then().words());
                    return one;
                })
                .toList();
        m.put("shows", shows);
        return m;
    }

    private static Map<String, Object> check(Card.Check c) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("reading", c.asking().procedure().id());
        m.put("says", c.asking().procedure().says());
        m.put("who", People.word(c.asking().question().effort().who()));
        m.put("expected", c.expected().words());
        m.put("minutes", Json.number(c.minutes()));
        m.put("readsThisPart", c.direct());
        return m;
    }
}
