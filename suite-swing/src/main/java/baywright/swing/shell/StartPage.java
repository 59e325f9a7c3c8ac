package baywright.swing.shell;

import baywright.swing.api.Texts;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** What the window shows before a workspace is open: what this is, the first moves, and what was open lately; or why one did not open. */
final class StartPage extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Texts texts = Texts.beside(StartPage.class, "texts");
    private final transient Consumer<Path> open;
    private final JLabel heading = new JLabel();
    private final Prose lead = new Prose("");
    private final SectionHeading recentHeading = new SectionHeading(texts.of("start.recent"));
    private final JPanel recent = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2", "[grow, fill]"));

    /**
     * Makes the page.
     *
     * @param ways in order; the first is the one to press
     * @param open gets a workspace of the list of those that were open lately
     */
    StartPage(List<Action> ways, Consumer<Path> open) {
        super(new MigLayout(
                "insets 24, wrap 2, hidemode 3",
                "push[]unrel[fill, 120:520:]push",
                "push[]unrel[]24[]unrel[]unrel[]24[]20[]rel[]push"));
        this.open = open;
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
                button.putClientProperty("FlatLaf.styleClass", "primary");
            }
            buttons.add(button);
        }
        add(buttons, "span 2");
        add(recentHeading, "span 2");
        add(recent, "span 2, growx, wmin 0");
        welcome(List.of());
    }

    /**
     * Greets.
     *
     * @param workspaces what was open lately, the last one first
     */
    void welcome(List<Path> workspaces) {
        say(texts.of("start.heading"), texts.of("start.lead"));
        recent.removeAll();
        for (Path workspace : workspaces) {
            JButton button = new JButton();
            button.putClientProperty("html.disable", true);
            button.putClientProperty("JButton.buttonType", "borderless");
            button.setText(workspace.getFileName() + "  –  " + workspace.getParent());
            button.setHorizontalAlignment(SwingConstants.LEADING);
            button.addActionListener(e -> open.accept(workspace));
            recent.add(button, "wmin 0");
        }
        recentHeading.setVisible(!workspaces.isEmpty());
        recent.setVisible(!workspaces.isEmpty());
    }

    void trouble(String workspace, String why) {
        say(texts.of("start.failed", workspace), why);
    }

    private void say(String title, String text) {
        heading.setText(title);
        lead.setText(text);
        lead.getAccessibleContext().setAccessibleName(title + ". " + text);
        revalidate();
        repaint();
    }
}
