package wetside.bench;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Danger;
import wetside.casework.Session;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.machine.Wording;
import wetside.page.Level;
import wetside.units.Display;

/** Puts the page of fault finding together. */
final class FaultViews {
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
        FaultView.Caution stop = stop();
        boolean nothingToTry =
                why != null || rest != null || stop != null && wanted.step().isEmpty();
        return new FaultView(
                about,
                people(wanted.step()),
                known(causes),
                stop,
                nothingToTry ? null : next().of(session, early, wanted.step()),
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

    /** Said to an owner whose words speak of danger; what was seen can still be told, nothing is tried. */
    private FaultView.Caution stop() {
        return Danger.saidTo(who, about.complaint())
                .map(words -> new FaultView.Caution(Level.QUALIFIED, "Tell the owner first", "“" + words + "”"))
                .orElse(null);
    }

    private FaultNext next() {
        return new FaultNext(about, ground.casework, knowledge, units);
    }

    private boolean isRefused(String wanted) {
        return ground.casework
                .asking(wanted)
                .filter(a -> !a.question().effort().allowed(who))
                .isPresent();
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
        List<FaultView.Known> rows = new ArrayList<>();
        for (FaultCase.Known k : about.known()) {
            Observation o = FaultCase.observation(ground.casework, k).orElse(null);
            Optional<Asking> asking = ground.casework.asking(k.asked());
            String answer = o == null
                    ? k.said()
                    : asking.map(a -> Spoken.answer(a, o, k.said(), units)).orElse("Done, still there");
            boolean unknown = o == null || o.kind() == Observation.Kind.UNKNOWN;
            String told = o == null ? "not understood" : unknown ? "nothing" : causes == null ? "" : causes.told(o);
            rows.add(new FaultView.Known(
                    k.asked(),
                    Wording.capital(units.prose(k.asked())) + (isOvertaken(rows.size()) ? ", before the repair" : ""),
                    answer,
                    told,
                    asking.isPresent() ? about.link("step", k.asked()) : "",
                    unknown));
        }
        return rows;
    }

    /** Whether the same was asked again after a repair. */
    private boolean isOvertaken(int row) {
        String asked = about.known().get(row).asked();
        return about.known().stream().skip(row + 1).anyMatch(k -> k.asked().equals(asked));
    }

    FaultView.Sharp sharp() {
        Sharpness s = ground.sharpness();
        PairTrial trial = ground.trial(knowledge);
        boolean running = trial != null && !trial.isOver();
        String token = s.drawn()
                + (s.drawn() == 0 ? "." + s.causes() : "")
                + (s.paused() ? " paused" : "")
                + (trial == null ? "" : running ? " pairs " + trial.done() : " pairs");
        return new FaultView.Sharp(s.isOver() && !running, token, s.drawn() == 0, s.paused(), s.words(), s.percent());
    }

    /** All that this person may be asked or look at, for what was seen out of turn. */
    private List<FaultView.Seen> seen() {
        return ground.casework.askings().stream()
                .filter(a -> a.question().effort().allowed(who))
                .map(a -> next().seen(a, ""))
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
