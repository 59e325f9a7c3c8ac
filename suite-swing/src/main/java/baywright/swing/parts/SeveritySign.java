package baywright.swing.parts;

import baywright.plan.Severity;
import baywright.swing.api.Colours;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.Locale;
import javax.swing.Icon;

/** An octagon for a stop, a triangle for a warning, a disc for a note: told apart without colour. */
public record SeveritySign(Severity severity) implements Icon {

    private static final int SIZE = 13;

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x, y);
        g.setColor(Colours.of(severity.name().toLowerCase(Locale.ROOT)));
        g.fill(shape(getIconWidth()));
        g.dispose();
    }

    private Shape shape(double size) {
        return switch (severity) {
            case STOP -> polygon(size, 8, Math.PI / 8);
            case WARN -> polygon(size, 3, -Math.PI / 2);
            case NOTE -> new Ellipse2D.Double(size * 0.1, size * 0.1, size * 0.8, size * 0.8);
        };
    }

    private static Shape polygon(double size, int corners, double first) {
        Path2D path = new Path2D.Double();
        double lower = corners == 3 ? size * 0.12 : 0;
        for (int i = 0; i < corners; i++) {
            double angle = first + 2 * Math.PI * i / corners;
            double px = size / 2 * (1 + Math.cos(angle));
            double py = size / 2 * (1 + Math.sin(angle)) + lower;
            if (i == 0) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
        }
        path.closePath();
        return path;
    }

    @Override
    public int getIconWidth() {
        return UIScale.scale(SIZE);
    }

    @Override
    public int getIconHeight() {
        return UIScale.scale(SIZE);
    }
}
