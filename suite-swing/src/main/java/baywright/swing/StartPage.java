package baywright.swing;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** What the window shows before a workspace is open: what this is, and the next three moves. */
final class StartPage extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int READING_WIDTH = 560;

    StartPage(Action open) {
        super(new MigLayout("insets 24, wrap 2", "push[]unrel[fill]push", "push[]unrel[]36[]unrel[]unrel[]36[]push"));
        JLabel heading = new JLabel(Words.of("start.heading"));
        heading.putClientProperty("FlatLaf.styleClass", "h1");
        add(heading, "span 2");
        add(sentence(Words.of("start.lead")), "span 2");
        for (int step = 1; step <= 3; step++) {
            JLabel number = new JLabel(Words.of("start.step." + step));
            number.putClientProperty("FlatLaf.styleClass", "h1");
            add(number, "top");
            add(sentence(Words.of("start.step." + step + ".text")));
        }
        JButton button = new JButton(open);
        button.setText(Words.of("start.open"));
        button.putClientProperty("JButton.buttonType", "default");
        add(button, "span 2, growx 0");
    }

    /** Text that wraps, looks like a label and is read out like one. */
    static JTextArea sentence(String text) {
        JTextArea area = new JTextArea(text) {
            private static final long serialVersionUID = 1L;

            @Override
            public void updateUI() {
                super.updateUI();
                setFont(new JLabel().getFont());
                setOpaque(false);
            }

            /** The height is that of the text wrapped at its width, at first the reading width. */
            @Override
            public Dimension getPreferredSize() {
                if (getWidth() == 0) {
                    setSize(UIScale.scale(READING_WIDTH), Short.MAX_VALUE);
                }
                return new Dimension(getWidth(), super.getPreferredSize().height);
            }
        };
        area.setEditable(false);
        area.setFocusable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setBorder(null);
        area.setAlignmentX(Component.LEFT_ALIGNMENT);
        return area;
    }
}
