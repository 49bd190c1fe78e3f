package wetside.docs;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Output shown on a page, kept true: a comment naming the command stands right before a fenced block.
 *
 * <pre>
 * &lt;!-- output of: ./wetside check machines/one.yaml --&gt;            standard output, whole
 * &lt;!-- first 12 lines of: ./wetside readings machines/one.yaml --&gt;  its beginning
 * &lt;!-- messages of: ./wetside check broken.yaml --&gt;                 standard error
 * </pre>
 *
 * A command may end in {@code < FILE}: what a person would type, line by line.
 */
record ShownOutput(String command, boolean messages, int firstLines, String shown, int from, int to) {
    private static final Pattern BLOCK = Pattern.compile(
            "<!-- (output|messages|first (\\d+) lines) of: \\./wetside ?([^\\n]*?) ?-->\\R```\\w*\\R(.*?)^```",
            Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|'([^']*)'|(\\S+)");

    /** What a command printed. */
    record Printed(int exitCode, String out, String err) {}

    /** Runs a command line of Wetside, in this process. */
    interface Runner {
        Printed run(List<String> arguments, String inputFile);
    }

    static List<ShownOutput> on(String page) {
        List<ShownOutput> blocks = new ArrayList<>();
        Matcher block = BLOCK.matcher(page);
        while (block.find()) {
            int lines = block.group(2) == null ? Integer.MAX_VALUE : Integer.parseInt(block.group(2));
            boolean messages = block.group(1).equals("messages");
            blocks.add(new ShownOutput(block.group(3), messages, lines, block.group(4), block.start(4), block.end(4)));
        }
        return blocks;
    }

    /** What the command prints now, in the form in which the page should show it. */
    String fresh(Runner runner) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2) != null ? word.group(2) : word.group(3));
        }
        int from = words.indexOf("<");
        String inputFile = from < 0 ? null : words.get(from + 1);
        Printed printed = runner.run(from < 0 ? words : words.subList(0, from), inputFile);
        if (!messages && printed.exitCode >= 2) {
            throw new AssertionError("./wetside " + command + " ended with " + printed.exitCode + ":\n" + printed.err);
        }
        return tidy(messages ? printed.err : printed.out);
    }

    String shownTidy() {
        return tidy(shown);
    }

    private String tidy(String text) {
        StringBuilder tidy = new StringBuilder();
        text.stripTrailing()
                .lines()
                .limit(firstLines)
                .forEach(line -> tidy.append(line.stripTrailing()).append('\n'));
        return tidy.toString();
    }

    /** The page with every shown output replaced by a fresh one. */
    static String renew(String page, Runner runner) {
        StringBuilder renewed = new StringBuilder();
        int done = 0;
        for (ShownOutput block : on(page)) {
            renewed.append(page, done, block.from).append(block.fresh(runner));
            done = block.to;
        }
        return renewed.append(page.substring(done)).toString();
    }
}
