package baywright.pack;

import java.util.Optional;

/**
 * Somebody's word for a pack that nobody known has signed; it is kept with the pack's record.
 *
 * @param by  who answers for it
 * @param why their reason
 */
public record Consent(String by, String why) {

    /** @throws IllegalArgumentException when either says nothing or is not on one line */
    public Consent {
        if (!isWord(by) || !isWord(why)) {
            throw new IllegalArgumentException(
                    "a consent needs a name and a reason, got '" + by + "' and '" + why + "'");
        }
    }

    private static boolean isWord(String text) {
        return !text.isBlank() && text.length() <= 400 && text.codePoints().noneMatch(Character::isISOControl);
    }

    /** What a text such as {@code Ines: looked through every script} says; empty when it lacks the name or the reason. */
    public static Optional<Consent> of(String text) {
        int colon = text.indexOf(':');
        if (colon < 0) {
            return Optional.empty();
        }
        String by = text.substring(0, colon).strip();
        String why = text.substring(colon + 1).strip();
        return isWord(by) && isWord(why) ? Optional.of(new Consent(by, why)) : Optional.empty();
    }
}
