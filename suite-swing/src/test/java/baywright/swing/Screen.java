package baywright.swing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;

/** What tests of the window share. */
public final class Screen {

    private static final long LONGEST_NANOS = 60_000_000_000L;

    private Screen() {}

    /** Skips the test where no window can be shown. */
    public static void needed() {
        assumeThat(GraphicsEnvironment.isHeadless())
                .as("no display: run under xvfb-run")
                .isFalse();
    }

    /** Does something on the event thread and waits for it. */
    public static <T> T on(Callable<T> work) throws Exception {
        FutureTask<T> task = new FutureTask<>(work);
        SwingUtilities.invokeAndWait(task);
        return task.get();
    }

    /** The same for what gives nothing back. */
    public static void run(Runnable work) throws Exception {
        on(() -> {
            work.run();
            return null;
        });
    }

    /** Waits until something holds, asked on the event thread; only a fault makes it wait long. */
    public static void until(Callable<Boolean> holds) throws Exception {
        long end = System.nanoTime() + LONGEST_NANOS;
        while (!on(holds)) {
            assertThat(System.nanoTime()).as("waited too long").isLessThan(end);
            Thread.sleep(10);
        }
    }

    /** All components inside a container. */
    public static Stream<Component> everything(Container container) {
        return Stream.of(container.getComponents())
                .flatMap(c ->
                        c instanceof Container inner ? Stream.concat(Stream.of(c), everything(inner)) : Stream.of(c));
    }
}
