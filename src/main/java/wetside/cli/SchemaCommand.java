package wetside.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import wetside.kind.Kinds;
import wetside.machine.MachineSchema;

/** Prints the JSON Schema of machine files. */
@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "Print the JSON Schema of machine files, for editors that complete and check while you type.")
final class SchemaCommand implements Callable<Integer> {
    private final Console console;

    SchemaCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.result(MachineSchema.json(Kinds.declarations()));
        return 0;
    }
}
