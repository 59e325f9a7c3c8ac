package baywright.swing.survey;

import javax.swing.event.AncestorEvent;
import javax.swing.event.AncestorListener;

/** Gives a field the keyboard once its dialog is there. */
final class FocusWhenShown implements AncestorListener {

    @Override
    public void ancestorAdded(AncestorEvent event) {
        event.getComponent().requestFocusInWindow();
    }

    @Override
    public void ancestorRemoved(AncestorEvent event) {}

    @Override
    public void ancestorMoved(AncestorEvent event) {}
}
