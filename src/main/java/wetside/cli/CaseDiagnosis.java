package wetside.cli;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Begun;
import wetside.casework.CaseFile;
import wetside.casework.Casework;
import wetside.casework.Pairs;
import wetside.casework.Session;
import wetside.casework.Signing;
import wetside.casework.Standing;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Inference;
import wetside.diagnosis.inference.Posterior;
import wetside.machine.Wording;
import wetside.procedure.Procedures;

/** A case file and its finding. */
final class CaseDiagnosis {
    /** What may be something else is said from here on. */
    private static final double ELSE = 0.03;

    private final Console console;
    private final CaseFile given;
    private final Casework casework;
    private final ShopChoice shop;
    private final Who who;
    private final DrawsChoice draws;
    private final boolean json;
    private final String whyNot;

    /**
     * @param who    overrides the case when not null
     * @param whyNot part of the name of a cause to be held against the best, or null
     */
    CaseDiagnosis(
            Console console,
            CaseFile given,
            Procedures procedures,
            ShopChoice shop,
            Who who,
            DrawsChoice draws,
            boolean json,
            String whyNot) {
        this.shop = shop;
        this.console = console;
        this.given = given;
        this.who = who == null ? given.who() : who;
        this.draws = draws;
        this.json = json;
        this.whyNot = whyNot;
        casework = given.installed().casework(procedures);
    }

    int tell() {
        List<Observation> found = observations();
        SigningBar bar = draws.bar(console, casework);
        Signing signing = bar.signing();
        if (!found.isEmpty() && !signing.isReady()) {
            firstLook(found, bar);
        }
        Library library = signing.all(early -> {});
        makeSense(found, library);
        Session session = session(found, library, signing.pairs());
        session.sharpen(bar.closer(library, session.inPlay()));
        PairTrial.on(session, console);
        if (json) {
            console.result(Json.print(FindingJson.of(session, given.installed(), given.complaint(), shop, whyNot)));
        } else {
            new FindingText(console, session, draws.number()).whole(given.installed(), given.complaint(), shop);
            if (whyNot != null) {
                console.line("");
                console.line("Why not");
                new CausesText(console, session).why(whyNot, true);
            }
        }
        return FindingText.exitCode(session);
    }

    /**
     * What it looks like so far. Nonsense is found out here, before the long work: what makes no sense for the causes that
     * happen most often may for the others, so those are run then.
     */
    private void firstLook(List<Observation> found, SigningBar bar) {
        List<String> readings = found.stream().map(Observation::about).toList();
        Begun often = bar.begin(readings, earlier()).orElse(null);
        if (often != null && nonsense(found, often.inference().library()).isEmpty()) {
            Inference shipped = often.inference();
            Session session = new Session(
                    new Session.Shared(
                            often.casework(),
                            shipped.weighted(shop.on(shipped.library())),
                            shipped.library(),
                            new Pairs(often.casework())),
                    Observations.of(found),
                    earlier(),
                    who);
            firstLook(
                    session,
                    "the " + (often.causes() - 1) + " of "
                            + (casework.candidates().size() - 1)
                            + " faults that happen most often, one or two machines simulated with each");
        } else {
            Library early = bar.look(readings);
            makeSense(found, early);
            firstLook(
                    session(found, early, new Pairs(casework)),
                    Standing.of(early).words());
        }
    }

    private void firstLook(Session session, String from) {
        if (!json) {
            Posterior posterior = session.posterior();
            Posterior.Ranked best = posterior.best();
            double other = posterior.share(posterior.somethingElse());
            console.errors()
                    .println("First look: " + best.words() + ", " + FindingText.percent(best.share())
                            + (other < ELSE
                                    ? ""
                                    : "; something else, or what has not been run yet, " + FindingText.percent(other))
                            + ". From " + from + ". More are being run.");
        }
    }

    private Observations earlier() {
        return Observations.of(given.earlier().stream().map(this::observation).toList());
    }

    private Session session(List<Observation> found, Library library, Pairs pairs) {
        Session session = new Session(casework, library, who, pairs);
        shop.on(session);
        session.earlier(earlier());
        found.forEach(session::learn);
        return session;
    }

    /** What was found, all answers that are none told at once. */
    private List<Observation> observations() {
        List<Observation> found = given.found().stream().map(this::observation).toList();
        given.earlier().forEach(this::observation);
        check();
        return found;
    }

    private Observation observation(CaseFile.Found f) {
        Asking asking = casework.asking(f.procedure()).orElse(null);
        if (asking == null) {
            List<String> ids =
                    casework.askings().stream().map(a -> a.question().id()).toList();
            String near = Wording.nearest(f.procedure(), ids);
            f.answer()
                    .unknown(
                            "this machine has no reading \"" + f.procedure() + "\""
                                    + (near.isEmpty() ? "; \"wetside readings\" lists them" : ""),
                            near);
            return Observation.unknown(f.procedure());
        }
        String said = f.answer().text();
        try {
            return f.answer().isText() ? Answers.parse(asking, said) : Observation.unknown(f.procedure());
        } catch (Answers.NotAnAnswer e) {
            f.answer().problem(e.getMessage(), "");
            return Observation.unknown(f.procedure());
        }
    }

    private void makeSense(List<Observation> found, Library library) {
        nonsense(found, library)
                .forEach((i, why) -> given.found().get(i).answer().problem(why, ""));
        check();
    }

    /** What makes no sense whatever the cause, by place, and why. */
    private Map<Integer, String> nonsense(List<Observation> found, Library library) {
        Map<Integer, String> nonsense = new TreeMap<>();
        for (int i = 0; i < found.size(); i++) {
            try {
                Answers.sensible(casework.asking(found.get(i).about()).orElseThrow(), found.get(i), library);
            } catch (Answers.NotAnAnswer e) {
                nonsense.put(i, e.getMessage());
            }
        }
        return nonsense;
    }

    private void check() {
        Stream.concat(given.found().stream(), given.earlier().stream())
                .findFirst()
                .ifPresent(f -> f.answer().check());
    }
}
