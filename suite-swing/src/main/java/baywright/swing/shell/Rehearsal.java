package baywright.swing.shell;

import baywright.site.OpenShop;
import baywright.swing.api.Workbench;
import baywright.swing.api.WorkbenchView;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;

/** Shows a shop on every workbench without a window or a display, painted to memory. */
final class Rehearsal {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;
    private static final int PAUSE_MILLIS = 20;
    private static final int LONGEST_PAUSES = 60_000 / PAUSE_MILLIS;

    private final ShopDesk desk;
    private final List<Workbench> workbenches;

    Rehearsal(ShopDesk desk, List<Workbench> workbenches) {
        this.desk = desk;
        this.workbenches = workbenches;
    }

    /**
     * Returns when the last workbench is painted; what takes longer than a minute to be worked out is not waited for. Off the
     * event thread.
     */
    void play(OpenShop shop) throws InterruptedException, InvocationTargetException {
        SwingUtilities.invokeAndWait(() -> desk.open(shop, Optional.empty()));
        settle();
        for (Workbench workbench : workbenches) {
            WorkbenchView[] view = new WorkbenchView[1];
            SwingUtilities.invokeAndWait(() -> {
                view[0] = workbench.open(desk);
                view[0].show(desk.state());
            });
            settle();
            SwingUtilities.invokeAndWait(() -> {
                view[0].show(desk.state());
                paint(view[0].component());
            });
        }
    }

    private void settle() throws InterruptedException, InvocationTargetException {
        boolean[] busy = {true};
        for (int pauses = 0; busy[0] && pauses < LONGEST_PAUSES; pauses++) {
            Thread.sleep(PAUSE_MILLIS);
            SwingUtilities.invokeAndWait(() -> busy[0] = desk.isBusy());
        }
    }

    private static void paint(JComponent component) {
        component.setSize(WIDTH, HEIGHT);
        layOut(component);
        Graphics2D graphics = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB).createGraphics();
        try {
            component.print(graphics);
        } finally {
            graphics.dispose();
        }
    }

    /** What stands in no window is not laid out by being validated. */
    private static void layOut(Container container) {
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }
}
