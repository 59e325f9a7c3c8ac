package baywright.swing.shell;

import baywright.swing.api.Desk;
import baywright.swing.api.Texts;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Window;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The form for a new shop in a window of its own. */
final class NewShopDialog extends JDialog {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 760;
    private static final int HEIGHT = 700;

    /** @param made gets the new workspace, after the dialog has gone */
    NewShopDialog(Window owner, Desk desk, Path library, Path home, Locale locale, Consumer<Path> made) {
        super(owner, ModalityType.DOCUMENT_MODAL);
        Texts texts = Texts.beside(NewShopDialog.class, "texts");
        setTitle(texts.of("new.title"));
        NewShopForm form = new NewShopForm(desk, library, home, locale, workspace -> {
            dispose();
            made.accept(workspace);
        });
        JScrollPane scroll = new JScrollPane(form);
        scroll.setBorder(null);
        JButton leave = new JButton(texts.of("new.leave"));
        leave.addActionListener(e -> dispose());
        JPanel buttons = new JPanel(new MigLayout("insets 8 16 16 16, fillx", "push[][]"));
        buttons.add(leave);
        buttons.add(form.button());
        JPanel all = new JPanel(new MigLayout("insets 0, wrap 1, fill", "[grow, fill]", "[grow, fill][]"));
        all.add(scroll, "wmin 0, hmin 0");
        all.add(buttons);
        setContentPane(all);
        getRootPane().setDefaultButton(form.button());
        getRootPane()
                .registerKeyboardAction(
                        e -> dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        setSize(
                UIScale.scale(WIDTH),
                Math.min(UIScale.scale(HEIGHT), owner == null ? Integer.MAX_VALUE : owner.getHeight()));
        setLocationRelativeTo(owner);
        SwingUtilities.invokeLater(() -> form.first().requestFocusInWindow());
    }
}
