package baywright.swing.survey;

import baywright.swing.parts.DoAction;
import baywright.swing.parts.TonedLabel;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;

/**
 * A field with its label and, below it, what is wrong with what was typed. It takes what was typed on Enter, on leaving the field and
 * after a pause; what it cannot take stays in the field, also while another zone or job is looked at.
 */
final class Entry extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int PAUSE = 900;

    private final JTextComponent field;
    private final TonedLabel trouble = new TonedLabel("", "stop", "small");
    private final transient Consumer<String> takes;
    private final transient Map<String, String> left = new HashMap<>();
    private final transient Timer pause;
    private String owner = "";
    private String base = "";

    /**
     * @param label names the field
     * @param rows  height in lines; one: a single line
     * @param takes makes the edit; throws {@link IllegalArgumentException} with what is wrong and how to mend it
     */
    Entry(String label, int rows, Consumer<String> takes) {
        super(new MigLayout("insets 0, gap 0 2, wrap 1", "[grow,fill,100::]"));
        this.takes = takes;
        setOpaque(false);
        field = rows == 1 ? new JTextField() : area(rows);
        JLabel name = new JLabel(label);
        name.putClientProperty("html.disable", true);
        name.setLabelFor(field);
        field.getAccessibleContext().setAccessibleName(label);
        trouble.setVisible(false);
        add(name);
        add(rows == 1 ? field : new JScrollPane(field), "wmin 60");
        add(trouble, "hidemode 3, wmin 0");
        pause = new Timer(PAUSE, e -> take(false));
        pause.setRepeats(false);
        field.getDocument().addDocumentListener(new Typing());
        field.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent e) {
                take(true);
            }
        });
        onKey(field, rows == 1 ? "ENTER" : "ctrl ENTER", () -> take(true));
    }

    private static JTextArea area(int rows) {
        JTextArea area = new JTextArea(rows, 10);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        // Tab leaves the field as it does everywhere else.
        area.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        return area;
    }

    static void onKey(JComponent component, String key, Runnable does) {
        component.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        component.getActionMap().put(key, new DoAction(does));
    }

    JTextComponent field() {
        return field;
    }

    /** What is said to be wrong; empty when nothing is. */
    String trouble() {
        return trouble.isVisible() ? trouble.getText() : "";
    }

    /** Shows a value of something; what was typed and could not be taken stays. */
    void show(String whose, String value) {
        if (!owner.equals(whose)) {
            keepLeft();
            owner = whose;
            base = value;
            String before = left.remove(whose);
            set(before == null ? value : before);
            say("");
            if (before != null) {
                take(true);
            }
        } else if (same(field.getText(), value)) {
            base = field.getText();
            say("");
        } else if (!isTyped()) {
            base = value;
            set(value);
        }
    }

    private void keepLeft() {
        if (isTyped()) {
            left.put(owner, field.getText());
        }
    }

    private boolean isTyped() {
        return !same(field.getText(), base);
    }

    private static boolean same(String a, String b) {
        return a.strip().replaceAll("\\s+", " ").equals(b.strip().replaceAll("\\s+", " "));
    }

    private void set(String text) {
        if (!field.getText().equals(text)) {
            field.setText(text);
        }
        pause.stop();
    }

    /** Makes the edit of what was typed. */
    void take(boolean sayWhatIsWrong) {
        pause.stop();
        if (!isTyped()) {
            say("");
            return;
        }
        String before = base;
        String typed = field.getText();
        base = typed;
        try {
            takes.accept(typed);
            say("");
        } catch (IllegalArgumentException e) {
            base = before;
            if (sayWhatIsWrong || !trouble().isEmpty()) {
                say(String.valueOf(e.getMessage()));
            }
        }
    }

    /** Types and leaves the field, as a user does. */
    void type(String text) {
        field.setText(text);
        take(true);
    }

    private void say(String text) {
        trouble.setText(text);
        trouble.setVisible(!text.isEmpty());
        trouble.setToolTipText(text.isEmpty() ? null : Plain.text(text));
        field.putClientProperty("JComponent.outline", text.isEmpty() ? null : "error");
        field.getAccessibleContext().setAccessibleDescription(text);
        revalidate();
        repaint();
    }

    private final class Typing implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent e) {
            pause.restart();
        }

        @Override
        public void removeUpdate(DocumentEvent e) {
            pause.restart();
        }

        @Override
        public void changedUpdate(DocumentEvent e) {
            pause.restart();
        }
    }
}
