package baywright.swing.plan;

import baywright.swing.api.Destination;
import baywright.swing.parts.Prose;
import baywright.swing.parts.TrailLine;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;

/** Figures below each other, each with the button that goes to where it is written. */
final class FigureLinks extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Consumer<Destination> go;
    private transient List<TrailLine> shown;

    FigureLinks(Consumer<Destination> go) {
        super(new MigLayout("insets 0, gap 4 0", "[grow, fill][]", "[]"));
        setOpaque(false);
        this.go = go;
    }

    /** Shows other figures; the same ones again do nothing. */
    void show(List<TrailLine> lines) {
        if (lines.equals(shown)) {
            return;
        }
        shown = lines;
        removeAll();
        for (TrailLine line : lines) {
            add(new Prose(line.text()), line.to().isPresent() ? "wmin 0" : "wmin 0, span, wrap");
            line.to().ifPresent(to -> {
                JButton button = new JButton(Words.of("trail.show"));
                button.putClientProperty("JButton.buttonType", "borderless");
                button.getAccessibleContext().setAccessibleName(Words.of("trail.show.of", line.text()));
                button.addActionListener(e -> go.accept(to));
                add(button, "top, wrap");
            });
        }
        revalidate();
        repaint();
    }

    List<TrailLine> shown() {
        return shown == null ? List.of() : shown;
    }
}
