package baywright.swing.papers;

import baywright.swing.api.Task;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Pages of a PDF as pictures. */
final class PageImages {

    /** Units of a PDF in an inch (ISO 32000-1, 8.3.2.3). */
    private static final float POINTS = 72;

    private PageImages() {}

    /**
     * Draws the pages, as many as there is time for until cancelled; not for the event thread.
     *
     * @param dots dots in an inch, more than 0
     */
    static List<BufferedImage> of(byte[] pdf, float dots, Task.Progress progress) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            int count = document.getNumberOfPages();
            List<BufferedImage> pages = new ArrayList<>();
            for (int i = 0; i < count && !progress.cancelled(); i++) {
                pages.add(renderer.renderImage(i, dots / POINTS, ImageType.RGB));
                progress.at((i + 1) / (double) count);
            }
            return pages;
        }
    }
}
