package wetside.bench;

import java.util.List;
import java.util.Optional;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.casework.Session;
import wetside.diagnosis.Who;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.Step;
import wetside.machine.Wording;
import wetside.page.Level;
import wetside.units.Display;

/** The next step: what is advised, what somebody chose, or, while the twin still runs, what is asked early anyway. */
final class FaultNext {
    private static final int OTHERS = 8;
    /** From this part of the causes on, those that have been run choose the next question. */
    private static final int SOME = 3;

    /** Words are made exact by a question that tells causes apart, by so many bits at least. */
    private static final double TELLS = 0.02;

    private static final String CALL = "hand over";
    private static final String MEANT = "The owner’s words are about this. First they are made exact.";

    private final FaultCase about;
    private final Casework casework;
    private final Knowledge knowledge;
    private final Who who;
    private final Display units;

    FaultNext(FaultCase about, Casework casework, Knowledge knowledge, Display units) {
        this.about = about;
        this.casework = casework;
        this.knowledge = knowledge;
        this.units = units;
        who = knowledge.who();
    }

    /**
     * Null when nothing is left to ask before the twin has run.
     *
     * @param session null before all causes have been run once
     * @param early   of the causes that have been run; null before there are some
     * @param wanted  the step somebody chose, "" for the best
     */
    FaultView.Step of(Session session, Session early, String wanted) {
        Optional<Asking> chosen =
                casework.asking(wanted).filter(a -> a.question().effort().allowed(who));
        if (session != null) {
            return step(session, wanted, chosen);
        }
        return early == null
                        || !exact(wanted).isEmpty()
                        || early.casework().candidates().size()
                                < casework.candidates().size() / SOME
                ? first(chosen)
                : begun(early, chosen);
    }

    /** While the twin has hardly run: what is asked early whatever it is; null when nothing of it is left. */
    private FaultView.Step first(Optional<Asking> chosen) {
        List<FaultFirst.First> first = FaultFirst.of(casework, about, knowledge.today(), who);
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
        return new FaultSteps(casework, null, about, units, who)
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
                        casework.asking(best.get().id()).orElseThrow(),
                        best.get(),
                        "",
                        others.isEmpty() ? about.link() : others.get(0).link(),
                        others);
    }

    FaultView.Seen seen(Asking a, String detail) {
        return new FaultView.Seen(
                Wording.capital(units.prose(a.question().id())),
                about.link("step", a.question().id()),
                Spoken.level(a.question().effort().who()),
                detail);
    }

    /**
     * The owner's words are no reading yet. So before anything is known they are made exact: what they are about is asked
     * first, whatever the causes would have asked.
     */
    private List<Asking> exact(String wanted) {
        return !wanted.isEmpty() || !about.known().isEmpty()
                ? List.of()
                : FaultFirst.meant(casework, about, knowledge.today(), who);
    }

    private FaultView.Step step(Session session, String wanted, Optional<Asking> chosen) {
        Advice advice = session.advice();
        Step next = session.next(advice);
        for (Asking exact : exact(wanted)) {
            Optional<Step> advised = advice.steps().stream()
                    .filter(s -> s.id().equals(exact.question().id()))
                    .filter(s -> s.bits() > TELLS)
                    .findFirst();
            if (advised.isPresent()) {
                return new FaultSteps(casework, session, about, units, who)
                        .asking(exact, advised.get(), MEANT, another(advice, null), others(advice, advised.get()));
            }
        }
        if (!wanted.isEmpty()) {
            next = advice.steps().stream()
                    .filter(s -> s.id().equals(wanted) || wanted.equals(CALL) && s.sort() == Step.Sort.CALL_IN)
                    .findFirst()
                    .orElse(chosen.isPresent() ? null : next);
        }
        FaultSteps steps = new FaultSteps(casework, session, about, units, who);
        String another = another(advice, next);
        List<FaultView.Seen> others = others(advice, next);
        return next == null
                ? steps.asking(chosen.orElseThrow(), null, "Because you asked for it.", another, others)
                : switch (next.sort()) {
                    case ASK -> steps.asking(casework.asking(next.id()).orElseThrow(), next, "", another, others);
                    case REPAIR -> steps.repair(next, another, others);
                    case CALL_IN -> steps.callIn(another, others);
                };
    }

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
                Wording.capital(s.words()),
                about.link("step", id(s)),
                Level.values()[s.effort().who().ordinal()],
                Math.max(1, Math.round(s.minutes())) + " min");
    }
}
