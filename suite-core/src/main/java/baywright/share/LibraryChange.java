package baywright.share;

import baywright.library.StageChange;
import java.util.List;

/**
 * One declaration that a library has otherwise than before.
 *
 * @param name such as {@code stage iron-removal}; for what is no declaration the name of its file
 * @param kind what happened to it
 * @param said what a stage that is there before and after says otherwise in meaning; empty: only how it is written differs
 */
public record LibraryChange(String name, Kind kind, List<StageChange> said) {

    /** What can happen. */
    public enum Kind {
        ADDED,
        CHANGED,
        REMOVED
    }

    public LibraryChange {
        said = List.copyOf(said);
    }
}
