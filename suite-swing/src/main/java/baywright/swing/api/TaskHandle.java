package baywright.swing.api;

/** Work under way. */
public interface TaskHandle {

    /** Asks it to end; neither result nor fault is told any more. */
    void cancel();

    boolean ended();
}
