package wetside.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.casework.CaseFile;
import wetside.casework.Installed;
import wetside.casework.ProgramCode;
import wetside.diagnosis.Who;
import wetside.machine.Node;
import wetside.machine.Wording;
import wetside.procedure.Procedures;
import wetside.run.Draws;

/** From what was found to the causes, why, and what to do next. */
@Command(
        name = "diagnose",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = {
            "Find the cause of a fault: ranked causes, why, and what to check next.",
            "With a case file its answers are used; with a machine, it asks."
        })
final class DiagnoseCommand implements Callable<Integer> {
    private static final int MOST_DRAWS = 1024;

    private final Console console;

    @Parameters(
            index = "0",
            paramLabel = "CASE|MACHINE",
            description = "a case file, a machine file, or the name of a machine that comes with Wetside")
    private String subject;

    @Mixin
    private MachineChoice choice;

    @Mixin
    private ShopChoice shop;

    @Option(
            names = "--who",
            paramLabel = "WHO",
            description = "who is at the machine: owner (if not said), technician or qualified")
    private String who;

    @Mixin
    private DrawsChoice draws;

    @Option(
            names = "--why-not",
            paramLabel = "CAUSE",
            description = "of a case: what speaks against a cause, and what would part it from the best")
    private String whyNot;

    @Option(names = "--json", description = "for programs; questions go to the error stream")
    private boolean json;

    DiagnoseCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (!draws.isWhole() || draws.number() > MOST_DRAWS) {
            throw new BadArgument("--draws is a multiple of " + Draws.BLOCK + " from " + Draws.BLOCK + " to "
                    + MOST_DRAWS + ", not " + draws.number());
        }
        Who said = People.of(who, null);
        // beside the reading of the machine: neither needs the other
        CompletableFuture<Procedures> procedures = CompletableFuture.supplyAsync(() -> {
            Procedures read = Procedures.bundled();
            ProgramCode.sum();
            return read;
        });
        Path file = Path.of(subject);
        if (Files.isRegularFile(file) && Node.read(file).has("wetside case")) {
            if (!choice.given().isEmpty()) {
                throw new BadArgument(Wording.inWords(choice.given()) + ": write that into the case, " + file);
            }
            CaseFile given = CaseFile.read(file);
            shop.read(given.installed().machine());
            return new CaseDiagnosis(console, given, procedures.join(), shop, said, draws, json, whyNot).tell();
        }
        if (whyNot != null) {
            throw new BadArgument("--why-not goes with a case file; in the talk, type: why not " + whyNot);
        }
        Installed installed = choice.installed(subject);
        shop.read(installed.machine());
        return new Dialogue(
                        console,
                        installed,
                        installed.casework(procedures.join()),
                        shop,
                        said == null ? Who.OWNER : said,
                        draws,
                        json)
                .hold();
    }
}
