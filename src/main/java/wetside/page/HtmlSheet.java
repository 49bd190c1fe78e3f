package wetside.page;

/** A sheet as one HTML file that needs no other: style, fonts and drawings are inside; light, dark and print. */
public final class HtmlSheet {
    private HtmlSheet() {}

    public static String of(Sheet sheet) {
        String style = Theme.declarations() + Markup.style("sheet") + Markup.style("screen");
        String bare = Markup.of(sheet, "", false);
        return Markup.of(sheet, Fonts.embedded(bare) + style, false);
    }
}
