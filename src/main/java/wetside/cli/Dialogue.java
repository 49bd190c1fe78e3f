package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.Session;
import wetside.casework.Sharpening;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Who;
import wetside.diagnosis.plan.Advice;
import wetside.diagnosis.plan.Step;

/**
 * Asks, takes answers in any order, explains, takes back. Begins after the first draws; more arrive while people think.
 */
final class Dialogue {
    private final Console console;
    private final Installed installed;
    private final Casework casework;
    private final Askings askings;
    private final ShopChoice shop;
    private final Who who;
    private final DrawsChoice draws;
    private final boolean json;
    private final SigningBar bar;
    private final Sharpening sharpening;
    private Session session;
    private Advice advice;
    private OpenList open;

    /** What is being asked: a step of the advice, or a reading somebody chose. */
    private Step step;

    private Asking chosen;
    private boolean over;

    Dialogue(
            Console console,
            Installed installed,
            Casework casework,
            ShopChoice shop,
            Who who,
            DrawsChoice draws,
            boolean json) {
        this.shop = shop;
        this.console = console;
        this.installed = installed;
        this.casework = casework;
        this.who = who;
        this.draws = draws;
        this.json = json;
        askings = new Askings(casework);
        bar = draws.bar(console, casework);
        sharpening = new Sharpening(bar.signing());
    }

    int hold() {
        if (json) {
            console.talkAside();
        }
        session = new Session(casework, sharpening.first(), who, bar.signing().pairs());
        shop.on(session);
        bar.quiet();
        console.line(FindingText.heading(installed));
        shop.words().ifPresent(console::line);
        console.text(
                "",
                "Answer by number or in words, or say don't know. What you know already: READING: ANSWER. "
                        + "Also: list, why, undo, help, quit.");
        advise();
        while (!over) {
            act(Said.of(console.ask(prompt())));
        }
        sharpening.end();
        if (json) {
            console.result(Json.print(FindingJson.of(session, installed, "", shop, null)));
        }
        return session.observations().size() == 0 ? 0 : FindingText.exitCode(session);
    }

    private String prompt() {
        Asking asked = asked();
        String unit = asked == null || !asked.options().isEmpty()
                ? ""
                : " [" + asked.unit().symbol() + "]";
        return "\n" + (asked == null ? "" : Askings.id(asked) + unit + " ") + "> ";
    }

    /** The reading asked for now; null at a repair. */
    private Asking asked() {
        if (chosen != null) {
            return chosen;
        }
        return step.sort() == Step.Sort.ASK ? casework.asking(step.id()).orElseThrow() : null;
    }

    /** What follows from all that is known now, on the sharpest signatures there are. */
    private void advise() {
        Library library = sharpening.newest();
        if (library != session.library()) {
            session.sharpen(library);
        }
        sharpening.closer(session.inPlay());
        PairTrial.on(session, console);
        advice = session.advice();
        open = new OpenList(console, session, advice);
        if (session.observations().size() == 0) {
            go(session.next(advice), Optional.empty());
        } else {
            go(advice.best(), new FindingText(console, session, draws.number()).belief(advice));
        }
    }

    private void go(Step next, Optional<String> told) {
        step = next;
        chosen = null;
        new StepText(console, session, true).print(step, told);
    }

    private void act(Said said) {
        switch (said.word()) {
            case NOTHING, HELP -> help();
            case ANSWER -> answer(said.rest());
            case STILL_BAD -> repaired(false);
            case FIXED -> repaired(true);
            case UNDO -> undo();
            case WHY -> why(said.rest(), false);
            case WHY_NOT -> why(said.rest(), true);
            case LIST -> open.print(said.rest());
            case ASK -> ask(said.rest());
            case KNOWN -> new KnownText(console, session).print();
            case CAUSES -> new CausesText(console, session).print(draws.number());
            case QUIT -> over = true;
        }
    }

    private void help() {
        Table table = new Table("ll");
        for (Said.Word word : Said.Word.values()) {
            if (!word.phrase.isEmpty()) {
                table.row(word.phrase, word.means);
            }
        }
        table.row("don't know", "also can't reach, or ?: it is not asked again");
        table.row("READING: ANSWER", "any reading in any order; several with ; between");
        table.print(console, "  ");
    }

    /** One answer, or several with semicolons between; all are taken or none. */
    private void answer(String said) {
        if (step.sort() == Step.Sort.REPAIR && chosen == null && (said.equals("1") || said.equals("2"))) {
            repaired(said.equals("1"));
            return;
        }
        List<Observation> learnt = new ArrayList<>();
        try {
            for (String one : said.split(";")) {
                Observation o = askings.answer(one.strip(), asked());
                Answers.sensible(casework.asking(o.about()).orElseThrow(), o, session.library());
                learnt.add(o);
            }
        } catch (Answers.NotAnAnswer | Askings.NoReading e) {
            console.text("", e.getMessage());
            return;
        }
        for (Observation o : learnt) {
            session.learn(o);
            console.text("  ✓ ", told(o));
        }
        advise();
    }

    private String told(Observation o) {
        return casework.asking(o.about())
                .map(a -> Askings.id(a) + ": " + Answers.words(a, o))
                .orElse(o.about() + ": still bad");
    }

    private void repaired(boolean helped) {
        if (step.sort() != Step.Sort.REPAIR || chosen != null) {
            console.line("No repair is being tried; choose one with list and ask.");
        } else if (helped) {
            console.text("", "Good. Prove it before it goes home: " + proof() + ".");
            over = true;
        } else {
            session.learn(Observation.stillBad(step.id()));
            advise();
        }
    }

    /** Readings that show that this repair holds. */
    private String proof() {
        String proof = Repair.parts(step.id()).stream()
                .flatMap(part -> session.mending(part).stream())
                .flatMap(c -> c.words().stream())
                .flatMap(w -> w.prove().stream())
                .distinct()
                .collect(Collectors.joining("; "));
        return proof.isEmpty() ? "the reading that was odd is as it should be" : proof;
    }

    private void undo() {
        List<Observation> entered = session.observations().entered();
        if (entered.isEmpty()) {
            console.line("There is nothing to take back.");
            return;
        }
        console.text("  Taken back: ", told(entered.get(entered.size() - 1)));
        session.undo();
        advise();
    }

    private void why(String about, boolean not) {
        if (about.isEmpty() && not) {
            console.line("Why not what? Type why not and a part of the cause's name.");
        } else if (!about.isEmpty()) {
            new CausesText(console, session).why(about, not);
        } else if (chosen != null) {
            console.line("  Because you asked for it.");
        } else {
            open.why(step);
        }
    }

    private void ask(String name) {
        Optional<Step> numbered = open.numbered(name);
        if (numbered.isPresent()) {
            go(numbered.get(), Optional.empty());
            return;
        }
        try {
            Asking asking = askings.named(name);
            Optional<Step> known = open.step(Askings.id(asking));
            if (known.isPresent()) {
                go(known.get(), Optional.empty());
            } else {
                chosen = asking;
                console.line("");
                new StepText(console, session, true).ask(asking, Optional.empty());
            }
        } catch (Askings.NoReading e) {
            console.text("", e.getMessage());
        }
    }
}
