package wetside.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Where a command prints and reads. */
final class Console {
    private final PrintWriter out;
    private final PrintWriter err;
    private final BufferedReader in;
    private final boolean terminal;

    Console(PrintStream out, PrintStream err, InputStream in) {
        this.out = new PrintWriter(out, false, StandardCharsets.UTF_8);
        this.err = new PrintWriter(err, true, StandardCharsets.UTF_8);
        this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        terminal = System.console() != null;
    }

    PrintWriter printer() {
        return out;
    }

    PrintWriter errors() {
        return err;
    }

    /** True when a person sits at a terminal. */
    boolean isTerminal() {
        return terminal;
    }

    void line(String text) {
        out.println(text);
    }

    /** Next line typed, or null at the end. */
    String ask(String prompt) {
        out.print(prompt);
        out.flush();
        try {
            return in.readLine();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
