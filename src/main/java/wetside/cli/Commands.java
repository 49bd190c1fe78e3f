package wetside.cli;

import picocli.CommandLine;

/** Makes commands, giving each the console it prints to. */
final class Commands implements CommandLine.IFactory {
    private final Console console;

    Commands(Console console) {
        this.console = console;
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
