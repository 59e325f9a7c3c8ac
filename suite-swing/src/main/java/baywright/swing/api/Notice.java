package baywright.swing.api;

import java.util.Optional;

/**
 * Something to tell the user.
 *
 * @param weight how grave it is; what is grave stays until it is closed
 * @param text   one or two sentences
 * @param more   something that helps, offered as a button
 */
public record Notice(Weight weight, String text, Optional<SuiteAction> more) {

    /** How grave it is. */
    public enum Weight {
        DONE,
        NOTE,
        WARN,
        FAILED
    }

    public static Notice done(String text) {
        return new Notice(Weight.DONE, text, Optional.empty());
    }

    public static Notice failed(String text) {
        return new Notice(Weight.FAILED, text, Optional.empty());
    }
}
