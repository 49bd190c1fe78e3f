package wetside.cli;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import wetside.machine.BadFile;
import wetside.run.NoSuchThing;

/** The command line: one command each for what a bench does. */
@Command(
        name = "wetside",
        description = "The service bench for espresso machines: everything computed from one machine file.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            DiagnoseCommand.class,
            ReadingsCommand.class,
            RunCommand.class,
            CheckCommand.class,
            SchemaCommand.class,
            CommandLine.HelpCommand.class
        },
        footer = {
            "",
            "Exit codes: 0 done, 1 done with findings, 2 bad input, 3 a fault of ours.",
            "Wetside advises people who know machines; local codes and licensed practice come first."
        })
public final class Wetside {
    /** Done, and something was found. */
    public static final int FINDINGS = 1;
    /** The input was wrong; the message says what would be right. */
    public static final int BAD_INPUT = 2;
    /** Our own bug. */
    public static final int INTERNAL = 3;

    private Wetside() {}

    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(args, out, err, System.in);
        out.flush();
        System.exit(code);
    }

    /** Runs one command; prints only to what it is given. */
    public static int run(String[] args, PrintStream out, PrintStream err, InputStream in) {
        Console console = new Console(out, err, in);
        CommandLine line = new CommandLine(Wetside.class, new Commands(console));
        line.setOut(console.printer());
        line.setErr(console.errors());
        line.setExitCodeExceptionMapper(e -> INTERNAL);
        line.setExecutionExceptionHandler((e, command, parsed) -> failed(e, console));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        if (args.length == 0) {
            line.usage(console.printer());
            console.printer().flush();
            return 0;
        }
        try {
            return line.execute(args);
        } catch (Error e) {
            return failed(e, console);
        } finally {
            console.printer().flush();
            console.errors().flush();
        }
    }

    private static int failed(Throwable e, Console console) {
        console.printer().flush();
        if (e instanceof BadFile || e instanceof NoSuchThing || e instanceof BadArgument) {
            console.errors().println(e.getMessage());
            return BAD_INPUT;
        }
        console.errors().println("Wetside itself failed: " + e);
        console.errors().println("This is a fault of ours; with WETSIDE_TRACE=1 set it shows where.");
        if (System.getenv("WETSIDE_TRACE") != null) {
            e.printStackTrace(console.errors());
        }
        return INTERNAL;
    }
}
