package baywright.swing.library;

import baywright.swing.api.Texts;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The way to a first stage in a window of its own; it can be left at any time. */
final class GuideDialog extends JDialog {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 900;
    private static final int HEIGHT = 620;

    GuideDialog(Component over, Texts texts, GuidePane pane) {
        super(SwingUtilities.getWindowAncestor(over), texts.of("guide.title"), ModalityType.DOCUMENT_MODAL);
        JButton leave = new JButton(texts.of("guide.leave"));
        leave.addActionListener(e -> dispose());
        JPanel buttons = new JPanel(new MigLayout("insets 0 16 16 16, fillx", "[]push[][]"));
        buttons.add(leave);
        buttons.add(pane.backButton());
        buttons.add(pane.nextButton());
        JPanel all = new JPanel(new MigLayout("insets 0, wrap 1, fill", "[grow, fill]", "[grow, fill][]"));
        all.add(pane, "wmin 0, hmin 0");
        all.add(buttons);
        setContentPane(all);
        getRootPane().setDefaultButton(pane.nextButton());
        getRootPane()
                .registerKeyboardAction(
                        e -> dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        setSize(UIScale.scale(WIDTH), UIScale.scale(HEIGHT));
        setLocationRelativeTo(over);
        SwingUtilities.invokeLater(() -> pane.first().requestFocusInWindow());
    }
}
