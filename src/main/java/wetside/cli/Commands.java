package wetside.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;

/** Makes commands, giving each the console it prints to. */
final class Commands implements CommandLine.IFactory {
    /** In the order of the help. Kept here by name, because reading an annotation takes as long as a small command. */
    private static final Map<String, Class<?>> ALL = new LinkedHashMap<>();

    static {
        ALL.put("diagnose", DiagnoseCommand.class);
        ALL.put("readings", ReadingsCommand.class);
        ALL.put("run", RunCommand.class);
        ALL.put("check", CheckCommand.class);
        ALL.put("map", MapCommand.class);
        ALL.put("cabinet", CabinetCommand.class);
        ALL.put("part", PartCommand.class);
        ALL.put("tour", TourCommand.class);
        ALL.put("water", WaterCommand.class);
        ALL.put("schema", SchemaCommand.class);
        ALL.put("new", NewCommand.class);
        ALL.put("bench", BenchCommand.class);
        ALL.put("evaluate", EvaluateCommand.class);
    }

    private final Console console;

    Commands(Console console) {
        this.console = console;
    }

    /** With the command that is asked for, or all of them where none of that name is: only then are the others shown. */
    CommandLine line(String first) {
        CommandLine line = new CommandLine(Wetside.class, this);
        if (ALL.containsKey(first)) {
            return line.addSubcommand(first, ALL.get(first));
        }
        ALL.forEach(line::addSubcommand);
        return line.addSubcommand(CommandLine.HelpCommand.class);
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        try {
            return type.getDeclaredConstructor(Console.class).newInstance(console);
        } catch (NoSuchMethodException e) {
            return CommandLine.defaultFactory().create(type);
        }
    }
}
