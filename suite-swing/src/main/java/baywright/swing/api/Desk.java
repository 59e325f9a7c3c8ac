package baywright.swing.api;

import baywright.site.OpenShop;
import java.util.function.UnaryOperator;

/**
 * The desk: the open shop, the chosen job, and everything that changes them. To be used on the event thread; no call waits.
 */
public interface Desk {

    /** How everything stands now. */
    DeskState state();

    /** Tells a listener of every new state until the returned handle is closed; the workbench shown needs none. */
    Subscription listen(DeskListener listener);

    /** Chooses a job by its id; an unknown id is ignored. */
    void choose(String job);

    /**
     * Changes the shop, with undo.
     *
     * @param title  what the user did, such as “Move step s3”, for undo and redo
     * @param change a pure function, fast (it runs on the event thread); returning its argument does nothing
     */
    default void change(String title, UnaryOperator<OpenShop> change) {
        change(new Change(title, "", change));
    }

    /** Changes the shop, with undo. */
    void change(Change change);

    /** Saves everything in the background, as the user does with the key for it. */
    void save();

    /**
     * Reads the open shop anew in the background, after something has written to its files in another way than by saving. With unsaved
     * edits everything is saved instead, which takes over what has changed and asks where both have.
     */
    void reread();

    /** Shows another workbench, there a place. */
    void go(Destination place);

    /** Tells the user something without taking the keyboard. */
    void say(Notice notice);

    /** Runs work off the event thread, with progress and a way to cancel it when it lasts. */
    <T> TaskHandle run(Task<T> task);

    /** How amounts are written for the user: units, numbers, money, days. */
    Readout readout();

    /** What the user has set. */
    Settings settings();
}
