package baywright.swing.survey;

import baywright.swing.api.Colours;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;

/** A small picture of a photo; a crossed frame where the photo is broken. */
record PictureIcon(Loaded loaded) implements Icon {

    private static final int WIDTH = 88;
    private static final int HEIGHT = 66;

    /** Longer side in pixels of a screen of twice the usual density. */
    static int side() {
        return 2 * UIScale.scale(WIDTH);
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        Rectangle2D room = new Rectangle2D.Double(x + .5, y + .5, getIconWidth() - 1, getIconHeight() - 1);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        loaded.image().ifPresentOrElse(image -> fit(g, image, room), () -> {
            g.setColor(Colours.of("outline"));
            g.setStroke(new BasicStroke(UIScale.scale(1f)));
            g.draw(room);
            if (loaded.isBroken()) {
                g.draw(new Line2D.Double(room.getMinX(), room.getMinY(), room.getMaxX(), room.getMaxY()));
                g.draw(new Line2D.Double(room.getMinX(), room.getMaxY(), room.getMaxX(), room.getMinY()));
            }
        });
        g.dispose();
    }

    /** Paints a picture as large as it fits, in the middle; never larger than it is by more than twice. */
    static void fit(Graphics2D g, Image image, Rectangle2D room) {
        double width = image.getWidth(null);
        double height = image.getHeight(null);
        double scale = Math.min(2, Math.min(room.getWidth() / width, room.getHeight() / height));
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform place = AffineTransform.getTranslateInstance(
                room.getCenterX() - width * scale / 2, room.getCenterY() - height * scale / 2);
        place.scale(scale, scale);
        g.drawImage(image, place, null);
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(WIDTH);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(HEIGHT);
    }
}
