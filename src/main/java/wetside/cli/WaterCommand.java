package wetside.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wetside.analysis.WaterSheet;
import wetside.feedwater.Advice;
import wetside.feedwater.MachineFacts;
import wetside.feedwater.WaterPage;
import wetside.page.HtmlSheet;
import wetside.page.PdfSheet;
import wetside.page.Sheet;
import wetside.units.Display;
import wetside.water.ConstantSet;

/** What a water is and what it does. */
@Command(
        name = "water",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        subcommands = {WaterCompareCommand.class, WaterRecipeCommand.class},
        description = "What a water holds, what it drops when heated, and what it does in a machine.")
final class WaterCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SHEET", arity = "0..1", description = "a water sheet")
    private String sheet;

    @Option(names = "--machine", paramLabel = "MACHINE", description = "the machine it is for; its twin is asked")
    private String machine;

    @Mixin
    private MachineChoice choice;

    @Option(
            names = "--constants",
            paramLabel = "SET",
            description = "standard (if not said) or high-temperature; never mixed")
    private String constants = "standard";

    @Option(
            names = "--from",
            paramLabel = "YYYY-MM-DD",
            description = "the day it was last descaled; dates are then said as well")
    private String from;

    @Mixin
    private PaperChoice papers;

    @Option(names = "--json", description = "for programs")
    private boolean json;

    WaterCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (sheet == null) {
            throw new BadArgument("say which water sheet, such as examples/water/tap.yaml; or compare, or recipe");
        }
        LocalDate day = day(from);
        Written written = papers.written(console);
        WaterSheet read = WaterSheet.read(Path.of(sheet));
        MachineFacts facts = facts(machine, choice);
        Advice advice = Advice.of(read, facts, set(constants));
        if (json) {
            console.result(Json.print(WaterJson.of(read, advice)));
        } else if (written.isEmpty()) {
            new WaterText(console, read, advice, day).print();
        }
        if (written.wantsSheet()) {
            Sheet page = new WaterPage(read, advice, day, Display.METRIC).sheet();
            written.html(() -> HtmlSheet.of(page));
            written.pdf(() -> PdfSheet.of(page));
        }
        written.told(json);
        return advice.worst() == wetside.feedwater.Verdict.Grade.GOOD ? 0 : Wetside.FINDINGS;
    }

    private static LocalDate day(String said) {
        try {
            return said == null ? null : LocalDate.parse(said);
        } catch (java.time.format.DateTimeParseException e) {
            throw new BadArgument("--from: '" + said + "' is no day; a day is written like 2026-05-31");
        }
    }

    static MachineFacts facts(String machine, MachineChoice choice) {
        if (machine != null) {
            return MachineFacts.of(choice.installed(machine));
        }
        if (!choice.given().isEmpty()) {
            throw new BadArgument(
                    String.join(", ", choice.given()) + ": that is about a machine; name it with --machine");
        }
        return MachineFacts.NONE;
    }

    static ConstantSet set(String said) {
        return switch (said) {
            case "standard" -> ConstantSet.STANDARD;
            case "high-temperature" -> ConstantSet.HIGH_TEMPERATURE;
            default -> throw new BadArgument("--constants is standard or high-temperature, not '" + said + "'");
        };
    }
}
