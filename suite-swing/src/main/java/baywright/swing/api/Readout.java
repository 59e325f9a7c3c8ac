package baywright.swing.api;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import org.joda.money.Money;

/**
 * Writes amounts the way the user has set: micrometres or mils, litres or US gallons, °C or °F, and numbers and days by locale. What is
 * kept is always metric; only what is shown changes.
 */
public interface Readout {

    Locale locale();

    /** A paint thickness with its unit. */
    String film(BigDecimal micrometres);

    /** A paint thickness for a field or a small mark, without its unit. */
    String filmNumber(BigDecimal micrometres);

    /** {@code µm} or {@code mil}. */
    String filmUnit();

    /** What the user typed into a field of {@link #filmUnit}, in micrometres. @throws NumberFormatException when it is no number from 0 to 10,000 µm */
    BigDecimal filmTyped(String text);

    /** A volume with a fitting unit. */
    String volume(BigDecimal litres);

    /** A temperature with its unit. */
    String temperature(BigDecimal celsius);

    /** A temperature for a field, without its unit. */
    String temperatureNumber(BigDecimal celsius);

    /** {@code °C} or {@code °F}. */
    String temperatureUnit();

    /** What the user typed into a field of {@link #temperatureUnit}, in °C to a hundredth. @throws NumberFormatException when it is no number */
    BigDecimal temperatureTyped(String text);

    /** What the user typed into a field for a number. @throws NumberFormatException when it is no number */
    BigDecimal numberTyped(String text);

    String number(BigDecimal number, int decimals);

    String money(Money money);

    /** {@code 2 h 35 min}. */
    String minutes(BigDecimal minutes);

    String day(LocalDate day);

    /** Day of the week, day and time, short. */
    String moment(LocalDateTime moment);
}
