package baywright.swing.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.util.Locale;
import java.util.Scanner;
import javax.swing.Icon;

/**
 * A picture of lines in the colour of the component that shows it, so that it reads in light and dark.
 *
 * @param size  its height and width in units
 * @param lines a path in a square of {@code size} units: {@code M x y}, {@code L x y}, {@code Q x y x y}, {@code C x y x y x y} and
 *              {@code Z}, each apart by blanks
 */
public record LineIcon(int size, String lines) implements Icon {

    /** For the strip: 20 units. */
    public static LineIcon ofStrip(String lines) {
        return new LineIcon(20, lines);
    }

    /** For a button: 16 units. */
    public static LineIcon ofButton(String lines) {
        return new LineIcon(16, lines);
    }

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x, y);
        double scale = getIconWidth() / (double) size;
        g.scale(scale, scale);
        g.setColor(on.isEnabled() ? on.getForeground() : on.getForeground().darker());
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path());
        g.dispose();
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

    @Override
    public int getIconWidth() {
        return UIScale.scale(size);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(size);
    }
}
