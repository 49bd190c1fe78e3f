package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Session;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Repair;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Posterior;
import wetside.machine.MachineFile;
import wetside.machine.Wording;
import wetside.units.Display;

/** Fault finding, on a job or free. Every answer is a form and every page a link; a script only swaps the middle. */
public final class FaultPages implements Routes {
    private static final int LONGEST = FaultCases.LONGEST;
    /** What a script asks for: the page without what stands round it. */
    private static final String PIECE = "X-Piece";

    private static final double WORTH_KEEPING = 0.002;
    private static final int YEAR = 365 * 24 * 3600;

    private final Workshop workshop;
    private final Pages pages;
    private final Libraries libraries;
    private final FaultCases cases;

    FaultPages(Workshop workshop, Pages pages, Libraries libraries) {
        this.workshop = workshop;
        this.pages = pages;
        this.libraries = libraries;
        cases = new FaultCases(workshop);
    }

    /** A machine faults can be found on without a job. */
    public record Choice(String title, List<FaultCase.Field> revisions) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.get("/jobs/{number}/fault", c -> show(c, cases.ofJob(c)));
        routes.post("/jobs/{number}/fault/finding", c -> found(c, cases.ofJob(c)));
        under("/jobs/{number}/fault", cases::ofJob, routes);
        routes.get("/fault", c -> {
            if (c.queryParam("machine") == null) {
                pages.show(c, "faultchoice", "Fault finding", "Fault finding", choices());
            } else {
                show(c, cases.free(c));
            }
        });
        under("/fault", cases::free, routes);
    }

    /** What is the same with a job and without one. */
    private void under(String address, Function<Context, FaultCase> given, RoutesConfig routes) {
        routes.get(address + "/expect", c -> expect(c, given.apply(c)));
        routes.get(address + "/sharp", c -> sharp(c, given.apply(c)));
        routes.post(address + "/answers", c -> answer(c, given.apply(c)));
        routes.post(address + "/back", c -> takeBack(c, given.apply(c)));
        routes.post(address + "/pairs", c -> pairs(c, given.apply(c)));
        routes.post(address + "/work", c -> work(c, given.apply(c)));
        routes.post(address + "/rates", c -> rates(c, given.apply(c)));
    }

    private static List<Choice> choices() {
        return MachineFile.names().stream().map(FaultPages::choice).toList();
    }

    private static Choice choice(String name) {
        MachineFile file = MachineFiles.find(name);
        List<String> supplies = file.supplyNames().isEmpty() ? List.of("") : file.supplyNames();
        List<FaultCase.Field> makings = new ArrayList<>();
        for (String revision : file.revisionNames()) {
            for (String supply : supplies) {
                String link = FaultCase.linked(
                        "/fault",
                        List.of(
                                new FaultCase.Field("machine", name),
                                new FaultCase.Field("revision", revision),
                                new FaultCase.Field("supply", supply)));
                makings.add(new FaultCase.Field(
                        file.machine(revision, supply).identity().making(), link));
            }
        }
        return new Choice(
                file.machine(file.newestRevision(), supplies.get(0)).identity().title(), makings);
    }

    private Ground ground(FaultCase about) {
        return libraries.of(about.ground());
    }

    private static Who who(Context context) {
        String said = FaultCases.given(context, "who");
        if (!said.isEmpty()) {
            context.cookie("who", Spoken.word(Spoken.who(said)), YEAR);
            return Spoken.who(said);
        }
        String kept = context.cookie("who");
        return kept == null ? Who.OWNER : Spoken.who(kept);
    }

    private FaultViews views(Context context, FaultCase about) {
        return new FaultViews(about, ground(about), who(context), Frame.units(context), Form.person(context));
    }

    private void show(Context context, FaultCase about) {
        FaultViews views = views(context, about);
        Ground ground = ground(about);
        if (ground.isPairing(about.id())
                && views.session() != null
                && !views.session().isExplained()) {
            ground.tryPairs(views.knowledge(), libraries.behind());
        }
        FaultView view = views.view(new FaultViews.Wanted(
                FaultCases.given(context, "step"),
                FaultCases.given(context, "why"),
                !FaultCases.given(context, "others").isEmpty(),
                workshop.clock().instant().atZone(workshop.clock().getZone())));
        if (context.header(PIECE) != null) {
            pages.piece(context, "faultbody", view);
        } else {
            String title = about.job() == null
                    ? "Fault finding"
                    : "Fault finding, job " + about.job().number();
            pages.show(context, "fault", title, "Fault finding", view);
        }
    }

    /** Rails with what is being typed, and what it would leave. */
    private void expect(Context context, FaultCase about) {
        FaultViews views = views(context, about);
        Session session = views.session();
        Asking asking = asking(about, FaultCases.given(context, "asked"));
        if (session == null) {
            context.status(HttpStatus.NO_CONTENT);
            return;
        }
        if (!asking.question().effort().allowed(session.who())) {
            throw new NotFoundResponse();
        }
        Display units = Frame.units(context);
        Session without =
                session.knowing(session.observations().without(asking.question().id()));
        Observation typed = FaultViews.typed(asking, FaultCases.given(context, "reading"), units);
        pages.piece(context, "faultexpect", new FaultExpectation(without, units).of(asking, typed));
    }

    /** Draws of each cause there are, for a script that waits for more. */
    private void sharp(Context context, FaultCase about) {
        FaultView.Sharp sharp = views(context, about).sharp();
        context.contentType("text/plain; charset=utf-8")
                .result(sharp.token() + "\n" + (sharp.ready() ? "ready" : "more") + "\n" + sharp.words());
    }

    private Asking asking(FaultCase about, String id) {
        return ground(about)
                .casework
                .asking(id)
                .orElseThrow(() -> new BadForm("This machine has no reading '" + id + "'"));
    }

    /** By the shipped rates: what a job teaches must not depend on what was learnt before. */
    private String believed(Context context, FaultCase about) {
        Posterior posterior = views(context, about.byShippedRates()).session().posterior();
        return posterior.ranking().stream()
                .filter(r -> r.share() >= WORTH_KEEPING && r.position() != posterior.somethingElse())
                .map(r -> quoted(r.id()) + String.format(Locale.ROOT, ":%.4f", r.share()))
                .collect(Collectors.joining(","));
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private void answer(Context context, FaultCase about) {
        Form form = new Form(context);
        String asked = form.needed("asked", LONGEST);
        String said = form.text("said", LONGEST);
        if (!said.equals(FaultCase.STILL_BAD)) {
            said = understood(context, about, asked, said.isEmpty() ? form.needed("reading", 40) : said);
        } else if (!Repair.parts(asked).stream()
                .allMatch(part -> ground(about).casework.candidates().stream()
                        .anyMatch(c -> c.cause().repair().id().equals(part)))) {
            throw new BadForm("Nothing on this machine is mended by '" + asked + "'");
        }
        if (about.job() != null) {
            workshop.answered().give(about.job().id(), asked, said, form.person());
            context.redirect(about.link(), HttpStatus.SEE_OTHER);
        } else {
            List<FaultCase.Field> fields = FaultCases.asking(about, asked);
            fields.add(FaultCases.answer(asked, said));
            context.redirect(FaultCase.linked(about.address(), fields), HttpStatus.SEE_OTHER);
        }
    }

    /** As it is kept; told what would be right when it is no answer. */
    private String understood(Context context, FaultCase about, String asked, String typed) {
        Asking asking = asking(about, asked);
        String said = asking.options().isEmpty() ? FaultViews.said(asking, typed, Frame.units(context)) : typed;
        try {
            Observation observation = Answers.parse(asking, said);
            Session session = views(context, about).session();
            if (session != null) {
                Answers.sensible(asking, observation, session.library());
            }
            boolean number = observation.kind() == Observation.Kind.NUMBER;
            return number && !Frame.units(context).equals(Display.METRIC)
                    ? Spoken.figures(observation.value()) + " " + asking.unit().symbol()
                    : said;
        } catch (Answers.NotAnAnswer e) {
            throw new BadForm(Wording.capital(e.getMessage()));
        }
    }

    private void takeBack(Context context, FaultCase about) {
        String asked = new Form(context).text("asked", LONGEST);
        if (asked.isEmpty() && !about.known().isEmpty()) {
            asked = about.known().get(about.known().size() - 1).asked();
        }
        if (about.job() != null) {
            workshop.answered().takeBack(about.job().id(), asked);
            context.redirect(about.link(), HttpStatus.SEE_OTHER);
        } else {
            context.redirect(FaultCase.linked(about.address(), FaultCases.without(about, asked)), HttpStatus.SEE_OTHER);
        }
    }

    /** With this shop's rates, or with those that come with the program, for this case only. */
    private void rates(Context context, FaultCase about) {
        boolean on = !about.rates().on();
        if (about.job() != null) {
            workshop.outcomes().want(about.job().number(), on, new Form(context).person());
            context.redirect(about.link(), HttpStatus.SEE_OTHER);
        } else {
            List<FaultCase.Field> fields = new ArrayList<>(about.fields());
            fields.removeIf(f -> f.name().equals(FaultCases.RATES));
            if (!on) {
                fields.add(new FaultCase.Field(FaultCases.RATES, FaultCases.SHIPPED));
            }
            context.redirect(FaultCase.linked(about.address(), fields), HttpStatus.SEE_OTHER);
        }
    }

    /** Thinks of two causes at once, stops with those that are there, or thinks of single ones only. */
    private void pairs(Context context, FaultCase about) {
        Ground ground = ground(about);
        FaultViews views = views(context, about);
        switch (FaultCases.given(context, "do")) {
            case "stop" -> {
                PairTrial trial = ground.trial(views.knowledge());
                if (trial != null) {
                    trial.stop();
                }
            }
            case "single" -> ground.pair(about.id(), false);
            default -> ground.pair(about.id(), true);
        }
        context.redirect(about.link(), HttpStatus.SEE_OTHER);
    }

    /** Stops the work on signatures with what is there, or goes on with it. */
    private void work(Context context, FaultCase about) {
        Ground ground = ground(about);
        if (FaultCases.given(context, "do").equals("stop")) {
            ground.pause();
        } else {
            libraries.resume(ground);
        }
        context.redirect(about.link(), HttpStatus.SEE_OTHER);
    }

    private void found(Context context, FaultCase about) {
        Session session = views(context, about).session();
        if (session == null || !session.isFound()) {
            throw new BadForm("There is no finding yet: the causes are still open");
        }
        Posterior.Ranked best = session.posterior().ranking().get(0);
        var range = session.posterior().range(best.position());
        String words = Wording.capital(best.words()) + ", " + Spoken.percent(best.share()) + " ("
                + Spoken.range(range.low(), range.high()) + " %), after "
                + about.known().size() + " answers";
        String detail = String.format(
                Locale.ROOT,
                "{\"cause\":%s,\"share\":%.4f,\"low\":%.4f,\"high\":%.4f,\"believed\":{%s}}",
                quoted(best.id()),
                best.share(),
                range.low(),
                range.high(),
                believed(context, about));
        workshop.answered().found(about.job().id(), best.id(), new Form(context).person(), words, detail);
        context.redirect(about.link(), HttpStatus.SEE_OTHER);
    }
}
