package wetside.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Session;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.Step;
import wetside.page.Level;
import wetside.units.Display;

/** Puts the page of fault finding together. */
final class FaultViews {
    private static final int OTHERS = 8;

    private final FaultCase about;
    private final Libraries.Ground ground;
    private final Who who;
    private final Display units;
    private final Observations observations;
    private final String person;

    FaultViews(FaultCase about, Libraries.Ground ground, Who who, Display units, String person) {
        this.about = about;
        this.ground = ground;
        this.who = who;
        this.units = units;
        this.person = person;
        observations = about.observations(ground.casework);
    }

    Session session() {
        return ground.session(observations, who, about.rates());
    }

    /** @param wanted the step somebody chose, "" for the best */
    FaultView view(String wanted) {
        Session session = session();
        Session early = session == null ? ground.look(observations, who, about.rates()) : session;
        FaultCauses causes = early == null ? null : new FaultCauses(early, units);
        FaultView.Step step = null;
        Optional<Asking> chosen =
                ground.casework.asking(wanted).filter(a -> a.question().effort().allowed(who));
        if (session != null) {
            step = step(session, wanted, chosen);
        } else if (chosen.isPresent()) {
            step = new FaultSteps(ground.casework, null, about, units, who)
                    .asking(chosen.get(), null, about.link(), List.of());
        }
        boolean refused = !wanted.isEmpty()
                && ground.casework
                        .asking(wanted)
                        .filter(a -> !a.question().effort().allowed(who))
                        .isPresent();
        return new FaultView(
                about,
                people(wanted),
                known(causes),
                step,
                causes == null ? null : causes.of(early.advice()),
                session == null || !wanted.isEmpty() ? null : FaultCard.of(session, about, units),
                session == null ? List.of() : odd(session, causes),
                sharp(),
                seen(),
                refused ? "That step is not for whoever is on the line now: this one is." : "",
                person,
                about.rates().view());
    }

    private List<FaultView.Person> people(String wanted) {
        String[] words = {"Owner on the phone", "Technician", "Electrician"};
        String[] brief = {"Owner", "Technician", "Electrician"};
        List<FaultView.Person> people = new ArrayList<>();
        for (Who w : Who.values()) {
            String link = wanted.isEmpty()
                    ? about.link("who", Spoken.word(w))
                    : about.link("step", wanted, "who", Spoken.word(w));
            people.add(new FaultView.Person(Spoken.level(w), words[w.ordinal()], brief[w.ordinal()], link, w == who));
        }
        return people;
    }

    private List<FaultView.Known> known(FaultCauses causes) {
        Map<String, Observation> understood = new HashMap<>();
        observations.forEach(o -> understood.put(o.about(), o));
        List<FaultView.Known> rows = new ArrayList<>();
        for (FaultCase.Known k : about.known()) {
            Observation o = understood.get(k.asked());
            Optional<Asking> asking = ground.casework.asking(k.asked());
            String answer = o == null
                    ? k.said()
                    : asking.map(a -> Spoken.answer(a, o, k.said(), units)).orElse("Done, still there");
            boolean unknown = o == null || o.kind() == Observation.Kind.UNKNOWN;
            String told = o == null ? "not understood" : unknown ? "nothing" : causes == null ? "" : causes.told(o);
            rows.add(new FaultView.Known(
                    k.asked(),
                    Spoken.capital(k.asked()),
                    answer,
                    told,
                    asking.isPresent() ? about.link("step", k.asked()) : "",
                    unknown));
        }
        return rows;
    }

    private List<FaultView.Line> odd(Session session, FaultCauses causes) {
        return session.isExplained()
                ? List.of()
                : session.plausibility().odd().stream()
                        .limit(2)
                        .map(o -> new FaultView.Line("▲", Spoken.capital(causes.said(o.observation())), ""))
                        .toList();
    }

    FaultView.Sharp sharp() {
        Libraries.Sharpness s = ground.sharpness();
        long percent = Math.min(100, Math.round(100.0 * s.done() / Math.max(1, s.total())));
        String left = Double.isNaN(s.minutes())
                ? ""
                : s.minutes() < 1 ? ", less than a minute to go" : ", about " + Math.round(s.minutes()) + " min to go";
        String words;
        if (s.broken()) {
            words = "The twin of this machine failed; the log says more.";
        } else if (s.drawn() >= s.wanted()) {
            words = "From " + s.drawn() + " simulated machines for each cause";
        } else if (s.drawn() == 0) {
            words = (s.looking() ? "First look: " : "") + s.done() + " of " + s.total() + " runs of the twin" + left;
        } else {
            words = "From " + s.drawn() + " simulated machines for each cause, getting sharper: " + percent + " % of " + s.wanted()
                    + left;
        }
        return new FaultView.Sharp(s.drawn() >= s.wanted() || s.broken(), s.drawn() == 0, s.drawn(), words, percent);
    }

    /** All that this person may be asked or look at, for what was seen out of turn. */
    private List<FaultView.Seen> seen() {
        return ground.casework.askings().stream()
                .filter(a -> a.question().effort().allowed(who))
                .map(a -> seen(a, ""))
                .toList();
    }

    private FaultView.Seen seen(Asking a, String detail) {
        return new FaultView.Seen(
                Spoken.capital(a.question().id()),
                about.link("step", a.question().id()),
                Spoken.level(a.question().effort().who()),
                detail);
    }

    private FaultView.Step step(Session session, String wanted, Optional<Asking> chosen) {
        Advice advice = session.advice();
        Step next = session.next(advice);
        if (!wanted.isEmpty()) {
            next = advice.steps().stream()
                    .filter(s -> s.id().equals(wanted) || wanted.equals(CALL) && s.sort() == Step.Sort.CALL_IN)
                    .findFirst()
                    .orElse(chosen.isPresent() ? null : next);
        }
        FaultSteps steps = new FaultSteps(ground.casework, session, about, units, who);
        String another = another(advice, next);
        List<FaultView.Seen> others = others(advice, next);
        return next == null
                ? steps.asking(chosen.orElseThrow(), null, another, others)
                : switch (next.sort()) {
                    case ASK -> steps.asking(ground.casework.asking(next.id()).orElseThrow(), next, another, others);
                    case REPAIR -> steps.repair(next, another, others);
                    case CALL_IN -> steps.callIn(another, others);
                };
    }

    private static final String CALL = "hand over";

    private String another(Advice advice, Step here) {
        int at = here == null ? -1 : advice.steps().indexOf(here);
        Step other = advice.steps().get((at + 1) % advice.steps().size());
        return about.link("step", id(other));
    }

    private static String id(Step step) {
        return step.sort() == Step.Sort.CALL_IN ? CALL : step.id();
    }

    private List<FaultView.Seen> others(Advice advice, Step here) {
        return advice.steps().stream()
                .filter(s -> s != here)
                .limit(OTHERS)
                .map(s -> new FaultView.Seen(
                        Spoken.capital(s.words()),
                        about.link("step", id(s)),
                        Level.values()[s.effort().who().ordinal()],
                        Math.max(1, Math.round(s.minutes())) + " min"))
                .toList();
    }

    /** What is being typed, null when it is nothing or no answer yet. */
    static Observation typed(Asking asking, String typed, Display units) {
        String text = typed.strip().replace(',', '.').replace('−', '-');
        if (text.isEmpty()) {
            return null;
        }
        try {
            return Answers.parse(asking, said(asking, text, units));
        } catch (Answers.NotAnAnswer e) {
            return null;
        }
    }

    /** A number as it is kept: with its unit. */
    static String said(Asking asking, String typed, Display units) {
        String text = typed.strip().replace(',', '.').replace('−', '-');
        return text.matches("[+-]?\\d+(\\.\\d*)?")
                ? (text + " " + units.unit(asking.dimension()).symbol()).strip()
                : text;
    }
}
