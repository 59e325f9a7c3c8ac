package baywright.swing.quote;

import java.math.BigDecimal;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.Locale;
import java.util.Optional;

/** Reads an amount of money as a person types it, strictly: all of it must be a number in the way of the country, or with a point. */
final class CapEntry {

    /** Digits before the decimal mark; more is a slip of the hand. */
    private static final int MOST_DIGITS = 12;

    private CapEntry() {}

    /**
     * The amount.
     *
     * @param decimals that the currency has
     * @return empty when the text is no amount from 0 in coins
     */
    static Optional<BigDecimal> read(String text, Locale locale, int decimals) {
        String bare = text.strip();
        return local(bare, locale)
                .or(() -> plain(bare))
                .filter(amount -> amount.signum() >= 0
                        && amount.stripTrailingZeros().scale() <= decimals
                        && (long) amount.precision() - amount.scale() <= MOST_DIGITS);
    }

    private static Optional<BigDecimal> local(String text, Locale locale) {
        DecimalFormat format = (DecimalFormat) NumberFormat.getNumberInstance(locale);
        format.setParseBigDecimal(true);
        ParsePosition end = new ParsePosition(0);
        Number read = format.parse(text, end);
        // "1,2" must not be twelve: a group that is no group of three is no number
        boolean whole = read instanceof BigDecimal && end.getIndex() == text.length() && grouped(text, format);
        return whole ? Optional.of((BigDecimal) read) : Optional.empty();
    }

    private static boolean grouped(String text, DecimalFormat format) {
        char group = format.getDecimalFormatSymbols().getGroupingSeparator();
        char point = format.getDecimalFormatSymbols().getDecimalSeparator();
        int to = text.indexOf(point) < 0 ? text.length() : text.indexOf(point);
        String[] groups = text.substring(0, to).split(java.util.regex.Pattern.quote(String.valueOf(group)), -1);
        for (int i = 1; i < groups.length; i++) {
            if (groups[i].length() != 3) {
                return false;
            }
        }
        return text.indexOf(group, to) < 0;
    }

    private static Optional<BigDecimal> plain(String text) {
        boolean plain = text.chars().allMatch(c -> c == '.' || c >= '0' && c <= '9');
        try {
            return plain ? Optional.of(new BigDecimal(text)) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
