package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The files a command writes its drawing or sheet to, refused at once where they cannot be written. A drawing may go to the
 * screen instead.
 */
final class Written {
    private static final String SCREEN = "-";

    private final Console console;
    private final boolean onScreen;
    private OutputFile svg;
    private OutputFile html;
    private OutputFile pdf;
    private final List<OutputFile> done = new ArrayList<>();

    /** Each a file's name, or null when it is not wanted; {@code svg} may be - for the screen. */
    Written(Console console, String svg, String html, String pdf) {
        this.console = console;
        onScreen = SCREEN.equals(svg);
        this.svg = svg == null || onScreen ? null : file("--svg", svg);
        this.html = html == null ? null : file("--html", html);
        this.pdf = pdf == null ? null : file("--pdf", pdf);
    }

    private OutputFile file(String option, String name) {
        OutputFile file = OutputFile.of(option, name);
        if (Stream.of(svg, html).anyMatch(f -> f != null && f.path().equals(file.path()))) {
            throw new BadArgument(option + " names a file that another option writes");
        }
        return file;
    }

    boolean isEmpty() {
        return !onScreen && svg == null && html == null && pdf == null;
    }

    boolean wantsSheet() {
        return html != null || pdf != null;
    }

    void svg(Supplier<String> drawing) {
        if (onScreen) {
            console.printer().print(drawing.get());
        }
        text(svg, drawing);
    }

    void html(Supplier<String> page) {
        text(html, page);
    }

    void pdf(Supplier<byte[]> paper) {
        if (pdf != null) {
            pdf.write(paper.get());
            done.add(pdf);
        }
    }

    private void text(OutputFile file, Supplier<String> text) {
        if (file != null) {
            file.write(text.get());
            done.add(file);
        }
    }

    /** Says what was written, unless something for programs is on the screen. */
    void told(boolean quietly) {
        if (!quietly && !onScreen) {
            done.forEach(file -> console.line("Written: " + file.path()));
        }
    }
}
