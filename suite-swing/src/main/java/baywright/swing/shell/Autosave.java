package baywright.swing.shell;

import baywright.site.OpenShop;
import baywright.site.UnsavedEdits;
import baywright.swing.api.DeskState;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Notes unsaved edits in the workspace shortly after each, so that a crash loses at most what was typed last. What is noted is one file
 * that is replaced as a whole.
 */
final class Autosave {

    private static final long DELAY_MILLIS = 200;

    private final ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread made = new Thread(work, "baywright unsaved edits");
        made.setDaemon(true);
        return made;
    });
    private final AtomicReference<OpenShop> next = new AtomicReference<>();
    private final HeldNotes notes;
    private final Consumer<Exception> failed;
    private boolean failing;

    /**
     * Notes nothing yet.
     *
     * @param failed told on the event thread when noting stops working, once until it works again
     */
    Autosave(HeldNotes notes, Consumer<Exception> failed) {
        this.notes = notes;
        this.failed = failed;
    }

    /** Notes the edits of a new state soon. Also the absence of any: then nothing is left to offer. */
    void changed(DeskState before, DeskState now) {
        Optional<OpenShop> shop = now.shop();
        if (shop.isPresent() && before.shop().isPresent() && !shop.equals(before.shop())) {
            boolean waits = next.getAndSet(shop.get()) != null;
            if (!waits) {
                Future<?> unused = thread.schedule(this::note, DELAY_MILLIS, TimeUnit.MILLISECONDS);
            }
        }
    }

    private synchronized void note() {
        OpenShop shop = next.getAndSet(null);
        if (shop == null) {
            return;
        }
        try {
            notes.of(shop.folder()).write(UnsavedEdits.of(shop));
            failing = false;
        } catch (RuntimeException e) {
            if (!failing) {
                failing = true;
                SwingUtilities.invokeLater(() -> failed.accept(e));
            }
        }
    }

    /** Notes at once what is still waiting. */
    void flush() {
        note();
    }
}
