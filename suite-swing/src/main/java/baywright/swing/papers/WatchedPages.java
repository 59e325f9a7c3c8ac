package baywright.swing.papers;

import baywright.swing.api.Task;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Printable;

/** Pages that tell how far a printer has come, and that end where the user has called it off. */
final class WatchedPages implements Pageable {

    private final Pageable pages;
    private final Task.Progress progress;
    private final Runnable cancel;

    /** @param cancel calls the print off */
    WatchedPages(Pageable pages, Task.Progress progress, Runnable cancel) {
        this.pages = pages;
        this.progress = progress;
        this.cancel = cancel;
    }

    @Override
    public int getNumberOfPages() {
        return pages.getNumberOfPages();
    }

    @Override
    public PageFormat getPageFormat(int page) {
        return pages.getPageFormat(page);
    }

    /** A printer asks for the same page several times; the share told never falls behind the page. */
    @Override
    public Printable getPrintable(int page) {
        Printable printable = pages.getPrintable(page);
        return (graphics, format, index) -> {
            if (progress.cancelled()) {
                cancel.run();
                return Printable.NO_SUCH_PAGE;
            }
            int result = printable.print(graphics, format, index);
            progress.at((index + 1.0) / getNumberOfPages());
            return result;
        };
    }
}
