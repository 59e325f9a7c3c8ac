package baywright.swing.parts;

import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.util.Locale;
import java.util.Scanner;

/** A picture that is one path. */
public final class LineIcon extends DrawnIcon {

    private final String lines;

    /** @param lines a path in a square of {@code size} units: {@code M x y}, {@code L x y}, {@code Q x y x y}, {@code C x y x y x y} and {@code Z}, each apart by blanks */
    private LineIcon(int size, String lines) {
        super(size);
        this.lines = lines;
    }

    /** For the strip: 20 units. */
    public static LineIcon ofStrip(String lines) {
        return new LineIcon(20, lines);
    }

    /** For a button: 16 units. */
    public static LineIcon ofButton(String lines) {
        return new LineIcon(16, lines);
    }

    @Override
    protected void draw(Graphics2D g) {
        g.draw(path());
    }

    private Path2D path() {
        Path2D path = new Path2D.Double();
        try (Scanner in = new Scanner(lines)) {
            in.useLocale(Locale.ROOT);
            while (in.hasNext()) {
                String move = in.next();
                switch (move) {
                    case "M" -> path.moveTo(in.nextDouble(), in.nextDouble());
                    case "L" -> path.lineTo(in.nextDouble(), in.nextDouble());
                    case "Q" -> path.quadTo(in.nextDouble(), in.nextDouble(), in.nextDouble(), in.nextDouble());
                    case "C" ->
                        path.curveTo(
                                in.nextDouble(),
                                in.nextDouble(),
                                in.nextDouble(),
                                in.nextDouble(),
                                in.nextDouble(),
                                in.nextDouble());
                    case "Z" -> path.closePath();
                    default -> throw new IllegalArgumentException("'" + move + "' is no move of a path");
                }
            }
        }
        return path;
    }
}
