package wetside.bench;

import java.time.ZonedDateTime;
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
    /** From this part of the causes on, those that have been run choose the next question. */
    private static final int SOME = 3;

    private final FaultCase about;
    private final Ground ground;
    private final Who who;
    private final Display units;
    private final Knowledge knowledge;
    private final Observations observations;
    private final String person;

    FaultViews(FaultCase about, Ground ground, Who who, Display units, String person) {
        this.about = about;
        this.ground = ground;
        this.who = who;
        this.units = units;
        this.person = person;
        knowledge = about.knowledge(ground.casework, who);
        observations = knowledge.today();
    }

    /** Null before all causes have been run once. */
    Session session() {
        return ground.session(knowledge);
    }

    Knowledge knowledge() {
        return knowledge;
    }

    /**
     * What somebody wants to see.
     *
     * @param step  the step chosen, "" for the best
     * @param why   the cause to be explained, "" for none
     * @param rest  the causes that are not named
     * @param today for dates
     */
    record Wanted(String step, String why, boolean rest, ZonedDateTime today) {}

    FaultView view(Wanted wanted) {
        Session session = session();
        Session early = session == null ? ground.begun(knowledge) : session;
        FaultCauses causes = early == null ? null : new FaultCauses(early, about, units, session == null);
        FaultWhy reasons = session == null ? null : new FaultWhy(session, about, units, causes);
        FaultView.Why why = reasons == null || wanted.why().isEmpty() ? null : reasons.of(wanted.why());
        FaultView.Rest rest = reasons == null || !wanted.rest() ? null : reasons.rest();
        boolean plain = wanted.step().isEmpty() && why == null && rest == null;
        return new FaultView(
                about,
                people(wanted.step()),
                known(causes),
                why != null || rest != null ? null : step(session, early, wanted.step()),
                causes == null ? null : causes.of(early.advice()),
                session == null || !plain ? null : FaultCard.of(session, about, units),
                session == null ? null : FaultOdd.of(session, about, causes, ground.trial(knowledge)),
                FaultNormal.of(
                        about,
                        ground.casework,
                        units,
                        wanted.today().getZone(),
                        wanted.today().getYear()),
                why,
                rest,
                sharp(),
                seen(),
                isRefused(wanted.step()) ? "That step is not for whoever is on the line now: this one is." : "",
                person,
                about.rates().view());
    }

    private boolean isRefused(String wanted) {
        return ground.casework
                .asking(wanted)
                .filter(a -> !a.question().effort().allowed(who))
                .isPresent();
    }

    private FaultView.Step step(Session session, Session early, String wanted) {
        Optional<Asking> chosen =
                ground.casework.asking(wanted).filter(a -> a.question().effort().allowed(who));
        if (session != null) {
            return step(session, wanted, chosen);
        }
        return early == null
                        || exact(wanted).isPresent()
                        || early.casework().candidates().size()
                                < ground.casework.candidates().size() / SOME
                ? first(chosen)
                : begun(early, chosen);
    }

    /** While the twin has hardly run: what is asked early whatever it is; null when nothing of it is left. */
    private FaultView.Step first(Optional<Asking> chosen) {
        List<FaultFirst.First> first = FaultFirst.of(ground.casework, about, observations, who);
        FaultFirst.First best =
                chosen.map(a -> new FaultFirst.First(a, false)).orElse(first.isEmpty() ? null : first.get(0));
        if (best == null) {
            return null;
        }
        List<FaultView.Seen> others = first.stream()
                .filter(f -> f.asking() != best.asking())
                .map(f -> seen(
                        f.asking(),
                        Math.max(1, Math.round(f.asking().question().effort().minutes())) + " min"))
                .toList();
        String reason = chosen.isPresent()
                ? "Because you asked for it."
                : best.meant()
                        ? MEANT + " The twin has not run this machine yet."
                        : "It costs little and opens nothing, so it is asked early whatever the causes turn out to be.";
        return new FaultSteps(ground.casework, null, about, units, who)
                .asking(
                        best.asking(),
                        null,
                        reason,
                        others.isEmpty() ? about.link() : others.get(0).link(),
                        others);
    }

    /** By the causes that have been run so far: the best question among them; repairs wait until all are. */
    private FaultView.Step begun(Session early, Optional<Asking> chosen) {
        List<Step> asks = early.advice().steps().stream()
                .filter(s -> s.sort() == Step.Sort.ASK)
                .toList();
        Optional<Step> best = chosen.isPresent()
                ? asks.stream()
                        .filter(s -> s.id().equals(chosen.get().question().id()))
                        .findFirst()
                : asks.stream().findFirst();
        if (best.isEmpty()) {
            return first(chosen);
        }
        List<FaultView.Seen> others = asks.stream()
                .filter(s -> s != best.get())
                .limit(OTHERS)
                .map(this::other)
                .toList();
        return new FaultSteps(early.casework(), early, about, units, who)
                .asking(
                        ground.casework.asking(best.get().id()).orElseThrow(),
                        best.get(),
                        "",
                        others.isEmpty() ? about.link() : others.get(0).link(),
                        others);
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

    FaultView.Sharp sharp() {
        Sharpness s = ground.sharpness();
        PairTrial trial = ground.trial(knowledge);
        boolean running = trial != null && !trial.isOver();
        long percent = Math.min(100, Math.round(100.0 * s.done() / Math.max(1, s.total())));
        String token = s.drawn()
                + (s.drawn() == 0 ? "." + s.causes() : "")
                + (s.paused() ? " paused" : "")
                + (trial == null ? "" : running ? " pairs " + trial.done() : " pairs");
        return new FaultView.Sharp(
                s.isOver() && !running, token, s.drawn() == 0, s.paused(), words(s, percent), percent);
    }

    private static String words(Sharpness s, long percent) {
        if (s.broken()) {
            return "The twin of this machine failed; the log says more.";
        }
        if (s.drawn() == 0) {
            String causes =
                    Math.max(s.causes(), s.done() * s.all() / Math.max(1, s.total())) + " of " + s.all() + " causes";
            return s.paused() ? "Stopped after " + causes : causes + left(s.minutes());
        }
        String from = "From " + s.drawn() + " simulated machines for each cause";
        if (s.drawn() >= s.wanted()) {
            return "From " + s.standing();
        }
        return s.paused()
                ? from + "; stopped there"
                : from + ", getting sharper: " + percent + " % of " + s.wanted() + left(s.minutes());
    }

    private static String left(double minutes) {
        if (Double.isNaN(minutes)) {
            return "";
        }
        long seconds = Math.max(5, 5 * Math.round(minutes * 12));
        return minutes < 2 ? ", about " + seconds + " s left" : ", about " + Math.round(minutes) + " min left";
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

    /**
     * The owner's words are no reading yet. So before anything is known they are made exact: what they are about is asked
     * first, whatever the causes would have asked.
     */
    private Optional<Asking> exact(String wanted) {
        return !wanted.isEmpty() || !about.known().isEmpty()
                ? Optional.empty()
                : FaultFirst.meant(ground.casework, about, observations, who).stream()
                        .findFirst();
    }

    private FaultView.Step step(Session session, String wanted, Optional<Asking> chosen) {
        Advice advice = session.advice();
        Step next = session.next(advice);
        Optional<Asking> exact = exact(wanted);
        if (exact.isPresent()) {
            Step advised = advice.steps().stream()
                    .filter(s -> s.id().equals(exact.get().question().id()))
                    .findFirst()
                    .orElse(null);
            return new FaultSteps(ground.casework, session, about, units, who)
                    .asking(exact.get(), advised, MEANT, another(advice, null), others(advice, advised));
        }
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
                ? steps.asking(chosen.orElseThrow(), null, "Because you asked for it.", another, others)
                : switch (next.sort()) {
                    case ASK ->
                        steps.asking(ground.casework.asking(next.id()).orElseThrow(), next, "", another, others);
                    case REPAIR -> steps.repair(next, another, others);
                    case CALL_IN -> steps.callIn(another, others);
                };
    }

    private static final String CALL = "hand over";
    private static final String MEANT = "The owner’s words are about this. First they are made exact.";

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
                .map(this::other)
                .toList();
    }

    private FaultView.Seen other(Step s) {
        return new FaultView.Seen(
                Spoken.capital(s.words()),
                about.link("step", id(s)),
                Level.values()[s.effort().who().ordinal()],
                Math.max(1, Math.round(s.minutes())) + " min");
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
