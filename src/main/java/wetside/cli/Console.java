package wetside.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Where a command prints and reads. Lines are at most {@link Lines#WIDTH} columns wide as far as words allow. */
final class Console {
    private static final int NARROWEST = 20;

    private final PrintWriter out;
    private final PrintWriter err;
    private final BufferedReader in;
    private final boolean typed;
    private final boolean watched;
    private PrintWriter talk;

    /**
     * @param typed   a person types the input, and sees it
     * @param watched a person reads the messages as they come
     */
    Console(PrintStream out, PrintStream err, InputStream in, boolean typed, boolean watched) {
        this.out = new PrintWriter(out, false, StandardCharsets.UTF_8);
        this.err = new PrintWriter(err, true, StandardCharsets.UTF_8);
        this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        this.typed = typed;
        this.watched = watched;
        talk = this.out;
    }

    /** From here on talk goes to the error stream, so that the output holds nothing but what programs read. */
    void talkAside() {
        talk = err;
    }

    PrintWriter printer() {
        return out;
    }

    PrintWriter errors() {
        return err;
    }

    /** True when a bar may be drawn on the error stream. */
    boolean isWatched() {
        return watched;
    }

    /** A line of output. */
    void line(String text) {
        talk.println(text);
    }

    /** A line for programs, whatever else goes aside. */
    void result(String text) {
        out.println(text);
    }

    /** Text after {@code label}; further lines begin where the text began. */
    void text(String label, String text) {
        String lead = label;
        int indent = Lines.width(label);
        for (String part : Lines.wrap(text, Math.max(NARROWEST, Lines.WIDTH - indent))) {
            talk.println((lead + part).stripTrailing());
            lead = " ".repeat(indent);
        }
    }

    /** Next line typed, or null at the end. What was not typed at a terminal is shown, so that the talk can be read. */
    String ask(String prompt) {
        talk.print(prompt);
        talk.flush();
        try {
            String said = in.readLine();
            if (!typed || said == null) {
                talk.println(said == null ? "" : said);
            }
            return said;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
