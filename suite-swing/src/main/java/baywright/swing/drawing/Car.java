package baywright.swing.drawing;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/**
 * Draws a car with its nose to the left: the roof view in the middle, the left side folded out below, the right side above, front and
 * rear at the ends. Each side is drawn once, by length and height, and put in place by a transform.
 */
final class Car {

    private static final double GAP = 10;
    private static final double FAR = 2000;
    private static final double FLOOR = 24;
    private static final double SILL = 40;
    private static final double ARCH = 9;
    private static final double SHUT = 2;

    private final Sketch sketch;
    private final Body body;
    private final boolean boxy;
    private final double noseDepth;
    private final double half;

    Car(Sketch sketch, Body body) {
        this.sketch = sketch;
        this.body = body;
        boxy = body.tail() == Body.Tail.DOORS;
        noseDepth = body.nose() + 6 - FLOOR;
        half = body.half();
    }

    void draw() {
        double x = noseDepth + GAP;
        double middle = body.height() + GAP + half;
        side("-right", new AffineTransform(1, 0, 0, 1, x, 0));
        top(AffineTransform.getTranslateInstance(x, middle));
        front(new AffineTransform(0, 1, 1, 0, -FLOOR, middle));
        rear(new AffineTransform(0, 1, -1, 0, x + body.length() + GAP + rearTop(), middle));
        side("-left", new AffineTransform(1, 0, 0, -1, x, 2 * body.height() + body.width() + 2 * GAP));
    }

    private double rearTop() {
        return body.tail() == Body.Tail.BOOT ? body.deck() + 2 : body.height() - 4;
    }

    // sides: length from the nose, height from the ground

    private void side(String s, AffineTransform to) {
        Area whole = new Area(silhouette());
        Area below = cut(whole, -FAR, FAR, -FAR, body.waist());
        Area cabin = minus(whole, below);
        Area tyres = union(disc(body.frontAxle(), body.wheel()), disc(body.rearAxle(), body.wheel()));
        Area frontArch = minus(and(disc(body.frontAxle(), body.wheel() + ARCH), whole), tyres);
        Area rearArch = minus(and(disc(body.rearAxle(), body.wheel() + ARCH), whole), tyres);
        Area panels = minus(minus(minus(below, frontArch), rearArch), tyres);
        Area frontBumper = cut(panels, -FAR, body.frontAxle() - body.wheel() - 4, -FAR, body.nose() - 20);
        Area lamp = cut(panels, -FAR, 34, body.nose() - 18, body.nose() - 5);
        double tail = body.rearAxle() + body.wheel() + 4;
        Area rearBumper = cut(panels, tail, FAR, -FAR, 60);
        Area sill = cut(panels, body.frontAxle() + body.wheel(), body.rearAxle() - body.wheel(), -FAR, SILL);
        Area skin = minus(minus(minus(minus(panels, frontBumper), lamp), rearBumper), sill);

        put(to, cut(skin, -FAR, body.door(), -FAR, FAR), "front-wing" + s);
        put(to, cut(skin, body.door(), body.secondDoor(), -FAR, FAR), "front-door" + s);
        put(
                to,
                cut(skin, body.secondDoor(), body.quarter(), -FAR, FAR),
                "rear-door" + s,
                "sliding-door" + s,
                "rear-quarter" + s);
        put(to, cut(skin, body.quarter(), FAR, -FAR, FAR), "rear-quarter" + s);
        put(to, sill, "sill" + s);
        put(to, frontBumper, "front-bumper");
        put(to, rearBumper, "rear-bumper");
        put(to, lamp, "headlamp" + s);
        cabin(s, to, cabin);
        put(to, frontArch, "arch-front" + s);
        put(to, rearArch, "arch-rear" + s);
        put(to, disc(body.frontAxle(), body.wheel()), "wheel-front" + s);
        put(to, disc(body.rearAxle(), body.wheel()), "wheel-rear" + s);
        mirror(s, to);
        sideDetails(to);
    }

    private void cabin(String s, AffineTransform to, Area cabin) {
        Area glass = and(new Area(glassLine()), cabin);
        Area frontGlass = cut(glass, -FAR, body.secondDoor() - SHUT, -FAR, FAR);
        Area rearGlass = cut(glass, body.secondDoor() + SHUT, body.quarter() - SHUT, -FAR, FAR);
        Area lastGlass = cut(glass, body.quarter() + SHUT, FAR, -FAR, FAR);
        Area frame = minus(minus(minus(cabin, frontGlass), rearGlass), lastGlass);
        put(to, frontGlass, "side-glass-front" + s);
        put(to, rearGlass, "side-glass-rear" + s, "sliding-door" + s, "rear-quarter" + s);
        String[] last = boxy
                ? new String[] {"rear-quarter" + s}
                : new String[] {"side-glass-quarter" + s, "side-glass-rear" + s, "side-glass-front" + s};
        put(to, lastGlass, last);
        if (boxy) {
            put(to, cut(frame, -FAR, body.secondDoor(), -FAR, FAR), "pillar" + s);
            put(to, cut(frame, body.secondDoor(), body.quarter(), -FAR, FAR), "sliding-door" + s, "rear-quarter" + s);
        } else {
            put(to, cut(frame, -FAR, body.quarter(), -FAR, FAR), "pillar" + s);
        }
        put(to, cut(frame, body.quarter(), FAR, -FAR, FAR), "fabric-roof", "rear-quarter" + s);
    }

    private Path2D silhouette() {
        double length = body.length();
        double height = body.height();
        Path2D p = new Path2D.Double();
        p.moveTo(14, FLOOR);
        p.curveTo(2, FLOOR + 4, 0, body.nose() - 26, 5, body.nose() - 8);
        p.quadTo(9, body.nose(), 24, body.nose() + 2);
        double rise = body.waist() - body.nose();
        p.curveTo(
                24 + (body.screen() - 24) * .45,
                body.nose() + 3 + rise * .45,
                24 + (body.screen() - 24) * .8,
                body.waist() - 5,
                body.screen(),
                body.waist());
        p.quadTo(
                (body.screen() + body.roofFront()) / 2 - 3,
                (body.waist() + height) / 2 + 5,
                body.roofFront(),
                height - 5);
        p.curveTo(body.roofFront() + 28, height + 2, body.roofRear() - 50, height + 2, body.roofRear(), height - 5);
        switch (body.tail()) {
            case BOOT -> {
                p.quadTo(
                        (body.roofRear() + body.glassRear()) / 2 + 6,
                        (height + body.deck()) / 2 + 6,
                        body.glassRear(),
                        body.deck() + 4);
                p.quadTo(body.glassRear() + 14, body.deck() + 2, length - 9, body.deck() + 1);
                p.quadTo(length, body.deck() - 3, length, body.deck() - 24);
            }
            case HATCH -> {
                p.quadTo(body.glassRear() - 3, height - 12, body.glassRear(), body.waist() + 4);
                p.quadTo(length - 1, body.waist() - 8, length, body.waist() - 34);
            }
            default -> {
                p.quadTo(length - 8, height - 6, length - 6, height - 24);
                p.lineTo(length - 1, 80);
            }
        }
        p.lineTo(length - 1, 52);
        p.curveTo(length - 2, 32, length - 8, FLOOR, length - 16, FLOOR);
        p.closePath();
        return p;
    }

    private Path2D glassLine() {
        double low = body.waist() + 3;
        double high = body.height() - 12;
        double steep = body.roofFront() - body.screen();
        double end = body.tail() == Body.Tail.BOOT ? 34 : 20;
        return polygon(
                body.screen() + 18,
                low,
                body.roofFront() + Math.max(4, 16 - steep / 8),
                high,
                body.roofRear() - 14,
                high,
                body.glassRear() - end,
                low);
    }

    private void mirror(String s, AffineTransform to) {
        Area ear = new Area(new RoundRectangle2D.Double(body.door() + 6, body.waist() - 1, 24, 15, 12, 12));
        put(to, ear, "mirror" + s);
    }

    private void sideDetails(AffineTransform to) {
        for (double axle : new double[] {body.frontAxle(), body.rearAxle()}) {
            line(to, ring(axle, body.wheel() * .66));
            line(to, ring(axle, body.wheel() * .16));
        }
        line(to, handle(body.secondDoor() - 22));
        if (body.quarter() - body.secondDoor() > 20) {
            line(to, handle(boxy ? body.secondDoor() + 12 : body.quarter() - 20));
        }
    }

    private Shape handle(double x) {
        return new RoundRectangle2D.Double(x, body.waist() - 15, 13, 3.5, 3, 3);
    }

    // roof view: length from the nose, to the left from the middle

    private void top(AffineTransform to) {
        double length = body.length();
        double shoulder = half * (boxy ? .88 : .70);
        Area whole = new Area(outlineFromAbove());
        Area bonnet = new Area(fan(13, half * .74, -9, body.screen() + 8, half * .86, -16));
        Area screen = new Area(fan(body.screen() + 8, half * .86, -16, body.roofFront(), shoulder, -12));
        Area roof = new Area(fan(body.roofFront(), shoulder, -12, body.roofRear(), shoulder - 2, boxy ? 3 : 7));
        double rearEnd = body.tail() == Body.Tail.BOOT ? body.glassRear() : length - 8;
        Area glass =
                new Area(fan(body.roofRear(), shoulder - 2, boxy ? 3 : 7, rearEnd, boxy ? shoulder : half * .76, 8));
        Area tail = new Area();
        if (body.tail() == Body.Tail.BOOT) {
            tail = new Area(fan(body.glassRear(), half * .76, 8, length - 12, half * .72, 8));
        }
        Area rest = minus(minus(minus(minus(minus(whole, bonnet), screen), roof), glass), tail);
        put(to, and(bonnet, whole), "bonnet");
        put(to, screen, "windscreen");
        put(to, roof, "roof", "fabric-roof");
        if (boxy) {
            put(to, glass, "roof");
        } else {
            put(to, glass, "rear-window");
        }
        put(to, and(tail, whole), "boot-lid");
        double wings = body.screen() + 14;
        double quarters = body.tail() == Body.Tail.BOOT ? body.glassRear() - 34 : body.quarter() + 40;
        put(to, cut(rest, -FAR, 15, -half * .74, half * .74), "front-bumper");
        put(to, cut(rest, length - 14, FAR, -half * .74, half * .74), "rear-bumper");
        Area sides = minus(rest, cut(rest, -FAR, 15, -half * .74, half * .74));
        sides = minus(sides, cut(sides, length - 14, FAR, -half * .74, half * .74));
        for (String s : new String[] {"-left", "-right"}) {
            double from = s.equals("-left") ? 0 : -FAR;
            Area strip = cut(sides, -FAR, FAR, from, from + FAR);
            put(to, cut(strip, -FAR, wings, -FAR, FAR), "front-wing" + s);
            put(to, cut(strip, wings, quarters, -FAR, FAR), "pillar" + s);
            put(to, cut(strip, quarters, FAR, -FAR, FAR), "rear-quarter" + s);
        }
    }

    private Path2D outlineFromAbove() {
        double length = body.length();
        double corner = boxy ? 22 : 40;
        Path2D p = new Path2D.Double();
        p.moveTo(corner + 8, -half);
        p.lineTo(length - corner * .7, -half);
        p.quadTo(length - 6, -half, length - 4, -half * .55);
        p.quadTo(length + 2, 0, length - 4, half * .55);
        p.quadTo(length - 6, half, length - corner * .7, half);
        p.lineTo(corner + 8, half);
        p.quadTo(14, half, 6, half * .6);
        p.quadTo(-4, 0, 6, -half * .6);
        p.quadTo(14, -half, corner + 8, -half);
        p.closePath();
        return p;
    }

    /** A field across the car between two edges, each at a length, with half its width and how far its middle is bent. */
    private static Path2D fan(double x0, double half0, double bend0, double x1, double half1, double bend1) {
        Path2D p = new Path2D.Double();
        p.moveTo(x0, -half0);
        p.quadTo(x0 + 2 * bend0, 0, x0, half0);
        p.lineTo(x1, half1);
        p.quadTo(x1 + 2 * bend1, 0, x1, -half1);
        p.closePath();
        return p;
    }

    // front and rear: to the left from the middle, height from the ground

    private void front(AffineTransform to) {
        double high = body.nose() + 6;
        Area whole = face(high, half * .97, half * .84, high - 20);
        Area left = new Area(new RoundRectangle2D.Double(half * .52, body.nose() - 20, half * .42, 16, 10, 10));
        Area right = new Area(new RoundRectangle2D.Double(-half * .94, body.nose() - 20, half * .42, 16, 10, 10));
        put(to, minus(minus(whole, left), right), "front-bumper");
        put(to, and(left, whole), "headlamp-left");
        put(to, and(right, whole), "headlamp-right");
        for (int i = 0; i < 3; i++) {
            line(to, new RoundRectangle2D.Double(-half * .42, body.nose() - 19 + i * 6, half * .84, 3, 3, 3));
        }
        line(to, new RoundRectangle2D.Double(-half * .6, FLOOR + 6, half * 1.2, 8, 6, 6));
    }

    private void rear(AffineTransform to) {
        double high = rearTop();
        boolean boot = body.tail() == Body.Tail.BOOT;
        double top = boot ? half * .84 : boxy ? half * .9 : half * .7;
        Area whole = face(high, half * .97, top, boot ? high - 16 : body.waist());
        double bumperHigh = 58;
        Area bumper = cut(whole, -FAR, FAR, -FAR, bumperHigh);
        double lid = boot ? half * .6 : half * .8;
        Area gate = cut(whole, -lid, lid, bumperHigh, FAR);
        Area glass = new Area();
        if (!boot) {
            glass = rearGlass(to, high);
        }
        put(to, minus(gate, glass), "boot-lid");
        put(to, bumper, "rear-bumper");
        Area sides = minus(minus(minus(whole, bumper), gate), glass);
        put(to, cut(sides, 0, FAR, -FAR, FAR), "rear-quarter-left");
        put(to, cut(sides, -FAR, 0, -FAR, FAR), "rear-quarter-right");
        double lamp = boot ? half * .28 : half * .13;
        for (int sign : new int[] {-1, 1}) {
            double from = sign > 0 ? half * .94 - lamp : -half * .94;
            line(to, new RoundRectangle2D.Double(from, bumperHigh + 5, lamp, boot ? 15 : 26, 6, 6));
        }
        line(to, new RoundRectangle2D.Double(-26, boot ? bumperHigh + 8 : FLOOR + 14, 52, 11, 3, 3));
    }

    private Area rearGlass(AffineTransform to, double high) {
        double low = body.deck() + 2;
        if (!boxy) {
            Area pane =
                    new Area(polygon(-half * .72, low, -half * .58, high - 10, half * .58, high - 10, half * .72, low));
            put(to, pane, "rear-window");
            return pane;
        }
        Area left = new Area(new RoundRectangle2D.Double(6, low + 8, half * .66, high - low - 30, 10, 10));
        Area right =
                new Area(new RoundRectangle2D.Double(-6 - half * .66, low + 8, half * .66, high - low - 30, 10, 10));
        put(to, left, "rear-window-left");
        put(to, right, "rear-window-right");
        line(to, new Rectangle2D.Double(-.3, 60, .6, high - 62));
        return union(left, right);
    }

    /** A car seen from one end: straight up to a height, from there narrower. */
    private static Area face(double high, double wide, double narrow, double from) {
        Path2D p = new Path2D.Double();
        p.moveTo(-wide + 10, FLOOR);
        p.quadTo(-wide, FLOOR, -wide, FLOOR + 14);
        p.lineTo(-wide, from);
        p.quadTo(-narrow - 3, high - 2, -narrow + 12, high);
        p.quadTo(0, high + 3, narrow - 12, high);
        p.quadTo(narrow + 3, high - 2, wide, from);
        p.lineTo(wide, FLOOR + 14);
        p.quadTo(wide, FLOOR, wide - 10, FLOOR);
        p.closePath();
        return new Area(p);
    }

    // tools

    private void put(AffineTransform to, Area area, String... zones) {
        sketch.part(area.createTransformedArea(to), zones);
    }

    private void line(AffineTransform to, Shape line) {
        sketch.detail(to.createTransformedShape(line));
    }

    private Area disc(double axle, double radius) {
        return new Area(ring(axle, radius));
    }

    private Shape ring(double axle, double radius) {
        return new Ellipse2D.Double(axle - radius, body.wheel() - radius, 2 * radius, 2 * radius);
    }

    private static Path2D polygon(double... corners) {
        Path2D p = new Path2D.Double();
        p.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            p.lineTo(corners[i], corners[i + 1]);
        }
        p.closePath();
        return p;
    }

    private static Area cut(Area area, double x0, double x1, double y0, double y1) {
        return x0 >= x1 ? new Area() : and(area, new Area(new Rectangle2D.Double(x0, y0, x1 - x0, y1 - y0)));
    }

    private static Area and(Area a, Area b) {
        Area area = new Area(a);
        area.intersect(b);
        return area;
    }

    private static Area minus(Area a, Area b) {
        Area area = new Area(a);
        area.subtract(b);
        return area;
    }

    private static Area union(Area a, Area b) {
        Area area = new Area(a);
        area.add(b);
        return area;
    }
}
