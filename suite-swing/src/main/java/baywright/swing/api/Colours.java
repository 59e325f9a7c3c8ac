package baywright.swing.api;

import java.awt.Color;
import javax.swing.UIManager;

/** Colours of the suite's look, so that what a plug-in draws fits light and dark. Ask anew each time something is painted. */
public final class Colours {

    private Colours() {}

    /**
     * A colour by its name: {@code stop}, {@code warn}, {@code note}, {@code fine} for severities (never without a shape or a word
     * beside it), {@code faint} for lesser text, {@code line} for rules, {@code tile} for a raised area, {@code strip} and {@code strip.ink} for the strip at the side, {@code accent}.
     *
     * @throws IllegalArgumentException when the look has no such colour
     */
    public static Color of(String name) {
        Color colour = UIManager.getColor("Baywright." + name);
        if (colour == null) {
            throw new IllegalArgumentException("the look has no colour '" + name + "'");
        }
        return colour;
    }
}
