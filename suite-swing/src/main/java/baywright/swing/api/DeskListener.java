package baywright.swing.api;

/** Hears of every new state of the desk, on the event thread. */
@FunctionalInterface
public interface DeskListener {
    void changed(DeskState before, DeskState now);
}
