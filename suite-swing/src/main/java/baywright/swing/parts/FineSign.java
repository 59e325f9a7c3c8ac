package baywright.swing.parts;

import baywright.swing.api.Colours;
import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import javax.swing.Icon;

/** A tick: nothing stands against it. */
public record FineSign() implements Icon {

    private static final int SIZE = 13;

    @Override
    public void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.translate(x, y);
        float size = getIconWidth();
        Path2D tick = new Path2D.Float();
        tick.moveTo(size * 0.12, size * 0.55);
        tick.lineTo(size * 0.4, size * 0.82);
        tick.lineTo(size * 0.9, size * 0.2);
        g.setStroke(new BasicStroke(size * 0.16f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.setColor(Colours.of("fine"));
        g.draw(tick);
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
