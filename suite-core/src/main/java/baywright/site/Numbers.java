package baywright.site;

import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import org.joda.money.Money;

/**
 * Writes numbers, money and days the way of a country.
 *
 * @param locale the reader's, or for what a shop hands out the shop's
 */
public record Numbers(Locale locale) {

    private static final BigDecimal HOUR = BigDecimal.valueOf(60);

    /** At most so many decimals, none that say nothing. */
    public String number(BigDecimal number, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMaximumFractionDigits(decimals);
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(number);
    }

    /** Money with its currency code, so that no terminal has to know a sign: {@code GBP 1,030.53}. */
    public String money(Money money) {
        return money.getCurrencyUnit().getCode() + " " + coins(money);
    }

    /** Money without its currency. */
    public String coins(Money money) {
        return fixed(money.getAmount(), money.getCurrencyUnit().getDecimalPlaces());
    }

    /** Exactly so many decimals. */
    public String fixed(BigDecimal number, int decimals) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(number);
    }

    /** A day in full: {@code 25 December 2026}. */
    public String day(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG)
                .withLocale(locale)
                .format(day);
    }

    /** A day with its day of the week: {@code Friday, 25 December 2026}. */
    public String weekday(LocalDate day) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.FULL)
                .withLocale(locale)
                .format(day);
    }

    /** A day and time: {@code 25 December 2026, 08:00}. */
    public String moment(LocalDateTime at) {
        return day(at.toLocalDate()) + ", "
                + DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT)
                        .withLocale(locale)
                        .format(at);
    }

    /** Money with its currency's sign, as on paper: {@code £1,030.53}. */
    public String currency(Money money) {
        NumberFormat format = NumberFormat.getCurrencyInstance(locale);
        format.setCurrency(money.getCurrencyUnit().toCurrency());
        format.setMinimumFractionDigits(money.getCurrencyUnit().getDecimalPlaces());
        format.setMaximumFractionDigits(money.getCurrencyUnit().getDecimalPlaces());
        return format.format(money.getAmount());
    }

    /** Minutes to the nearest whole one: {@code 38 min}, {@code 11 h 14 min}. */
    public String duration(BigDecimal minutes) {
        BigDecimal whole = minutes.setScale(0, RoundingMode.HALF_UP);
        if (whole.compareTo(HOUR) < 0) {
            return whole.toPlainString() + " min";
        }
        BigDecimal[] parts = whole.divideAndRemainder(HOUR);
        return number(parts[0], 0) + " h " + String.format(Locale.ROOT, "%02d", parts[1].intValueExact()) + " min";
    }

    /** An amount in its own unit, to three decimals. */
    public String quantity(Quantity quantity) {
        return number(quantity.amount(), 3) + " " + quantity.unit().symbol();
    }
}
