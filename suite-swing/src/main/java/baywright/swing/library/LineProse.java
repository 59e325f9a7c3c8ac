package baywright.swing.library;

import baywright.swing.api.Colours;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;

/** A sentence that wraps and goes to its line of a script on a click, Enter or Space. */
final class LineProse extends JTextArea {

    private static final long serialVersionUID = 1L;

    LineProse(String text, Runnable go) {
        super(text);
        setEditable(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        getAccessibleContext().setAccessibleName(text);
        getCaret().setVisible(false);
        setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        for (String key : new String[] {"ENTER", "SPACE"}) {
            getInputMap().put(KeyStroke.getKeyStroke(key), "go");
        }
        getActionMap().put("go", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent e) {
                go.run();
            }
        });
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                go.run();
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                frame();
            }

            @Override
            public void focusLost(FocusEvent e) {
                frame();
            }
        });
        frame();
    }

    private void frame() {
        setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createLineBorder(Colours.of(isFocusOwner() ? "accent" : "line")),
                BorderFactory.createEmptyBorder(4, 8, 4, 8)));
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setFont(new JLabel().getFont());
        setBackground(Colours.of("tile"));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, super.getMinimumSize().height);
    }
}
