package wetside.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.util.Arrays;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import wetside.machine.BadFile;
import wetside.run.NoSuchThing;

/** The command line: one command each for what a bench does. */
@Command(
        name = "wetside",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "The service bench for espresso machines: everything computed from one machine file.",
        synopsisSubcommandLabel = "COMMAND",
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
        // Not System.out: that swallows why something could not be written.
        Outlet outlet = new Outlet(new FileOutputStream(FileDescriptor.out));
        PrintStream out = new PrintStream(outlet, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        int code = run(args, new Console(out, err, System.in, Terminal.input(), Terminal.errors()));
        out.flush();
        if (outlet.failure() != null) {
            err.println("The output could not be written: " + outlet.failure());
            code = INTERNAL;
        }
        System.exit(code);
    }

    /** Runs one command; prints only to what it is given, as when nobody watches. */
    public static int run(String[] args, PrintStream out, PrintStream err, InputStream in) {
        return run(args, new Console(out, err, in, false, false));
    }

    private static int run(String[] args, Console console) {
        CommandLine line = new Commands(console).line(args.length == 0 ? "" : args[0]);
        line.setOut(console.printer());
        line.setErr(console.errors());
        line.setUsageHelpWidth(Lines.WIDTH);
        line.setParameterExceptionHandler((e, said) -> misused(e, console));
        line.setExecutionExceptionHandler((e, command, parsed) -> failed(e, console));
        try {
            return args.length == 0 ? line.execute("--help") : line.execute(args);
        } catch (Error e) {
            return failed(e, console);
        } finally {
            console.printer().flush();
            console.errors().flush();
        }
    }

    /** Options and arguments that picocli does not take: what is wrong, what was probably meant, where to read on. */
    private static int misused(CommandLine.ParameterException e, Console console) {
        CommandLine command = e.getCommandLine();
        String name = command.getCommandSpec().qualifiedName();
        boolean noCommand = command.getParent() == null && e instanceof CommandLine.UnmatchedArgumentException;
        String commands = String.join(", ", command.getSubcommands().keySet());
        console.errors()
                .println(
                        noCommand
                                ? e.getMessage() + "; the commands are " + commands
                                : e.getMessage().replace("is not an int", "is no whole number"));
        CommandLine.UnmatchedArgumentException.printSuggestions(e, console.errors());
        console.errors().println("How it is used: " + name + " --help");
        return BAD_INPUT;
    }

    private static int failed(Throwable e, Console console) {
        console.printer().flush();
        if (e instanceof BadFile || e instanceof NoSuchThing || e instanceof BadArgument) {
            console.errors().println(e.getMessage());
            return BAD_INPUT;
        }
        if (e instanceof InvalidPathException path) {
            console.errors().println("'" + path.getInput() + "' is no name of a file");
            return BAD_INPUT;
        }
        console.errors().println("Wetside itself failed: " + e);
        if (System.getenv("WETSIDE_TRACE") == null) {
            console.errors().println("This is a fault of ours; with WETSIDE_TRACE=1 set it shows where.");
        } else {
            for (Throwable t = e; t != null; t = t.getCause()) {
                console.errors().println("  " + t);
                Arrays.stream(t.getStackTrace()).forEach(at -> console.errors().println("    at " + at));
            }
        }
        return INTERNAL;
    }
}
