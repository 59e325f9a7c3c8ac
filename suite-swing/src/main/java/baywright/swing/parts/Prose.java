package baywright.swing.parts;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import javax.swing.JLabel;
import javax.swing.JTextArea;

/** Text that wraps, looks like a label and is read out like one. */
public final class Prose extends JTextArea {

    private static final long serialVersionUID = 1L;
    private static final int READING_WIDTH = 560;

    public Prose(String text) {
        super(text);
        setEditable(false);
        setFocusable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setBorder(null);
        setAlignmentX(Component.LEFT_ALIGNMENT);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(new JLabel().getFont());
        setOpaque(false);
    }

    /** Its caret, which nobody sees, must not make the place scroll to it. */
    @Override
    public void scrollRectToVisible(Rectangle part) {}

    /** The height is that of the text wrapped at its width, at first the reading width. */
    @Override
    public Dimension getPreferredSize() {
        if (getWidth() == 0) {
            setSize(UIScale.scale(READING_WIDTH), Short.MAX_VALUE);
        }
        return new Dimension(getWidth(), super.getPreferredSize().height);
    }
}
