package baywright.safety;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;

/** Sets a page of XHTML as PDF. */
public final class SheetPdf {

    private SheetPdf() {}

    /** The document's bytes. */
    public static byte[] of(String html) {
        // a drawing library asks for a logger that the program does not have and would complain on the terminal
        System.setProperty("slf4j.internal.verbosity", "ERROR");
        XRLog.setLoggingEnabled(false);
        try (ByteArrayOutputStream out = new ByteArrayOutputStream();
                BatikSVGDrawer drawings = new BatikSVGDrawer()) {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useSVGDrawer(drawings);
            builder.withHtmlContent(html.replace("<!DOCTYPE html>\n", ""), null);
            builder.withProducer("Baywright");
            builder.toStream(out);
            builder.run();
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
