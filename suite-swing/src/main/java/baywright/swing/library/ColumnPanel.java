package baywright.swing.library;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;

/** As wide as what shows it, so that long words are wrapped or cut and never out of sight. */
final class ColumnPanel extends JPanel implements Scrollable {

    private static final long serialVersionUID = 1L;
    private static final int STEP = 22;

    ColumnPanel(MigLayout layout) {
        super(layout);
    }

    /** The panel in what scrolls it, without a frame. */
    JScrollPane scrolled() {
        JScrollPane scroll = new JScrollPane(this);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return UIScale.scale(STEP);
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
