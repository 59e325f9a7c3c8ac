package baywright.swing.plan;

import baywright.swing.parts.WidePanel;
import net.miginfocom.swing.MigLayout;

/** Sections below each other, as wide as what they scroll in. */
class Column extends WidePanel {

    private static final long serialVersionUID = 1L;

    Column() {
        super(new MigLayout("insets 12, gap 8, wrap 1, hidemode 3", "[0:0, grow, fill]", ""));
    }
}
