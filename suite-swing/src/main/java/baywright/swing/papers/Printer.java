package baywright.swing.papers;

import java.awt.print.Pageable;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import javax.print.PrintServiceLookup;
import javax.print.attribute.HashPrintRequestAttributeSet;
import javax.print.attribute.PrintRequestAttributeSet;

/** What pages are printed on. */
interface Printer {

    /** Whether there is a printer at all; may take a while, not for the event thread. */
    boolean isThere();

    /** Asks the user which printer and which pages; on the event thread. No: they have thought better of it. */
    boolean ask(Pageable pages);

    /**
     * Prints; not for the event thread.
     *
     * @throws PrinterException when the printer refuses
     */
    void print(Pageable pages) throws PrinterException;

    /** Calls off what is being printed, from any thread. */
    void cancel();

    /** The printers that the system knows, by its own dialog. */
    final class OfSystem implements Printer {

        private final PrintRequestAttributeSet wishes = new HashPrintRequestAttributeSet();
        private PrinterJob job;

        @Override
        public boolean isThere() {
            return PrintServiceLookup.lookupPrintServices(null, null).length > 0;
        }

        @Override
        public boolean ask(Pageable pages) {
            job = PrinterJob.getPrinterJob();
            job.setPageable(pages);
            return job.printDialog(wishes);
        }

        @Override
        public void print(Pageable pages) throws PrinterException {
            job.setPageable(pages);
            job.print(wishes);
        }

        @Override
        public void cancel() {
            job.cancel();
        }
    }
}
