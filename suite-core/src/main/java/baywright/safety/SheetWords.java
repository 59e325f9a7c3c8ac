package baywright.safety;

import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import java.util.ResourceBundle;

/** Words, figures and days of a hazard sheet in a reader's language; English where there are none in it. */
final class SheetWords {

    private final Locale locale;
    private final ResourceBundle texts;

    SheetWords(Locale locale) {
        this.locale = locale;
        texts = ResourceBundle.getBundle(
                "baywright.safety.sheet",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    Locale locale() {
        return locale;
    }

    String say(String key, Object... with) {
        return new MessageFormat(texts.getString(key), locale).format(with);
    }

    /** A text that is no pattern. */
    String plain(String key) {
        return texts.getString(key);
    }

    /** Words for a key, or another text where there are none, such as for a danger that a shop named itself. */
    String sayOr(String key, String other) {
        return texts.containsKey(key) ? say(key) : other;
    }

    String figure(double value, int decimals) {
        NumberFormat format = NumberFormat.getInstance(locale);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(value);
    }

    /** Without decimals that say nothing. */
    String figure(double value) {
        NumberFormat format = NumberFormat.getInstance(locale);
        format.setMaximumFractionDigits(2);
        return format.format(value);
    }

    /** A day of the week with its date. */
    String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL)
                .withLocale(locale)
                .format(day);
    }

    /** A date for a table. */
    String date(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM)
                .withLocale(locale)
                .format(day);
    }
}
