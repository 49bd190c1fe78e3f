package wetside.page;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * A sheet as PDF on A4: tagged, fonts embedded, drawings as vectors, every page with the plate's line and its number. Takes a
 * second the first time; nothing outside the program is read.
 */
public final class PdfSheet {
    /** Held, or the setting would be forgotten with the logger. */
    private static final Logger[] QUIET = {Logger.getLogger("org.apache.pdfbox"), Logger.getLogger("org.apache.fontbox")
    };

    static {
        // Drawing needs no screen, and what the library says to itself is nobody's business here: a sheet that fails,
        // throws.
        System.setProperty("java.awt.headless", "true");
        XRLog.setLoggingEnabled(false);
        for (Logger logger : QUIET) {
            logger.setLevel(Level.SEVERE);
        }
        if (System.getProperty("pdfbox.fontcache") == null) {
            System.setProperty("pdfbox.fontcache", System.getProperty("java.io.tmpdir"));
        }
    }

    private PdfSheet() {}

    public static byte[] of(Sheet sheet) {
        String style = Fonts.addressed() + Theme.onPaper(Markup.style("sheet") + Markup.style("paper"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useProtocolsStreamImplementation(PdfSheet::font, Fonts.PROTOCOL);
        builder.useUriResolver((base, uri) -> uri.startsWith(Fonts.PROTOCOL + ":") ? uri : null);
        builder.withProducer("Wetside");
        builder.usePdfUaAccessibility(true);
        builder.withHtmlContent(Markup.of(sheet, style, true), null);
        builder.toStream(out);
        try (BatikSVGDrawer drawer = new BatikSVGDrawer()) {
            builder.useSVGDrawer(drawer);
            builder.run();
        } catch (IOException e) {
            throw new IllegalStateException("the sheet cannot be set as PDF", e);
        }
        return out.toByteArray();
    }

    private static FSStream font(String address) {
        return new FSStream() {
            @Override
            public InputStream getStream() {
                return Fonts.forPaper(address);
            }

            @Override
            public Reader getReader() {
                return new InputStreamReader(getStream(), StandardCharsets.ISO_8859_1);
            }
        };
    }
}
