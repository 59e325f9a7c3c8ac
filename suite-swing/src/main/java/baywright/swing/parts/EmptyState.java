package baywright.swing.parts;

import java.util.List;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What stands where nothing is yet: what this place is for, what to do next, and the buttons that do it. */
public final class EmptyState extends JPanel {

    private static final long serialVersionUID = 1L;

    private final JLabel heading = new JLabel();
    private final Prose text = new Prose("");

    /** @param actions buttons; the first is the one to press */
    public EmptyState(String heading, String text, List<Action> actions) {
        super(new MigLayout("insets 32, wrap 1", "push[fill, 120:520:]push", "push[]unrel[]24[]push"));
        this.heading.putClientProperty("html.disable", true);
        this.heading.putClientProperty("FlatLaf.styleClass", "h2");
        add(this.heading, "wmin 0");
        add(this.text, "wmin 0");
        JPanel buttons = new JPanel(new MigLayout("insets 0"));
        buttons.setOpaque(false);
        for (Action action : actions) {
            JButton button = new JButton(action);
            if (buttons.getComponentCount() == 0) {
                button.putClientProperty("FlatLaf.styleClass", "primary");
            }
            buttons.add(button);
        }
        add(buttons);
        say(heading, text);
    }

    /** Changes what it says. */
    public void say(String title, String words) {
        heading.setText(title);
        text.setText(words);
        revalidate();
    }
}
