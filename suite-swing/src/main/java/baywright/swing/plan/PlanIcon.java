package baywright.swing.plan;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import javax.swing.Icon;

/** Three steps below each other, joined by a line. */
final class PlanIcon implements Icon {

    private static final int SIZE = 20;
    private static final double[] LINES = {4, 10, 16};

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x, y);
        double unit = UIScale.scale(1f);
        g.scale(unit, unit);
        g.setColor(on.getForeground());
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new Line2D.Double(4, 4, 4, 16));
        for (double line : LINES) {
            g.fill(new Ellipse2D.Double(1.6, line - 2.4, 4.8, 4.8));
            g.draw(new Line2D.Double(9.5, line, line == LINES[1] ? 15 : 18, line));
        }
        g.dispose();
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
