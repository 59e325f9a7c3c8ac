package baywright.swing.drawing;

import java.awt.Shape;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds room to write in a shape. */
final class Roomiest {

    private static final int GRID = 12;
    private static final int HALVINGS = 5;

    /** A place away from the middle must have this much more room. */
    private static final double BETTER = 1.12;

    /** Width of what is written against its height. */
    private static final double ASPECT = 1.9;

    private Roomiest() {}

    /** About the largest rectangle inside of a shape, near its middle; empty when it has none. */
    static Rectangle2D in(Shape shape) {
        Rectangle2D box = shape.getBounds2D();
        Rectangle2D best = new Rectangle2D.Double(box.getCenterX(), box.getCenterY(), 0, 0);
        double most = Math.min(box.getHeight(), box.getWidth() / ASPECT);
        for (Point2D point : fromTheMiddle(box)) {
            best = grown(shape, point.getX(), point.getY(), best, most);
        }
        return best;
    }

    /** Points in a grid, the middle first, so that of places with about the same room the one in the middle is taken. */
    private static List<Point2D> fromTheMiddle(Rectangle2D box) {
        List<Point2D> points = new ArrayList<>();
        for (int i = 1; i < GRID; i++) {
            for (int j = 1; j < GRID; j++) {
                points.add(new Point2D.Double(
                        box.getX() + box.getWidth() * i / GRID, box.getY() + box.getHeight() * j / GRID));
            }
        }
        points.sort(Comparator.comparingDouble(p -> p.distance(box.getCenterX(), box.getCenterY())));
        return points;
    }

    private static Rectangle2D grown(Shape shape, double x, double y, Rectangle2D best, double most) {
        double sure = best.getHeight() * BETTER + 0.5;
        if (sure > most || !shape.contains(around(x, y, sure))) {
            return best;
        }
        double beyond = most;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (sure + beyond) / 2;
            if (shape.contains(around(x, y, middle))) {
                sure = middle;
            } else {
                beyond = middle;
            }
        }
        return around(x, y, sure);
    }

    private static Rectangle2D around(double x, double y, double height) {
        return new Rectangle2D.Double(x - height * ASPECT / 2, y - height / 2, height * ASPECT, height);
    }
}
