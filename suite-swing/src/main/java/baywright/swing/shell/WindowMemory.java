package baywright.swing.shell;

import baywright.swing.api.Settings;
import java.awt.Component;
import java.awt.Container;
import java.awt.Frame;
import java.awt.GraphicsConfiguration;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JSplitPane;

/** Where the window stood, and where its split panes that have a name were split. On the event thread. */
final class WindowMemory {

    private static final String PLACE = "suite.window.place";
    private static final String SPLIT = "suite.window.split.";

    private final Settings settings;

    WindowMemory(Settings settings) {
        this.settings = settings;
    }

    /** Puts a window where it stood, if enough of that is on a screen today. */
    void place(JFrame window) {
        settings.get(PLACE)
                .flatMap(WindowMemory::rectangle)
                .filter(WindowMemory::isOnScreen)
                .ifPresent(window::setBounds);
        if (settings.get(PLACE).filter(text -> text.endsWith(" max")).isPresent()) {
            window.setExtendedState(Frame.MAXIMIZED_BOTH);
        }
    }

    private static Optional<Rectangle> rectangle(String text) {
        String[] parts = text.split(" ", -1);
        try {
            return Optional.of(new Rectangle(
                    Integer.parseInt(parts[0]),
                    Integer.parseInt(parts[1]),
                    Integer.parseInt(parts[2]),
                    Integer.parseInt(parts[3])));
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            return Optional.empty();
        }
    }

    private static boolean isOnScreen(Rectangle window) {
        return window.width > 200
                && window.height > 200
                && Stream.of(GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices())
                        .map(device -> device.getDefaultConfiguration())
                        .map(GraphicsConfiguration::getBounds)
                        .map(window::intersection)
                        .anyMatch(seen -> seen.width > 200 && seen.height > 100);
    }

    void remember(JFrame window) {
        boolean isLarge = (window.getExtendedState() & Frame.MAXIMIZED_BOTH) == Frame.MAXIMIZED_BOTH;
        if (isLarge) {
            String before = settings.get(PLACE).orElse("0 0 1280 800").replace(" max", "");
            settings.put(PLACE, before + " max");
        } else {
            Rectangle at = window.getBounds();
            settings.put(PLACE, at.x + " " + at.y + " " + at.width + " " + at.height);
        }
        splits(window)
                .forEach(split -> settings.put(SPLIT + split.getName(), Integer.toString(split.getDividerLocation())));
    }

    /** Splits a component that has just been made as it was split last. */
    void split(Container made) {
        splits(made)
                .forEach(split -> settings.get(SPLIT + split.getName()).ifPresent(at -> {
                    try {
                        split.setDividerLocation(Integer.parseInt(at));
                    } catch (NumberFormatException e) {
                        settings.remove(SPLIT + split.getName());
                    }
                }));
    }

    private static Stream<JSplitPane> splits(Container container) {
        Stream<JSplitPane> self =
                container instanceof JSplitPane split && split.getName() != null ? Stream.of(split) : Stream.empty();
        return Stream.concat(
                self,
                Stream.of(container.getComponents())
                        .flatMap((Component c) -> c instanceof Container inner ? splits(inner) : Stream.empty()));
    }
}
