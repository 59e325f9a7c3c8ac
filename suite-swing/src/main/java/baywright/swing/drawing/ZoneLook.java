package baywright.swing.drawing;

import java.awt.Color;
import java.util.Optional;

/**
 * What one zone looks like.
 *
 * @param fill    its colour; what is written on it is black or white, whichever reads better
 * @param pattern lines or dots over the colour, so that it is told apart without it
 * @param mark    a small sign
 * @param figure  a number, short; may be empty
 * @param lesser  a lesser line below it, left out where there is no room; may be empty
 * @param corner a second sign, in a corner of the zone
 * @param says    all of it in words, for the reader of the screen and the hint beside the pointer
 */
public record ZoneLook(
        Color fill,
        ZonePattern pattern,
        Optional<ZoneMark> mark,
        String figure,
        String lesser,
        Optional<ZoneMark> corner,
        String says) {

    /** A look without a second sign. */
    public ZoneLook(
            Color fill, ZonePattern pattern, Optional<ZoneMark> mark, String figure, String lesser, String says) {
        this(fill, pattern, mark, figure, lesser, Optional.empty(), says);
    }

    /** The same with a second sign, and words for it at the end. */
    ZoneLook with(ZoneMark second, String words) {
        return new ZoneLook(fill, pattern, mark, figure, lesser, Optional.of(second), says + " · " + words);
    }

    /** A colour alone. */
    public static ZoneLook plain(Color fill, String says) {
        return new ZoneLook(fill, ZonePattern.PLAIN, Optional.empty(), "", "", says);
    }
}
