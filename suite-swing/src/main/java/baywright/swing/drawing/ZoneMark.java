package baywright.swing.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** A small sign, known by its shape. What it means is said by whoever puts it there. */
public enum ZoneMark {
    OCTAGON,
    TRIANGLE,
    CIRCLE,
    TICK,
    DIAMOND,
    SQUARE,
    ZIGZAG,
    CROSS,
    DOT,
    FRAME;

    private static final double[] OCTAGON_CORNERS = {.3, 0, .7, 0, 1, .3, 1, .7, .7, 1, .3, 1, 0, .7, 0, .3};

    /** Paints it into a square of {@code size} pixels, in ink on a plate. */
    public void paint(Graphics2D g, double x, double y, double size, Color ink, Color plate) {
        java.awt.Shape shape = shape(x, y, size);
        Color before = g.getColor();
        java.awt.Stroke stroke = g.getStroke();
        if (isOpen()) {
            g.setStroke(
                    new BasicStroke((float) Math.max(2.5, size / 2.6), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(plate);
            g.draw(shape);
            g.setStroke(
                    new BasicStroke((float) Math.max(1.4, size / 6), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.setColor(ink);
            g.draw(shape);
        } else {
            g.setStroke(new BasicStroke((float) Math.max(1.5, size / 6)));
            g.setColor(plate);
            g.draw(shape);
            g.setColor(ink);
            g.fill(shape);
        }
        g.setStroke(stroke);
        g.setColor(before);
    }

    private boolean isOpen() {
        return this == TICK || this == ZIGZAG || this == CROSS || this == FRAME;
    }

    private java.awt.Shape shape(double x, double y, double s) {
        return switch (this) {
            case CIRCLE -> new Ellipse2D.Double(x, y, s, s);
            case DOT -> new Ellipse2D.Double(x + s / 4, y + s / 4, s / 2, s / 2);
            case SQUARE -> new Rectangle2D.Double(x + s * .1, y + s * .1, s * .8, s * .8);
            case TRIANGLE -> path(true, x, y, s, .5, 0, 1, .95, 0, .95);
            case DIAMOND -> path(true, x, y, s, .5, 0, 1, .5, .5, 1, 0, .5);
            case TICK -> path(false, x, y, s, .05, .55, .4, .9, .95, .1);
            case ZIGZAG -> path(false, x, y, s, 0, .75, .3, .2, .6, .8, 1, .2);
            case OCTAGON -> path(true, x, y, s, OCTAGON_CORNERS);
            case FRAME -> {
                Path2D frame = path(true, x, y, s, 0, .1, 1, .1, 1, .9, 0, .9);
                frame.append(path(false, x, y, s, .1, .8, .4, .4, .65, .7, .9, .5), false);
                yield frame;
            }
            case CROSS -> {
                Path2D cross = path(false, x, y, s, .1, .1, .9, .9);
                cross.append(path(false, x, y, s, .9, .1, .1, .9), false);
                yield cross;
            }
        };
    }

    private static Path2D path(boolean closed, double x, double y, double s, double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(x + s * corners[0], y + s * corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(x + s * corners[i], y + s * corners[i + 1]);
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }
}
