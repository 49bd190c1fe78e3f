package wetside.cli;

import java.util.List;
import java.util.stream.Stream;
import wetside.casework.Answers;
import wetside.casework.Asking;
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
import wetside.diagnosis.inference.Posterior;
import wetside.machine.Wording;
import wetside.procedure.Procedures;

/** A case file and its finding. */
final class CaseDiagnosis {
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
            Console console, CaseFile given, ShopChoice shop, Who who, DrawsChoice draws, boolean json, String whyNot) {
        this.shop = shop;
        this.console = console;
        this.given = given;
        this.who = who == null ? given.who() : who;
        this.draws = draws;
        this.json = json;
        this.whyNot = whyNot;
        casework = given.installed().casework(Procedures.bundled());
    }

    int tell() {
        List<Observation> found = observations();
        SigningBar bar = draws.bar(console, casework);
        Signing signing = bar.signing();
        if (!found.isEmpty() && !signing.isReady()) {
            firstLook(found, bar.look(found.stream().map(Observation::about).toList()));
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

    /** After the first few draws: what it looks like so far. Nonsense is found out here, before the long work. */
    private void firstLook(List<Observation> found, Library early) {
        makeSense(found, early);
        if (!json) {
            Posterior.Ranked best = session(found, early, new Pairs(casework)).posterior().best();
            console.errors()
                    .println("First look: " + best.words() + ", " + FindingText.percent(best.share()) + ", from "
                            + Standing.of(early).words() + ". More are being run.");
        }
    }

    private Session session(List<Observation> found, Library library, Pairs pairs) {
        Session session = new Session(casework, library, who, pairs);
        shop.on(session);
        session.earlier(
                Observations.of(given.earlier().stream().map(this::observation).toList()));
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
        for (int i = 0; i < found.size(); i++) {
            try {
                Answers.sensible(casework.asking(found.get(i).about()).orElseThrow(), found.get(i), library);
            } catch (Answers.NotAnAnswer e) {
                given.found().get(i).answer().problem(e.getMessage(), "");
            }
        }
        check();
    }

    private void check() {
        Stream.concat(given.found().stream(), given.earlier().stream())
                .findFirst()
                .ifPresent(f -> f.answer().check());
    }
}
