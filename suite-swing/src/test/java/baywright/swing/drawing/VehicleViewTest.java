package baywright.swing.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import baywright.vehicle.Shape;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.FutureTask;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleState;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class VehicleViewTest {

    private static final Shape SALOON = ShippedShapes.all().get(1);

    private final List<List<String>> told = new ArrayList<>();

    @BeforeAll
    static void onlyWithADisplay() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless())
                .as("no display: run under xvfb-run")
                .isFalse();
        SwingUtilities.invokeAndWait(() -> {
            FlatLaf.registerCustomDefaultsSource("baywright.swing.theme");
            FlatLightLaf.setup();
        });
    }

    private VehicleView view() throws Exception {
        return onEventThread(() -> {
            VehicleView view = new VehicleView(
                    "Vehicle", SALOON, zone -> ZoneLook.plain(Color.LIGHT_GRAY, zone.title() + ", in words"));
            view.setSize(800, 700);
            view.onChoice(told::add);
            return view;
        });
    }

    private static <T> T onEventThread(java.util.concurrent.Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        SwingUtilities.invokeAndWait(task);
        return task.get();
    }

    private static Void press(VehicleView view, String... keys) {
        for (String key : keys) {
            Object name = view.getInputMap().get(KeyStroke.getKeyStroke(key));
            view.getActionMap().get(name).actionPerformed(new ActionEvent(view, ActionEvent.ACTION_PERFORMED, key));
        }
        return null;
    }

    @Test
    void theKeyboardChoosesAndAddsZones() throws Exception {
        VehicleView view = view();
        onEventThread(() -> {
            view.choose(List.of("front-door-left"));
            return press(view, "RIGHT", "ENTER", "UP", "SPACE", "SPACE");
        });
        assertThat(told)
                .containsExactly(
                        List.of("rear-door-left"),
                        List.of("rear-door-left", "side-glass-rear-left"),
                        List.of("rear-door-left"));
    }

    @Test
    void theMouseChoosesWhatItPointsAt() throws Exception {
        VehicleView view = view();
        onEventThread(() -> {
            Rectangle2D room = view.drawing().area("roof").orElseThrow().room();
            Point2D at = view.place().transform(new Point2D.Double(room.getCenterX(), room.getCenterY()), null);
            Point point = new Point((int) at.getX(), (int) at.getY());
            view.dispatchEvent(new MouseEvent(
                    view, MouseEvent.MOUSE_PRESSED, 0, 0, point.x, point.y, 1, false, MouseEvent.BUTTON1));
            return null;
        });
        assertThat(told).containsExactly(List.of("roof"));
    }

    @Test
    void zonesAreReadToThoseWhoDoNotSeeThem() throws Exception {
        VehicleView view = view();
        onEventThread(() -> {
            view.choose(List.of("bonnet"));
            AccessibleContext whole = view.getAccessibleContext();
            assertThat(whole.getAccessibleName()).isEqualTo("Vehicle");
            assertThat(whole.getAccessibleChildrenCount())
                    .isEqualTo(SALOON.zones().size());
            AccessibleContext bonnet = whole.getAccessibleChild(0).getAccessibleContext();
            assertThat(bonnet.getAccessibleName()).isEqualTo("Bonnet");
            assertThat(bonnet.getAccessibleDescription()).isEqualTo("Bonnet, in words");
            assertThat(bonnet.getAccessibleStateSet().contains(AccessibleState.SELECTED))
                    .isTrue();
            AccessibleContext roof = whole.getAccessibleChild(1).getAccessibleContext();
            roof.getAccessibleAction().doAccessibleAction(0);
            assertThat(view.chosen()).containsExactly("roof");
            return null;
        });
    }

    @Test
    void whatIsChosenStaysWhenOtherFindingsAreShown() throws Exception {
        VehicleView view = view();
        onEventThread(() -> {
            view.choose(List.of("bonnet", "roof"));
            Shape convertible = ShippedShapes.all().stream()
                    .filter(s -> s.zone("roof").isEmpty() && s.zone("bonnet").isPresent())
                    .findFirst()
                    .orElseThrow();
            view.show(convertible, zone -> ZoneLook.plain(Color.LIGHT_GRAY, ""));
            assertThat(view.chosen()).containsExactly("bonnet");
            return null;
        });
    }

    @Test
    void itPaintsAtAnySize() throws Exception {
        VehicleView view = view();
        onEventThread(() -> {
            for (int size : new int[] {1, 40, 1200}) {
                view.setSize(size, size);
                view.paint(new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB).getGraphics());
            }
            return null;
        });
        assertThat(told).isEmpty();
    }
}
