package baywright.swing.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.QuadCurve2D;

/** Draws a motorcycle from its left side: length from the front wheel, height from the ground, in centimetres. */
final class Motorcycle {

    private static final double WHEEL = 32;
    private static final double FRONT = 34;
    private static final double REAR = 180;
    private static final AffineTransform UPRIGHT = new AffineTransform(1, 0, 0, -1, 0, 140);

    private Motorcycle() {}

    static void onto(Sketch sketch) {
        put(sketch, disc(FRONT, WHEEL), "wheel-front");
        put(sketch, disc(REAR, WHEEL), "wheel-rear");
        put(sketch, guard(FRONT, 25, 130), "front-mudguard");
        put(sketch, guard(REAR, 20, 100), "rear-mudguard");
        put(sketch, blob(74, 30, 78, 66, 92, 70, 128, 68, 142, 62, 146, 36, 130, 24, 86, 22), "engine-bay");
        put(sketch, blob(114, 70, 120, 84, 150, 86, 170, 82, 160, 66, 140, 62), "side-panels");
        put(sketch, blob(80, 84, 84, 102, 104, 112, 124, 104, 130, 90, 122, 76, 98, 72), "tank");
        put(sketch, blob(130, 90, 138, 98, 160, 94, 190, 106, 198, 102, 186, 88, 160, 84, 136, 84), "saddle");
        put(sketch, blob(44, 84, 40, 106, 58, 118, 76, 112, 82, 96, 72, 66, 58, 62), "fairing");
        put(sketch, blob(50, 112, 58, 134, 70, 138, 78, 132, 80, 114, 72, 110, 60, 116), "windscreen");
        put(sketch, new Area(new Ellipse2D.Double(34, 88, 18, 18)), "headlamp");
        for (double axle : new double[] {FRONT, REAR}) {
            line(sketch, ring(axle, WHEEL * .68));
            line(sketch, ring(axle, WHEEL * .16));
        }
        line(sketch, new Line2D.Double(FRONT + 2, WHEEL + 4, 64, 104));
        line(sketch, new Line2D.Double(74, 116, 92, 120));
        line(sketch, new Line2D.Double(REAR, WHEEL, 138, 44));
        line(sketch, new QuadCurve2D.Double(96, 28, 130, 12, 206, 24));
        line(sketch, new QuadCurve2D.Double(98, 22, 130, 5, 206, 14));
        line(sketch, new Line2D.Double(206, 14, 206, 24));
    }

    private static Area disc(double axle, double radius) {
        return new Area(ring(axle, radius));
    }

    private static Shape ring(double axle, double radius) {
        return new Ellipse2D.Double(axle - radius, WHEEL - radius, 2 * radius, 2 * radius);
    }

    /** A strip over a wheel between two angles, from the level forwards. */
    private static Area guard(double axle, double from, double to) {
        double outer = WHEEL + 11;
        Area guard = new Area(new Arc2D.Double(
                axle - outer, WHEEL - outer, 2 * outer, 2 * outer, -from - (to - from), to - from, Arc2D.PIE));
        guard.subtract(disc(axle, WHEEL + 2.5));
        return guard;
    }

    /** A closed round line near these corners. */
    private static Area blob(double... corners) {
        int n = corners.length / 2;
        Path2D p = new Path2D.Double();
        for (int i = 0; i < n; i++) {
            double x = corners[2 * i];
            double y = corners[2 * i + 1];
            double nextX = corners[2 * ((i + 1) % n)];
            double nextY = corners[2 * ((i + 1) % n) + 1];
            if (i == 0) {
                p.moveTo((corners[2 * n - 2] + x) / 2, (corners[2 * n - 1] + y) / 2);
            }
            p.quadTo(x, y, (x + nextX) / 2, (y + nextY) / 2);
        }
        p.closePath();
        return new Area(p);
    }

    private static void put(Sketch sketch, Area area, String zone) {
        sketch.part(area.createTransformedArea(UPRIGHT), zone);
    }

    private static void line(Sketch sketch, Shape line) {
        sketch.detail(UPRIGHT.createTransformedShape(line));
    }
}
