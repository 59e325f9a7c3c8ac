package baywright.swing.drawing;

import java.awt.Color;

/** What is readable on a colour. */
final class Ink {

    private static final Color BLACK = new Color(0x10181a);

    private Ink() {}

    /** Black or white, whichever stands out more. */
    static Color on(Color fill) {
        return contrast(fill, BLACK) >= contrast(fill, Color.WHITE) ? BLACK : Color.WHITE;
    }

    /** Contrast of two colours, 1 to 21. Source: WCAG 2.2, definition of contrast ratio. */
    static double contrast(Color a, Color b) {
        double first = luminance(a);
        double second = luminance(b);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    /** Relative luminance, 0 to 1. Source: WCAG 2.2, by IEC 61966-2-1. */
    static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    /** Light of one channel, 0 to 1. Source: IEC 61966-2-1. */
    static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
