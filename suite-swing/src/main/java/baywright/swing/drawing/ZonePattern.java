package baywright.swing.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** What lies over the colour of a zone, told apart by shape alone. */
public enum ZonePattern {
    PLAIN,
    /** Thin lines that rise to the right. */
    RISING,
    /** Lines both ways. */
    CROSSED,
    /** Dots in rows. */
    DOTTED,
    /** Thick level lines. */
    BARRED,
    /** A few short dashes: nothing is known. */
    BLANK;

    /** Paints it in the ink over a shape; {@code unit} is how many pixels make one unit of the look at 100 %. */
    void paint(Graphics2D g, Shape over, Color ink, double unit) {
        if (this == PLAIN) {
            return;
        }
        Graphics2D in = (Graphics2D) g.create();
        in.clip(over);
        in.setColor(new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), this == BLANK ? 70 : 105));
        in.setStroke(new BasicStroke((float) ((this == BARRED ? 2.2 : 1) * unit)));
        Rectangle2D box = over.getBounds2D();
        switch (this) {
            case RISING -> slanted(in, box, 8 * unit, true);
            case CROSSED -> {
                slanted(in, box, 8 * unit, true);
                slanted(in, box, 8 * unit, false);
            }
            case DOTTED -> dots(in, box, 7 * unit, 1.4 * unit);
            case BARRED -> bars(in, box, 8 * unit);
            default -> dashes(in, box, 14 * unit);
        }
        in.dispose();
    }

    /** Lines through the whole picture's grid, so that they run on from part to part. */
    private static void slanted(Graphics2D g, Rectangle2D box, double step, boolean rising) {
        double from = Math.floor((box.getMinX() - box.getHeight()) / step) * step;
        for (double x = from; x < box.getMaxX() + box.getHeight(); x += step) {
            double slope = rising ? box.getHeight() : -box.getHeight();
            g.draw(new Line2D.Double(x, box.getMaxY(), x + slope, box.getMinY()));
        }
    }

    private static void dots(Graphics2D g, Rectangle2D box, double step, double radius) {
        for (double y = Math.floor(box.getMinY() / step) * step; y < box.getMaxY(); y += step) {
            for (double x = Math.floor(box.getMinX() / step) * step; x < box.getMaxX(); x += step) {
                g.fill(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
            }
        }
    }

    private static void bars(Graphics2D g, Rectangle2D box, double step) {
        for (double y = Math.floor(box.getMinY() / step) * step; y < box.getMaxY(); y += step) {
            g.draw(new Line2D.Double(box.getMinX(), y, box.getMaxX(), y));
        }
    }

    private static void dashes(Graphics2D g, Rectangle2D box, double step) {
        for (double y = Math.floor(box.getMinY() / step) * step; y < box.getMaxY(); y += step) {
            for (double x = Math.floor(box.getMinX() / step) * step; x < box.getMaxX(); x += step) {
                g.draw(new Line2D.Double(x, y, x + step / 4, y));
            }
        }
    }
}
