package wetside.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.Session;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Evidence;
import wetside.diagnosis.inference.Posterior;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.Step;

/**
 * Asks, takes answers in any order, explains, takes back. Begins after the first draws; more arrive while people think.
 */
final class Dialogue {
    private static final String FIXED = "\0fixed";

    private final Console console;
    private final Installed installed;
    private final Casework casework;
    private final Who who;
    private final boolean json;
    private final Signing signing;
    private final AtomicReference<Library> newest = new AtomicReference<>();
    private volatile RuntimeException broken;
    private Session session;

    Dialogue(Console console, Installed installed, Casework casework, Who who, int draws, boolean json) {
        this.console = console;
        this.installed = installed;
        this.casework = casework;
        this.who = who;
        this.json = json;
        signing = new Signing(console, casework, draws);
    }

    int hold() {
        Thread builder = new Thread(this::build, "signatures");
        builder.setDaemon(true);
        builder.start();
        session = new Session(casework, firstLibrary(), who);
        signing.quiet();
        console.line(installed.machine().identity().title() + ", revision "
                + installed.machine().identity().revision() + ", fed from the "
                + installed.feed().word());
        console.line(
                "Answer, or type: don't know, undo, why, why not CAUSE, list, ask READING, still bad, fixed, quit.");
        talk();
        signing.stop();
        if (json) {
            console.line(Json.print(FindingJson.of(session, "")));
        }
        return Wetside.FINDINGS;
    }

    private void build() {
        try {
            newest.set(signing.all(newest::set));
        } catch (RuntimeException e) {
            broken = e;
        }
    }

    private Library firstLibrary() {
        while (newest.get() == null) {
            if (broken != null) {
                throw broken;
            }
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException("interrupted", e);
            }
        }
        return newest.get();
    }

    private void talk() {
        String asked = null;
        while (true) {
            Library library = newest.get();
            if (library != session.library()) {
                session.sharpen(library);
            }
            Advice advice = session.advice();
            Step step = asked == null ? advice.best() : find(advice, asked).orElse(advice.best());
            FindingText text = new FindingText(console, session);
            if (session.observations().size() > 0) {
                text.causes();
                text.finding();
            }
            text.step(step);
            String said = console.ask("> ");
            if (said == null || said.strip().equals("quit")) {
                return;
            }
            asked = respond(said.strip(), step, advice);
            if (asked != null && asked.equals(FIXED)) {
                return;
            }
        }
    }

    private static Optional<Step> find(Advice advice, String id) {
        return advice.steps().stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** Acts on what was typed; returns the reading to ask next, or null for the best one. */
    private String respond(String said, Step step, Advice advice) {
        String word = said.toLowerCase(Locale.ROOT);
        if (word.isEmpty()) {
            return step.id();
        }
        if (word.equals("undo")) {
            session.undo();
            return null;
        }
        if (word.equals("list")) {
            list(advice);
            return step.id();
        }
        if (word.startsWith("ask ")) {
            return ask(said.substring(4).strip(), step);
        }
        if (word.startsWith("why")) {
            why(said.substring(3).strip(), step);
            return step.id();
        }
        if (word.equals("fixed")) {
            console.line("Good. Close the case with the proof readings.");
            return FIXED;
        }
        return answer(said, word, step);
    }

    private String answer(String said, String word, Step step) {
        if (step.sort() == Step.Sort.REPAIR) {
            if (word.equals("still bad")) {
                session.learn(Observation.stillBad(step.id()));
                return null;
            }
            console.line("After that step say fixed or still bad; or ask for another reading with: ask READING.");
            return step.id();
        }
        int colon = said.indexOf(':');
        Optional<Asking> named =
                colon > 0 ? casework.asking(said.substring(0, colon).strip()) : Optional.empty();
        Optional<Asking> asking = named.isPresent() ? named : casework.asking(step.id());
        if (asking.isEmpty()) {
            console.line("There is nothing to answer here; type list for what can be asked.");
            return step.id();
        }
        try {
            Observation o = Answers.parse(asking.get(), named.isPresent() ? said.substring(colon + 1) : said);
            Answers.sensible(asking.get(), o, session.library());
            session.learn(o);
            return null;
        } catch (Answers.NotAnAnswer e) {
            console.line(e.getMessage());
            return step.id();
        }
    }

    private String ask(String id, Step step) {
        if (casework.asking(id).isPresent()) {
            return id;
        }
        List<String> ids =
                casework.askings().stream().map(a -> a.question().id()).toList();
        console.line("No reading \"" + id + "\". Maybe " + wetside.machine.Wording.nearest(id, ids) + ".");
        return step.id();
    }

    private void list(Advice advice) {
        Table table = new Table("llrr");
        table.row("step", "", "minutes", "bits a minute");
        advice.steps().stream()
                .limit(15)
                .forEach(s -> table.row(
                        s.id().isEmpty() ? "call in" : s.id(),
                        s.sort() == Step.Sort.REPAIR ? "repair" : "",
                        String.valueOf(Math.round(s.minutes())),
                        String.format(Locale.ROOT, "%.2f", s.bitsPerMinute())));
        table.print(console, "  ");
    }

    /** Why this step, or why not a cause. */
    private void why(String about, Step step) {
        if (about.isEmpty()) {
            console.line("  " + step.reason()
                    + String.format(
                            Locale.ROOT,
                            "; %.2f bits in %.0f min, expected cost %.0f",
                            step.bits(),
                            step.minutes(),
                            step.expectedCost()));
            return;
        }
        String cause = about.startsWith("not ") ? about.substring(4) : about;
        List<Posterior.Ranked> found = session.posterior().ranking().stream()
                .filter(r -> r.words().contains(cause) || r.id().contains(cause))
                .limit(3)
                .toList();
        Evidence evidence = session.evidence();
        for (Posterior.Ranked r : found) {
            console.line("  " + r.words() + " " + FindingText.percent(r.share()));
            for (Evidence.Weight w : evidence.of(r.position())) {
                if (w.strength() != Evidence.Strength.NONE) {
                    console.line("    " + (w.speaksFor() ? "+ " : "− ")
                            + w.observation().about() + "  ("
                            + w.strength().name().toLowerCase(Locale.ROOT) + ")");
                }
            }
        }
        if (found.isEmpty()) {
            console.line("  No cause has \"" + cause + "\" in its name.");
        }
    }
}
