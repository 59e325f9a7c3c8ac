package baywright.safety;

import java.util.Locale;
import java.util.Map;

/** Signal word of a label; Danger replaces Warning (Regulation (EC) No 1272/2008, art. 20(3)). */
public enum Signal {
    NONE,
    WARNING,
    DANGER;

    private static final Map<String, String> WARNING_IN =
            Map.of("en", "Warning", "de", "Achtung", "fr", "Attention", "es", "Atención", "nl", "Waarschuwing");
    private static final Map<String, String> DANGER_IN =
            Map.of("en", "Danger", "de", "Gefahr", "fr", "Danger", "es", "Peligro", "nl", "Gevaar");

    /** The word as labels have it in a language, English where the statements are not in it (from memory); empty for none. */
    public String word(Locale locale) {
        String language = Statements.in(locale).language();
        return switch (this) {
            case NONE -> "";
            case WARNING -> WARNING_IN.get(language);
            case DANGER -> DANGER_IN.get(language);
        };
    }
}
