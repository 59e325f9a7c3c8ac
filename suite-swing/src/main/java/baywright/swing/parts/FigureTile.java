package baywright.swing.parts;

import baywright.swing.api.Colours;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;

/** A figure with its name. One that can be traced takes the keyboard; a click, Enter or Space asks where it comes from. */
public final class FigureTile extends JPanel {

    private static final long serialVersionUID = 1L;

    private final TonedLabel name;
    private final JLabel amount = new JLabel();
    private transient Runnable trace;

    public FigureTile(String name) {
        super(new MigLayout("insets 8 12 8 12, wrap 1, hidemode 3", "[grow, fill]", "[]2[]"));
        this.name = new TonedLabel(name, "faint");
        amount.putClientProperty("html.disable", true);
        amount.putClientProperty("FlatLaf.styleClass", "figure");
        add(this.name, "wmin 0");
        add(amount, "wmin 0");
        say("");
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                border();
            }

            @Override
            public void focusLost(FocusEvent e) {
                border();
            }
        });
    }

    /** Shows another amount. */
    public void say(String text) {
        amount.setIcon(null);
        amount.setText(text);
        getAccessibleContext().setAccessibleName(name.getText() + ": " + text);
    }

    /** Shows a picture in place of an amount. */
    public void say(Icon picture, String words) {
        say(words);
        amount.setText("");
        amount.setIcon(picture);
        amount.setToolTipText(words);
    }

    /** Lets it be traced. */
    public FigureTile onTrace(String tip, Runnable shows) {
        boolean first = trace == null;
        trace = shows;
        setToolTipText(tip);
        if (first) {
            setFocusable(true);
            setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
            addMouseListener(new MouseAdapter() {
                @Override
                public void mouseClicked(MouseEvent e) {
                    requestFocusInWindow();
                    trace.run();
                }
            });
            getActionMap().put("trace", new AbstractAction() {
                private static final long serialVersionUID = 1L;

                @Override
                public void actionPerformed(ActionEvent e) {
                    trace.run();
                }
            });
            getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "trace");
            getInputMap().put(KeyStroke.getKeyStroke("SPACE"), "trace");
        }
        return this;
    }

    private void border() {
        setBorder(BorderFactory.createLineBorder(Colours.of(isFocusOwner() ? "accent" : "line"), 1));
        repaint();
    }

    @Override
    public Color getBackground() {
        return Colours.of("tile");
    }

    @Override
    public void updateUI() {
        super.updateUI();
        border();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJPanel() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return trace == null ? AccessibleRole.LABEL : AccessibleRole.PUSH_BUTTON;
                }
            };
        }
        return accessibleContext;
    }
}
