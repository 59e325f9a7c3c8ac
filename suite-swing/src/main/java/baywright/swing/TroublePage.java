package baywright.swing;

import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;

/** Why a workspace could not be opened, and the way on. */
final class TroublePage extends JPanel {

    private static final long serialVersionUID = 1L;

    private final JLabel heading = new JLabel();
    private final JTextArea reasons = StartPage.sentence("");

    TroublePage(Action open) {
        super(new MigLayout("insets 40, wrap 1", "push[fill]push", "push[]unrel[]40[]push"));
        heading.putClientProperty("FlatLaf.styleClass", "h2");
        heading.setIcon(new GradeIcon(ShopView.Grade.STOP));
        reasons.setFocusable(true);
        add(heading, "wmin 0");
        add(reasons);
        JButton again = new JButton(open);
        again.setText(Words.of("failed.again"));
        add(again, "center, growx 0");
    }

    void show(String title, String text) {
        heading.setText(title);
        reasons.setText(text);
    }
}
