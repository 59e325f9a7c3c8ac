package baywright.swing.library;

import java.awt.Insets;
import javax.swing.JButton;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;

/** A figure or a sentence that goes to its line of a script when it is pressed. */
final class LineButton extends JButton {

    private static final long serialVersionUID = 1L;

    LineButton(String text, Runnable go) {
        putClientProperty("html.disable", true);
        putClientProperty("JButton.buttonType", "borderless");
        setHorizontalAlignment(SwingConstants.LEADING);
        setMargin(new Insets(2, 4, 2, 4));
        setText(text);
        addActionListener(e -> go.run());
        getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "pressed");
        getInputMap().put(KeyStroke.getKeyStroke("released ENTER"), "released");
    }
}
