package wetside.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.CaseFile;
import wetside.casework.Casework;
import wetside.casework.Installed;
import wetside.casework.Session;
import wetside.diagnosis.Library;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Who;
import wetside.diagnosis.inference.Posterior;
import wetside.machine.Node;
import wetside.machine.Wording;
import wetside.procedure.Procedures;

/** From what was found to the causes, why, and what to do next. */
@Command(
        name = "diagnose",
        mixinStandardHelpOptions = true,
        description = {
            "Find the cause of a fault: ranked causes, why, and what to check next.",
            "MACHINE may be a case file; then the case's answers are used. With a machine, it asks."
        })
final class DiagnoseCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private MachineChoice choice;

    @Option(names = "--who", paramLabel = "WHO", description = "owner, technician or qualified: who is on the line")
    private String who;

    @Option(names = "--draws", paramLabel = "N", description = "machines simulated for each cause (default: 64)")
    private int draws = 64;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    DiagnoseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (draws < 8 || draws > 1024 || draws % 8 != 0) {
            throw new BadArgument("--draws is a multiple of 8 from 8 to 1024, not " + draws);
        }
        Path file = Path.of(choice.machine);
        if (Files.isRegularFile(file) && isCase(file)) {
            return fromFile(CaseFile.read(file));
        }
        Installed installed = choice.installed();
        Casework casework = installed.casework(Procedures.bundled());
        return new Dialogue(console, installed, casework, person(Who.OWNER), draws, json).hold();
    }

    /** By its header; a file that is neither is told as a machine file. */
    private static boolean isCase(Path file) {
        return Node.read(file).has("wetside case");
    }

    private Who person(Who usual) {
        if (who == null) {
            return usual;
        }
        return switch (who) {
            case "owner" -> Who.OWNER;
            case "technician" -> Who.TECHNICIAN;
            case "qualified" -> Who.ELECTRICIAN;
            default -> throw new BadArgument("--who is owner, technician or qualified, not '" + who + "'");
        };
    }

    private int fromFile(CaseFile given) {
        Casework casework = given.installed().casework(Procedures.bundled());
        given.found().forEach(f -> answer(f, casework));
        if (!given.found().isEmpty()) {
            given.found().get(0).answer().check();
        }
        Signing signing = new Signing(console, casework, draws);
        if (!json && !given.found().isEmpty() && !signing.isReady()) {
            firstLook(
                    given,
                    casework,
                    signing.look(given.found().stream()
                            .map(CaseFile.Found::procedure)
                            .toList()));
        }
        Library library = signing.all(early -> {});
        Session session = session(given, casework, library);
        if (json) {
            console.line(Json.print(FindingJson.of(session, given.complaint())));
        } else {
            new FindingText(console, session).whole(given.installed(), given.complaint());
        }
        return Wetside.FINDINGS;
    }

    /** After the first few draws: what it looks like so far. */
    private void firstLook(CaseFile given, Casework casework, Library early) {
        Posterior.Ranked best = session(given, casework, early).posterior().best();
        console.errors()
                .println("First look (" + Signing.drawn(early) + " draws a cause): " + best.words() + ", "
                        + Math.round(100 * best.share()) + " %. Sharpening.");
    }

    private Session session(CaseFile given, Casework casework, Library library) {
        Session session = new Session(casework, library, person(given.who()));
        for (CaseFile.Found f : given.found()) {
            Asking asking = casework.asking(f.procedure()).orElseThrow();
            Observation o = answer(f, casework);
            try {
                Answers.sensible(asking, o, library);
            } catch (Answers.NotAnAnswer e) {
                f.answer().problem(e.getMessage(), "");
            }
            session.learn(o);
        }
        if (!given.found().isEmpty()) {
            given.found().get(0).answer().check();
        }
        return session;
    }

    private static Observation answer(CaseFile.Found f, Casework casework) {
        Asking asking = casework.asking(f.procedure()).orElse(null);
        if (asking == null) {
            var ids = casework.askings().stream().map(a -> a.question().id()).toList();
            f.answer()
                    .unknown(
                            "this machine has no reading \"" + f.procedure() + "\"",
                            Wording.nearest(f.procedure(), ids));
            return null;
        }
        try {
            return Answers.parse(asking, f.answer().text());
        } catch (Answers.NotAnAnswer e) {
            f.answer().problem(e.getMessage(), "");
            return null;
        }
    }
}
