package baywright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import baywright.swing.ShopView.Grade;
import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.accessibility.Accessible;
import javax.swing.AbstractButton;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class MainWindowTest {

    private MainWindow window;

    @BeforeAll
    static void onlyWithADisplay() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless())
                .as("no display: run under xvfb-run")
                .isFalse();
        onEventThread(() -> {
            Look.LIGHT.apply();
            return null;
        });
    }

    @AfterEach
    void close() throws Exception {
        onEventThread(() -> {
            if (window != null) {
                window.dispose();
            }
            return null;
        });
    }

    @Test
    void anOpenedWorkspaceIsReadOffTheEventThreadAndShown() throws Exception {
        boolean[] onEventThread = {true};
        openWith(workspace -> {
            onEventThread[0] = SwingUtilities.isEventDispatchThread();
            return Shops.twoJobs();
        });
        until(() -> window.getTitle().equals("Millrace Works – Baywright"));
        assertThat(onEventThread[0]).isFalse();
        assertThat(onEventThread(() -> window.shopPage().jobs().getModel().getSize()))
                .isEqualTo(2);
    }

    @Test
    void choosingAFindingShowsItsStep() throws Exception {
        openWith(workspace -> Shops.twoJobs());
        until(() -> window.getTitle().contains("Millrace"));
        String step = onEventThread(() -> {
            JobPage page = window.shopPage().job();
            page.choose(Shops.twoJobs().jobs().get(0).findings().get(0));
            return page.chosenStep();
        });
        assertThat(step).isEqualTo("s3");
    }

    @Test
    void findingsOfOneLineAreAllAsHighAsOneLine() throws Exception {
        openWith(workspace -> Shops.twoJobs());
        until(() -> window.getTitle().contains("Millrace"));
        assertThat(onEventThread(() -> {
                    window.validate();
                    JList<?> findings = everything(window)
                            .filter(FindingList.class::isInstance)
                            .map(c -> (JList<?>) c)
                            .findFirst()
                            .orElseThrow();
                    int line = findings.getFontMetrics(findings.getFont()).getHeight();
                    return IntStream.range(0, 3)
                            .map(i -> findings.getCellBounds(i, i).height)
                            .filter(height -> height < line || height >= 2 * line)
                            .boxed()
                            .toList();
                }))
                .isEmpty();
    }

    @Test
    void aWorkspaceThatCannotBeReadSaysWhy() throws Exception {
        openWith(workspace -> {
            throw new IllegalArgumentException("shop.json:3:7: currency: there is no currency 'GPB'");
        });
        until(() -> onEventThreadQuietly(() -> textOf(window).contains("there is no currency 'GPB'")));
    }

    @Test
    void everythingThatTakesTheFocusHasAName() throws Exception {
        openWith(workspace -> Shops.twoJobs());
        until(() -> window.getTitle().contains("Millrace"));
        assertThat(onEventThread(() -> everything(window)
                        .filter(c -> c instanceof AbstractButton || c instanceof JTable || c instanceof JList)
                        .filter(c -> !c.getClass().getName().contains("flatlaf"))
                        .filter(Component::isFocusable)
                        .filter(c -> ((Accessible) c).getAccessibleContext().getAccessibleName() == null)
                        .toList()))
                .isEmpty();
    }

    @Test
    void aVerdictCountsStopsAndWarnings() {
        assertThat(Shops.twoJobs().jobs()).extracting(JobList::verdict).containsExactly("1 stop · 1 warning", "holds");
    }

    @Test
    void gradesDifferInShapeNotOnlyInColour() {
        assertThat(Stream.of(Grade.values()).map(MainWindowTest::covered).distinct())
                .hasSize(Grade.values().length);
    }

    private static int covered(Grade grade) {
        BufferedImage image = new BufferedImage(40, 40, BufferedImage.TYPE_INT_ARGB);
        new GradeIcon(grade).paintIcon(null, image.getGraphics(), 5, 5);
        int covered = 0;
        for (int x = 0; x < 40; x++) {
            for (int y = 0; y < 40; y++) {
                covered += image.getRGB(x, y) >>> 24 > 127 ? 1 : 0;
            }
        }
        return covered;
    }

    private void openWith(ShopReader reader) throws Exception {
        onEventThread(() -> {
            window = new MainWindow(reader);
            window.setVisible(true);
            window.open(Path.of("anywhere"));
            return null;
        });
    }

    private static String textOf(Container container) {
        StringBuilder text = new StringBuilder();
        everything(container).forEach(c -> {
            if (c instanceof JTextArea area) {
                text.append(area.getText()).append('\n');
            }
        });
        return text.toString();
    }

    private static Stream<Component> everything(Container container) {
        return Stream.of(container.getComponents())
                .flatMap(c ->
                        c instanceof Container inner ? Stream.concat(Stream.of(c), everything(inner)) : Stream.of(c));
    }

    private static <T> T onEventThread(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        SwingUtilities.invokeAndWait(task);
        return task.get();
    }

    private static boolean onEventThreadQuietly(Callable<Boolean> work) {
        try {
            return onEventThread(work);
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    private static void until(BooleanSupplier holds) throws InterruptedException {
        long end = System.nanoTime() + 10_000_000_000L;
        while (!holds.getAsBoolean()) {
            assertThat(System.nanoTime()).as("waited too long").isLessThan(end);
            Thread.sleep(20);
        }
    }
}
