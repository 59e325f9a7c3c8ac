package baywright.swing.plan;

import baywright.swing.parts.Prose;
import baywright.swing.parts.SectionHeading;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** The plan as a whole: everything that stands against it, and ways to mend it all at once. */
final class PlanOverview extends Column {

    private static final long serialVersionUID = 1L;

    private final JLabel title = new JLabel(Words.of("overview.title"));
    private final Prose verdict = new Prose("");
    private final SectionHeading waysHeading = new SectionHeading(Words.of("section.ways"));
    private final JPanel ways = new JPanel(new MigLayout("insets 0, gap 8 4, wrap 2", "[][grow, fill]", "[top]"));
    private final ToldList told;
    private transient List<Told.Fix> shown = List.of();

    PlanOverview(Consumer<String> goToStep) {
        told = new ToldList(Words.of("told.none.plan"), goToStep);
        title.putClientProperty("FlatLaf.styleClass", "h2");
        ways.setOpaque(false);
        add(title);
        add(waysHeading);
        add(verdict, "wmin 0");
        add(ways, "wmin 0");
        add(new SectionHeading(Words.of("section.told.plan"), told));
        add(told, "wmin 0");
        show(Optional.empty());
    }

    void show(Optional<ToldTexts> texts) {
        told.show(texts.map(ToldTexts::all).orElse(List.of()), true);
        List<Told.Fix> now = texts.map(ToldTexts::ways).orElse(List.of());
        Optional<String> said = texts.flatMap(ToldTexts::verdict);
        verdict.setText(said.orElse(""));
        verdict.setVisible(said.isPresent());
        waysHeading.setVisible(said.isPresent() || !now.isEmpty());
        ways.setVisible(!now.isEmpty());
        if (!now.equals(shown)) {
            ways.removeAll();
            for (Told.Fix fix : now) {
                JButton button = new JButton(fix.verb());
                button.getAccessibleContext().setAccessibleName(fix.verb() + ": " + fix.sentence());
                button.addActionListener(e -> fix.does().run());
                ways.add(button);
                ways.add(new Prose(fix.sentence()), "wmin 0, gaptop 4");
            }
        }
        shown = now;
        revalidate();
        repaint();
    }

    ToldList told() {
        return told;
    }

    List<Told.Fix> ways() {
        return shown;
    }
}
