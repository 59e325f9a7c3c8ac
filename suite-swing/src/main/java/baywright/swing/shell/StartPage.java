package baywright.swing.shell;

import baywright.swing.api.Texts;
import baywright.swing.parts.Prose;
import java.util.List;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What the window shows before a workspace is open: what this is, and the next three moves; or why one did not open. */
final class StartPage extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Texts texts = Texts.beside(StartPage.class, "texts");
    private final JLabel heading = new JLabel();
    private final Prose lead = new Prose("");

    /** @param ways in order; the first is the one to press */
    StartPage(List<Action> ways) {
        super(new MigLayout(
                "insets 24, wrap 2", "push[]unrel[fill, 120:520:]push", "push[]unrel[]28[]unrel[]unrel[]28[]push"));
        heading.putClientProperty("html.disable", true);
        heading.putClientProperty("FlatLaf.styleClass", "h1");
        lead.setFocusable(true);
        add(heading, "span 2, wmin 0");
        add(lead, "span 2, wmin 0, growx");
        for (int step = 1; step <= 3; step++) {
            JLabel number = new JLabel(texts.of("start.step." + step));
            number.putClientProperty("FlatLaf.styleClass", "h1");
            add(number, "top");
            add(new Prose(texts.of("start.step." + step + ".text")), "wmin 0");
        }
        JPanel buttons = new JPanel(new MigLayout("insets 0"));
        for (Action way : ways) {
            JButton button = new JButton(way);
            if (buttons.getComponentCount() == 0) {
                button.putClientProperty("JButton.buttonType", "default");
            }
            buttons.add(button);
        }
        add(buttons, "span 2");
        welcome();
    }

    void welcome() {
        say(texts.of("start.heading"), texts.of("start.lead"));
    }

    void trouble(String workspace, String why) {
        say(texts.of("start.failed", workspace), why);
    }

    private void say(String title, String text) {
        heading.setText(title);
        lead.setText(text);
        lead.getAccessibleContext().setAccessibleName(title + ". " + text);
        revalidate();
    }
}
