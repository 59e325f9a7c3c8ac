package baywright.swing.plan;

import baywright.swing.parts.DrawnIcon;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;

/** Three steps below each other, joined by a line. */
final class PlanIcon extends DrawnIcon {

    private static final double[] LINES = {4, 10, 16};

    PlanIcon() {
        super(20);
    }

    @Override
    protected void draw(Graphics2D g) {
        g.draw(new Line2D.Double(4, 4, 4, 16));
        for (double line : LINES) {
            g.fill(new Ellipse2D.Double(1.6, line - 2.4, 4.8, 4.8));
            g.draw(new Line2D.Double(9.5, line, line == LINES[1] ? 15 : 18, line));
        }
    }
}
