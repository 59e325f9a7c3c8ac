package baywright.swing.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/** As wide as what scrolls it, so that long words are wrapped or cut and never out of sight; only its height scrolls. */
public class WidePanel extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1L;
    private static final int LINE = 20;

    public WidePanel(LayoutManager layout) {
        super(layout);
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(LINE);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    /** It fills what is higher than itself. */
    @Override
    public boolean getScrollableTracksViewportHeight() {
        Component parent = getParent();
        return parent != null && parent.getHeight() > getPreferredSize().height;
    }
}
