package baywright.document;

import java.util.Locale;
import java.util.Set;

/** Size of the pages. */
public enum Paper {
    A4("A4"),
    LETTER("letter");

    /** Countries that use letter in the office; from memory. */
    private static final Set<String> OF_LETTER =
            Set.of("US", "CA", "MX", "CL", "CO", "CR", "DO", "GT", "NI", "PA", "PH", "PR", "SV", "VE");

    private final String css;

    Paper(String css) {
        this.css = css;
    }

    /** The usual one of a country. */
    public static Paper of(Locale locale) {
        return OF_LETTER.contains(locale.getCountry()) ? LETTER : A4;
    }

    /** Its name in a style sheet. */
    String css() {
        return css;
    }
}
