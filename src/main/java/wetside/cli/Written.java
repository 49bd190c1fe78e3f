package wetside.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The files a command writes its drawing or sheet to, refused at once where they cannot be written. */
final class Written {
    private final OutputFile svg;
    private final OutputFile html;
    private final OutputFile pdf;
    private final List<OutputFile> done = new ArrayList<>();

    /** Each a file's name, or null when it is not wanted. */
    Written(String svg, String html, String pdf) {
        this.svg = svg == null ? null : OutputFile.of("--svg", svg);
        this.html = html == null ? null : OutputFile.of("--html", html);
        this.pdf = pdf == null ? null : OutputFile.of("--pdf", pdf);
    }

    boolean isEmpty() {
        return svg == null && html == null && pdf == null;
    }

    boolean wantsSheet() {
        return html != null || pdf != null;
    }

    void svg(Supplier<String> drawing) {
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

    void told(Consumer<String> line) {
        done.forEach(file -> line.accept("Written: " + file.path()));
    }
}
