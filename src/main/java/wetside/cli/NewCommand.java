package wetside.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a small machine file to begin from. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        versionProvider = Build.class,
        description = "Write a machine file to begin from: a small machine, every section explained.")
final class NewCommand implements Callable<Integer> {
    private static final String TITLE = "Fellmoor Plain";

    private final Console console;

    @Parameters(index = "0", paramLabel = "FILE", description = "file to write; one that is there is left alone")
    private String file;

    @Option(names = "--title", paramLabel = "TEXT", description = "what the machine is called")
    private String title = TITLE;

    NewCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        String name = file.matches(".*\\.ya?ml") ? file : file + ".yaml";
        OutputFile output = OutputFile.of("the machine file", name);
        if (Files.exists(output.path())) {
            throw new BadArgument(name + " is there already and was left alone; choose another name");
        }
        if (title.isBlank() || title.length() > 80 || title.codePoints().anyMatch(Character::isISOControl)) {
            throw new BadArgument("--title: a title has one line of 1 to 80 signs");
        }
        output.write(starter()
                .replaceFirst(
                        "(?m)^title: .*$",
                        Matcher.quoteReplacement(
                                "title: \"" + title.replace("\\", "\\\\").replace("\"", "\\\"") + "\"")));
        console.line(name + " is written: a small machine that works. Change it part by part and ask between");
        console.line("  ./wetside check " + name + "     is it right?");
        console.line("  ./wetside readings " + name + "  what should it show?");
        return 0;
    }

    private static String starter() {
        try (InputStream in = NewCommand.class.getResourceAsStream("/wetside/starter.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("the machine to begin from", e);
        }
    }
}
