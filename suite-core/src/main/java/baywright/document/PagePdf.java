package baywright.document;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Sets a page as PDF with its typefaces in it, tagged so that a screen reader finds headings and tables, with title, author
 * and language.
 */
public final class PagePdf {

    private static final String FAMILY = "Roboto";
    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/Roboto-";

    /** Warns of substitutes for typefaces that no page uses; kept here, since a logger that nobody holds forgets its level. */
    private static final Logger FACES = Logger.getLogger("org.apache.pdfbox.pdmodel.font");

    private PagePdf() {}

    /** The document's bytes. */
    public static byte[] of(String html) {
        // a drawing library asks for a logger that the program does not have and would complain on the terminal
        System.setProperty("slf4j.internal.verbosity", "ERROR");
        XRLog.setLoggingEnabled(false);
        FACES.setLevel(Level.SEVERE);
        try (ByteArrayOutputStream out = new ByteArrayOutputStream();
                BatikSVGDrawer drawings = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useSVGDrawer(drawings);
            builder.useFont(() -> face("Regular"), FAMILY, 400, FontStyle.NORMAL, true);
            builder.useFont(() -> face("Bold"), FAMILY, 700, FontStyle.NORMAL, true);
            builder.useFont(() -> face("Italic"), FAMILY, 400, FontStyle.ITALIC, true);
            builder.useUnicodeLineBreaker(new LineBreaks());
            builder.usePdfUaAccessibility(true);
            builder.withHtmlContent(html.replace("<!DOCTYPE html>\n", ""), null);
            builder.withProducer("Baywright");
            builder.toStream(out);
            builder.run();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream face(String style) {
        return PagePdf.class.getResourceAsStream(FOLDER + style + ".ttf");
    }
}
