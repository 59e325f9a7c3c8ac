package baywright.swing.shell;

import baywright.site.Numbers;
import baywright.swing.api.Readout;
import baywright.swing.api.Settings;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Locale;
import org.joda.money.Money;

/**
 * Amounts in the units that the user has set. One mil is 25.4 µm and one inch 25.4 mm by definition, one US liquid gallon 3.785411784 l
 * (NIST Special Publication 811, 2008, appendix B.8).
 */
public final class UserReadout implements Readout {

    static final String FILM = "suite.units.film";
    static final String VOLUME = "suite.units.volume";
    static final String TEMPERATURE = "suite.units.temperature";

    private static final BigDecimal MICROMETRES_IN_MIL = new BigDecimal("25.4");
    private static final BigDecimal LITRES_IN_GALLON = new BigDecimal("3.785411784");
    private static final BigDecimal OUNCES_IN_GALLON = BigDecimal.valueOf(128);
    /** Fahrenheit degrees in a kelvin, and where water freezes; exact by definition. */
    private static final BigDecimal DEGREES_IN_KELVIN = new BigDecimal("1.8");

    private static final BigDecimal FREEZING = BigDecimal.valueOf(32);
    private static final BigDecimal MOST_FILM = BigDecimal.valueOf(10_000);

    private final Settings settings;
    private final Numbers numbers;

    /** @param settings asked anew each time, so that a switch shows at once */
    public UserReadout(Settings settings, Locale locale) {
        this.settings = settings;
        this.numbers = new Numbers(locale);
    }

    @Override
    public Locale locale() {
        return numbers.locale();
    }

    @Override
    public String film(BigDecimal micrometres) {
        return filmNumber(micrometres) + " " + filmUnit();
    }

    @Override
    public String filmNumber(BigDecimal micrometres) {
        return inMil()
                ? numbers.fixed(micrometres.divide(MICROMETRES_IN_MIL, MathContext.DECIMAL64), 2)
                : numbers.number(micrometres, 1);
    }

    @Override
    public String filmUnit() {
        return inMil() ? "mil" : "µm";
    }

    private boolean inMil() {
        return is(FILM, "mil");
    }

    private boolean is(String key, String value) {
        return settings.get(key).filter(value::equals).isPresent();
    }

    @Override
    public BigDecimal filmTyped(String text) {
        BigDecimal typed = typed(text.strip());
        BigDecimal micrometres = inMil() ? typed.multiply(MICROMETRES_IN_MIL) : typed;
        if (micrometres.signum() < 0 || micrometres.compareTo(MOST_FILM) > 0) {
            throw new NumberFormatException(text);
        }
        return micrometres.stripTrailingZeros();
    }

    /** A point always ends the whole part, so that nobody's 112.5 becomes 1125; so does the locale's own mark. */
    private BigDecimal typed(String text) {
        if (text.matches("-?[0-9]{1,9}(\\.[0-9]{1,9})?")) {
            return new BigDecimal(text);
        }
        DecimalFormat format = (DecimalFormat) NumberFormat.getNumberInstance(locale());
        format.setParseBigDecimal(true);
        format.setGroupingUsed(false);
        ParsePosition at = new ParsePosition(0);
        Number number = format.parse(text, at);
        if (number == null || at.getIndex() < text.length() || !(number instanceof BigDecimal decimal)) {
            throw new NumberFormatException(text);
        }
        return decimal;
    }

    @Override
    public String volume(BigDecimal litres) {
        boolean small = litres.abs().compareTo(BigDecimal.ONE) < 0;
        if (is(VOLUME, "gallon")) {
            BigDecimal gallons = litres.divide(LITRES_IN_GALLON, MathContext.DECIMAL64);
            return small
                    ? numbers.number(gallons.multiply(OUNCES_IN_GALLON), 1) + " US fl oz"
                    : numbers.number(gallons, 2) + " US gal";
        }
        return small ? numbers.number(litres.movePointRight(3), 0) + " ml" : numbers.number(litres, 2) + " l";
    }

    @Override
    public String temperature(BigDecimal celsius) {
        if (inFahrenheit()) {
            return numbers.number(fahrenheit(celsius).setScale(0, RoundingMode.HALF_UP), 0) + " °F";
        }
        return numbers.number(celsius, 1) + " °C";
    }

    private boolean inFahrenheit() {
        return is(TEMPERATURE, "fahrenheit");
    }

    private static BigDecimal fahrenheit(BigDecimal celsius) {
        return celsius.multiply(DEGREES_IN_KELVIN).add(FREEZING);
    }

    @Override
    public String temperatureNumber(BigDecimal celsius) {
        return numbers.number(inFahrenheit() ? fahrenheit(celsius) : celsius, 1);
    }

    @Override
    public String temperatureUnit() {
        return inFahrenheit() ? "°F" : "°C";
    }

    @Override
    public BigDecimal temperatureTyped(String text) {
        BigDecimal typed = typed(text.strip());
        BigDecimal celsius =
                inFahrenheit() ? typed.subtract(FREEZING).divide(DEGREES_IN_KELVIN, MathContext.DECIMAL64) : typed;
        return plain(celsius.setScale(2, RoundingMode.HALF_UP));
    }

    @Override
    public BigDecimal numberTyped(String text) {
        return plain(typed(text.strip()));
    }

    /** Without decimals that say nothing, and never in powers of ten. */
    private static BigDecimal plain(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    @Override
    public String number(BigDecimal number, int decimals) {
        return numbers.number(number, decimals);
    }

    @Override
    public String money(Money money) {
        return numbers.money(money);
    }

    @Override
    public String minutes(BigDecimal minutes) {
        return numbers.duration(minutes);
    }

    @Override
    public String day(LocalDate day) {
        return numbers.day(day);
    }

    @Override
    public String moment(LocalDateTime moment) {
        return DateTimeFormatter.ofPattern("EEE ", locale()).format(moment)
                + DateTimeFormatter.ofLocalizedDateTime(FormatStyle.SHORT)
                        .withLocale(locale())
                        .format(moment);
    }
}
