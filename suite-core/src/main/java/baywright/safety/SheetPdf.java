package baywright.safety;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** Sets a page of XHTML as PDF with its typefaces in it. */
public final class SheetPdf {

    private static final String FAMILY = "Roboto";
    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/Roboto-";

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
            builder.useFont(() -> face("Regular"), FAMILY, 400, FontStyle.NORMAL, true);
            builder.useFont(() -> face("Bold"), FAMILY, 700, FontStyle.NORMAL, true);
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
        return SheetPdf.class.getResourceAsStream(FOLDER + style + ".ttf");
    }
}
