package baywright.swing.plan;

import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** Sections below each other, as wide as what they scroll in. */
class Column extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1L;

    private static final int LINE = 16;

    Column() {
        super(new MigLayout("insets 12, gap 8, wrap 1, hidemode 3", "[0:0, grow, fill]", ""));
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return com.formdev.flatlaf.util.UIScale.scale(LINE);
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
