package baywright.swing.shell;

import baywright.swing.api.Colours;
import java.awt.Color;
import java.awt.Component;
import java.awt.LayoutManager;
import javax.swing.JPanel;

/** Panels in a colour of the look. */
final class Panels {

    private Panels() {}

    static JPanel toned(LayoutManager layout, String tone) {
        return new JPanel(layout) {
            private static final long serialVersionUID = 1L;

            @Override
            public Color getBackground() {
                return Colours.of(tone);
            }
        };
    }

    static JPanel around(Component content) {
        JPanel panel = new JPanel(new java.awt.BorderLayout());
        panel.add(content);
        return panel;
    }
}
