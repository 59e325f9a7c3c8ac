package baywright.swing.library;

import baywright.swing.parts.WidePanel;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;

/** Rows that are scrolled without a frame. */
final class ColumnPanel extends WidePanel {

    private static final long serialVersionUID = 1L;

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
}
