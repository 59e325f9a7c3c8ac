package baywright.swing.parts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.awt.CardLayout;
import java.awt.GraphicsEnvironment;
import java.util.List;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.MenuSelectionManager;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** A popup does not outlive the sight of what it is about. */
class TrailPopupTest {

    @Test
    void itClosesWhenAnotherWorkbenchIsShown() throws Exception {
        assumeThat(GraphicsEnvironment.isHeadless()).isFalse();
        boolean[] open = new boolean[2];
        SwingUtilities.invokeAndWait(() -> {
            CardLayout cards = new CardLayout();
            JPanel content = new JPanel(cards);
            JLabel figure = new JLabel("42");
            content.add(figure, "plan");
            content.add(new JLabel("papers"), "papers");
            JFrame frame = new JFrame();
            frame.add(content);
            frame.setSize(300, 200);
            frame.setVisible(true);
            TrailPopup.show(figure, "Price", List.of(new TrailLine("6 × 7", Optional.empty())), to -> {});
            open[0] = isAnyOpen();
            cards.show(content, "papers");
            open[1] = isAnyOpen();
            MenuSelectionManager.defaultManager().clearSelectedPath();
            frame.dispose();
        });

        assertThat(open).containsExactly(true, false);
    }

    private static boolean isAnyOpen() {
        return MenuSelectionManager.defaultManager().getSelectedPath().length > 0;
    }
}
