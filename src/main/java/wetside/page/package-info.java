/**
 * Printable sheets: one content, as a page that needs no other file and as a PDF that needs no other program.
 *
 * <p>A sheet is records ({@link wetside.page.Sheet}): plate, sections, blocks. Templates in {@code src/main/jte} turn them
 * into markup and escape every text; {@link wetside.page.HtmlSheet} adds style and fonts for a browser, {@link
 * wetside.page.PdfSheet} sets the same markup on A4. Nothing here knows machines; what is on a sheet is its author's.
 */
package wetside.page;
