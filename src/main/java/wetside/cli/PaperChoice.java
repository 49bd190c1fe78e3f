package wetside.cli;

import picocli.CommandLine.Option;

/** Where a command writes what it would otherwise print. */
final class PaperChoice {
    @Option(names = "--html", paramLabel = "FILE", description = "write it as a page that needs no other file")
    private String html;

    @Option(names = "--pdf", paramLabel = "FILE", description = "write it for printing, A4")
    private String pdf;

    Written written(Console console) {
        return written(console, null);
    }

    /** The drawing too, to a file or, by -, to the screen; null when it is not wanted. */
    Written written(Console console, String svg) {
        return new Written(console, svg, html, pdf);
    }
}
