package baywright.swing;

import baywright.library.ScriptCache;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.swing.SwingUtilities;

/** Draws the window's pages to files, for the documents and for looking them over. */
final class Screenshots {

    private Screenshots() {}

    /** Words: a folder for the pictures and a workspace to show, such as the demo. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        ShopView shop = new SiteReader(Clock.systemUTC(), Locale.UK, ScriptCache.none()).read(Path.of(args[1]));
        for (Look look : Look.values()) {
            SwingUtilities.invokeAndWait(() -> {
                look.apply();
                MainWindow window = new MainWindow(workspace -> Shops.noJobs());
                window.setVisible(true);
                shoot(window, folder.resolve("start-" + name(look)));
                window.show(shop);
                window.shopPage().jobs().setSelectedIndex(shop.jobs().size() - 1);
                window.validate();
                shoot(window, folder.resolve("shop-" + name(look)));
                window.show(Shops.noJobs());
                window.validate();
                shoot(window, folder.resolve("empty-" + name(look)));
                window.dispose();
            });
        }
        System.exit(0);
    }

    private static String name(Look look) {
        return look.name().toLowerCase(Locale.ROOT) + ".png";
    }

    private static void shoot(MainWindow window, Path file) {
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
    }
}
