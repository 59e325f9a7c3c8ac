package baywright.swing.plan;

import baywright.swing.parts.FineSign;
import baywright.swing.parts.Prose;
import baywright.swing.parts.SeveritySign;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** What stands against something, the gravest first, each with its sentence and the buttons that mend it. */
final class ToldList extends JPanel {

    private static final long serialVersionUID = 1L;

    private final String none;
    private final transient Consumer<String> goToStep;
    private transient List<Told> shown;

    /**
     * Empty at first.
     *
     * @param none     what an empty list means
     * @param goToStep gets the id of a step; asked of findings that name one
     */
    ToldList(String none, Consumer<String> goToStep) {
        super(new MigLayout("insets 0, gap 8 4, hidemode 3", "[][grow, fill]", ""));
        setOpaque(false);
        this.none = none;
        this.goToStep = goToStep;
    }

    /** Shows other findings; the same ones again do nothing, so that a button keeps the keyboard. */
    void show(List<Told> all, boolean links) {
        if (all.equals(shown)) {
            return;
        }
        shown = all;
        removeAll();
        if (all.isEmpty()) {
            add(new JLabel(new FineSign()), "top");
            add(new Prose(none), "wmin 0, wrap");
        }
        for (Told told : all) {
            add(new JLabel(new SeveritySign(told.severity())), "top, gaptop 3");
            JPanel words = new JPanel(new MigLayout("insets 0, gap 0 2, wrap 1", "[grow, fill]"));
            words.setOpaque(false);
            JLabel title = new JLabel();
            title.putClientProperty("html.disable", true);
            title.putClientProperty("FlatLaf.styleClass", "h4");
            title.setText(told.title());
            words.add(title, "wmin 0");
            words.add(new Prose(told.sentence()), "wmin 0");
            if (links && !told.step().isEmpty()) {
                words.add(link(told), "growx 0, left");
            }
            told.fixes().forEach(fix -> words.add(row(fix), "gaptop 2"));
            words.getAccessibleContext()
                    .setAccessibleName(
                            Words.of("severity", told.severity()) + ": " + told.title() + ". " + told.sentence());
            add(words, "wmin 0, gapbottom 8, wrap");
        }
        revalidate();
        repaint();
    }

    private JButton link(Told told) {
        JButton link = new JButton(Words.of("told.step", told.step()));
        link.putClientProperty("JButton.buttonType", "borderless");
        link.putClientProperty("html.disable", true);
        link.addActionListener(e -> goToStep.accept(told.step()));
        return link;
    }

    private static JPanel row(Told.Fix fix) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 8", "[][grow, fill]", "[top]"));
        row.setOpaque(false);
        JButton button = new JButton(fix.verb());
        button.getAccessibleContext().setAccessibleName(fix.verb() + ": " + fix.sentence());
        button.addActionListener(e -> fix.does().run());
        row.add(button);
        row.add(new Prose(fix.sentence()), "wmin 0, gaptop 4");
        return row;
    }

    /** What is shown, for those who drive it without a mouse. */
    List<Told> shown() {
        return shown == null ? List.of() : shown;
    }
}
