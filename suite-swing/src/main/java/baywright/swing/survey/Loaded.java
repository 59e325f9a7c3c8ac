package baywright.swing.survey;

import java.awt.Image;
import java.util.Optional;

/**
 * A photo as far as it could be loaded.
 *
 * @param image   the picture
 * @param trouble why there is none, in words; empty while it is being loaded
 */
record Loaded(Optional<Image> image, String trouble) {

    /** What is not loaded yet. */
    static final Loaded NOT_YET = new Loaded(Optional.empty(), "");

    boolean isBroken() {
        return !trouble.isEmpty();
    }
}
