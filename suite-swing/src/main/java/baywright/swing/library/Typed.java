package baywright.swing.library;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/**
 * Hears of each change of a text.
 *
 * @param does what follows
 */
record Typed(Runnable does) implements DocumentListener {

    @Override
    public void insertUpdate(DocumentEvent e) {
        does.run();
    }

    @Override
    public void removeUpdate(DocumentEvent e) {
        does.run();
    }

    @Override
    public void changedUpdate(DocumentEvent e) {
        // styles are no text
    }
}
