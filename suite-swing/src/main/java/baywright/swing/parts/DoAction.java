package baywright.swing.parts;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;

/** An action that runs something, for buttons and keys that need no more than that. */
public final class DoAction extends AbstractAction {

    private static final long serialVersionUID = 1L;

    private final transient Runnable does;

    /** An action without a name, for a key. */
    public DoAction(Runnable does) {
        this.does = does;
    }

    /** @param name what a button says */
    public DoAction(String name, Runnable does) {
        super(name);
        this.does = does;
    }

    @Override
    public void actionPerformed(ActionEvent e) {
        does.run();
    }
}
