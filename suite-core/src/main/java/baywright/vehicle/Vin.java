package baywright.vehicle;

/**
 * A vehicle identification number: seventeen capital letters and digits without I, O and Q.
 *
 * <p>The check digit at position 9 is demanded in North America only; elsewhere a number may carry anything there, so a
 * wrong one is worth a warning and no more. Source of letters, weights and remainder: 49 CFR 565.15(c), tables IV and
 * V.
 *
 * @param text the number as it is stamped
 */
public record Vin(String text) {

    private static final int LENGTH = 17;
    private static final int CHECK_POSITION = 8;
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};

    /** Values of the letters A to Z; -1 for the letters that a number never has. */
    private static final int[] LETTERS = {
        1, 2, 3, 4, 5, 6, 7, 8, -1, 1, 2, 3, 4, 5, -1, 7, -1, 9, 2, 3, 4, 5, 6, 7, 8, 9
    };

    /**
     * Checks length and characters, not the check digit.
     *
     * @throws IllegalArgumentException when it is not seventeen characters long or holds another character; the message
     *                                  says which
     */
    public Vin {
        if (text.length() != LENGTH) {
            throw new IllegalArgumentException("a VIN has 17 characters, this one has " + text.length());
        }
        for (int i = 0; i < LENGTH; i++) {
            if (value(text.charAt(i)) < 0) {
                throw new IllegalArgumentException("a VIN has capital letters without I, O and Q, and digits;"
                        + " character " + (i + 1) + " is '" + text.charAt(i) + "'");
            }
        }
    }

    /** The check digit that the other sixteen characters ask for: 0 to 9 or X. */
    public char expectedCheckDigit() {
        int sum = 0;
        for (int i = 0; i < LENGTH; i++) {
            sum += value(text.charAt(i)) * WEIGHTS[i];
        }
        int remainder = sum % 11;
        return remainder == 10 ? 'X' : (char) ('0' + remainder);
    }

    /** Whether position 9 holds the expected check digit. */
    public boolean checkDigitFits() {
        return text.charAt(CHECK_POSITION) == expectedCheckDigit();
    }

    private static int value(char c) {
        if (c >= '0' && c <= '9') {
            return c - '0';
        }
        return c >= 'A' && c <= 'Z' ? LETTERS[c - 'A'] : -1;
    }

    @Override
    public String toString() {
        return text;
    }
}
