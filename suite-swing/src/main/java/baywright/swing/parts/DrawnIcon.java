package baywright.swing.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import javax.swing.Icon;

/** A picture of lines in the colour of the component that shows it, so that it reads in light and dark. */
public abstract class DrawnIcon implements Icon {

    private final int size;

    /** @param size its height and width in units */
    protected DrawnIcon(int size) {
        this.size = size;
    }

    /** Draws it in a square of its size, with colour and pen at hand. */
    protected abstract void draw(Graphics2D g);

    @Override
    public final void paintIcon(Component on, Graphics graphics, int x, int y) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.translate(x, y);
        double scale = getIconWidth() / (double) size;
        g.scale(scale, scale);
        g.setColor(on.isEnabled() ? on.getForeground() : on.getForeground().darker());
        g.setStroke(new BasicStroke(1.6f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        draw(g);
        g.dispose();
    }

    @Override
    public final int getIconWidth() {
        return UIScale.scale(size);
    }

    @Override
    public final int getIconHeight() {
        return UIScale.scale(size);
    }
}
