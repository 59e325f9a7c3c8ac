package baywright.swing.api;

import java.util.List;
import javax.swing.JComponent;

/** What a workbench shows. All calls come on the event thread. */
public interface WorkbenchView {

    JComponent component();

    /** What gets the keyboard when the workbench is shown. */
    default JComponent focus() {
        return component();
    }

    /** What can be done here; listed among all actions while this workbench is shown, with their keys. */
    default List<SuiteAction> actions() {
        return List.of();
    }

    /** Shows a place inside, such as a line of a script. An unknown place is ignored. */
    default void show(Destination place) {}

    /**
     * Something on the desk has changed. While the workbench is hidden nothing is told; when it is shown it is told the newest state
     * once.
     */
    void show(DeskState state);
}
