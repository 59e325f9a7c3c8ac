package baywright.swing.library;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import javax.swing.Icon;

/** Bottles on a shelf, in the foreground of what they stand on. */
record ShelfIcon() implements Icon {

    private static final int SIZE = 20;

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x, y);
        double unit = getIconWidth() / (double) SIZE;
        g.scale(unit, unit);
        g.setColor(on.getForeground());
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(new RoundRectangle2D.Double(3, 6.5, 4, 9, 2, 2));
        g.draw(new Line2D.Double(5, 3, 5, 6));
        g.draw(new RoundRectangle2D.Double(9.5, 4, 3.5, 11.5, 1, 1));
        g.draw(new RoundRectangle2D.Double(15, 8, 3, 7.5, 1, 1));
        g.draw(new Line2D.Double(1.5, 17.5, 18.5, 17.5));
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
