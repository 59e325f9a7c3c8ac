package baywright.swing.parts;

import javax.swing.JComponent;
import javax.swing.JLabel;

/** The heading of a part of a workbench. */
public final class SectionHeading extends JLabel {

    private static final long serialVersionUID = 1L;

    public SectionHeading(String text) {
        putClientProperty("html.disable", true);
        putClientProperty("FlatLaf.styleClass", "h3");
        setText(text);
    }

    /** Also names what it heads, for those who do not see it. */
    public SectionHeading(String text, JComponent heads) {
        this(text);
        setLabelFor(heads);
        heads.getAccessibleContext().setAccessibleName(text);
    }
}
