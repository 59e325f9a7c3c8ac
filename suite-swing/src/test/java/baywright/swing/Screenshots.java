package baywright.swing;

import baywright.library.ScriptCache;
import baywright.swing.api.SuitePlugin;
import baywright.swing.shell.Look;
import baywright.swing.shell.Suite;
import baywright.swing.shell.UserSettings;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/** Draws each workbench in light and dark to files, for the documents and for looking them over. */
final class Screenshots {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final int LONGEST_MILLIS = 60_000;

    private Screenshots() {}

    /**
     * Words: a folder for the pictures, then workspaces to show, each perhaps with a job of it as {@code folder#job}; after {@code --}
     * ids of workbenches when not all are meant. Or a folder and {@code documents} for the pictures of the documents.
     */
    public static void main(String[] args) throws Exception {
        List<String> words = List.of(args);
        if (words.size() == 2 && words.get(1).equals("documents")) {
            documents(Files.createDirectories(Path.of(words.get(0))));
            System.exit(0);
        }
        int cut = words.contains("--") ? words.indexOf("--") : words.size();
        Path folder = Files.createDirectories(Path.of(words.get(0)));
        List<String> only = words.subList(Math.min(cut + 1, words.size()), words.size());
        for (Look look : Look.values()) {
            shoot(look, folder, words.subList(1, cut), only, Screenshots::nameOf);
        }
        System.exit(0);
    }

    private static String nameOf(String word) {
        return Path.of(word.replaceAll("#.*", "")).getFileName()
                + (word.contains("#") ? word.replaceAll(".*#", "-") : "") + "-";
    }

    /** Every workbench with the demo in light and dark, without a job, and with a shop of many jobs and long plans. */
    private static void documents(Path folder) throws Exception {
        Path shops = Files.createTempDirectory("baywright-pictures");
        Path demo = DemoShops.copy("millrace-works", shops.resolve("demo"));
        for (Look look : Look.values()) {
            shoot(look, folder, List.of(demo + "#green-estate"), List.of(), word -> "");
        }
        if (isLarge()) {
            return;
        }
        Path empty = DemoShops.copyWithoutJobs("millrace-works", shops.resolve("empty"));
        Path large = DemoShops.copyMadeLarge("millrace-works", shops.resolve("large"));
        shoot(
                Look.LIGHT,
                folder,
                List.of(empty.toString(), large + "#green-estate"),
                List.of(),
                word -> Path.of(word.replaceAll("#.*", "")).getFileName() + "-");
    }

    /** On a display of twice the size the demo alone is drawn. */
    private static boolean isLarge() {
        return !System.getProperty("sun.java2d.uiScale", "1").equals("1");
    }

    private static void shoot(
            Look look, Path folder, List<String> workspaces, List<String> only, UnaryOperator<String> names)
            throws Exception {
        Suite suite = new Suite(new Suite.Surroundings(
                CLOCK,
                ScriptCache.ofUser(),
                UserSettings.inMemory(),
                Optional.empty(),
                Optional.of(Path.of("").toAbsolutePath()),
                Locale.UK));
        List<SuitePlugin> plugins = new ArrayList<>();
        ServiceLoader.load(SuitePlugin.class).forEach(plugins::add);
        suite.start(plugins);
        String end = "-" + look.name().toLowerCase(Locale.ROOT) + ".png";
        JFrame[] window = new JFrame[1];
        SwingUtilities.invokeAndWait(() -> {
            look.apply();
            window[0] = suite.makeWindow();
            window[0].setVisible(true);
        });
        settle(suite);
        draw(window[0], folder.resolve("start" + end));
        for (String word : workspaces) {
            Path workspace = Path.of(word.replaceAll("#.*", ""));
            Optional<String> job = word.contains("#") ? Optional.of(word.replaceAll(".*#", "")) : Optional.empty();
            SwingUtilities.invokeAndWait(() -> suite.open(workspace, job));
            settle(suite);
            for (String workbench : suite.workbenches()) {
                if (only.isEmpty() || only.contains(workbench)) {
                    SwingUtilities.invokeAndWait(() -> suite.show(workbench));
                    settle(suite);
                    draw(window[0], folder.resolve(names.apply(word) + workbench + end));
                }
            }
        }
        SwingUtilities.invokeAndWait(window[0]::dispose);
    }

    /** Until nothing is being worked out any more. */
    private static void settle(Suite suite) throws Exception {
        long end = System.currentTimeMillis() + LONGEST_MILLIS;
        int still = 0;
        while (still < 4 && System.currentTimeMillis() < end) {
            boolean[] busy = new boolean[1];
            SwingUtilities.invokeAndWait(() -> busy[0] = suite.isBusy());
            still = busy[0] ? 0 : still + 1;
            Thread.sleep(60);
        }
    }

    private static void draw(JFrame window, Path file) throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            window.validate();
            AffineTransform scale = window.getGraphicsConfiguration().getDefaultTransform();
            int width = (int) (window.getRootPane().getWidth() * scale.getScaleX());
            int height = (int) (window.getRootPane().getHeight() * scale.getScaleY());
            BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = image.createGraphics();
            g.transform(scale);
            window.getRootPane().printAll(g);
            g.dispose();
            try {
                ImageIO.write(image, "png", file.toFile());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
