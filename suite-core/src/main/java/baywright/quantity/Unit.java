package baywright.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;

/**
 * The closed list of units that scripts, price lists and surveys may use. Factors are exact by definition of the unit
 * (NIST SP 811, appendix B); the base of each dimension is the unit the core computes in.
 */
public enum Unit {
    SECOND("s", Dimension.DURATION, "1", 60),
    MINUTE("min", Dimension.DURATION, "1"),
    HOUR("h", Dimension.DURATION, "60"),
    DAY("days", Dimension.DURATION, "1440"),
    MILLILITRE("ml", Dimension.VOLUME, "1"),
    LITRE("l", Dimension.VOLUME, "1000"),
    GRAM("g", Dimension.MASS, "1"),
    KILOGRAM("kg", Dimension.MASS, "1000"),
    SQUARE_METRE("m2", Dimension.AREA, "1"),
    METRE("m", Dimension.LENGTH, "1"),
    MICROMETRE("um", Dimension.THICKNESS, "1"),
    MIL("mil", Dimension.THICKNESS, "25.4"),
    CELSIUS("C", Dimension.TEMPERATURE, "1"),
    PERCENT("percent", Dimension.RATIO, "1"),
    EACH("each", Dimension.COUNT, "1"),
    METRE_PER_SECOND_SQUARED("ms2", Dimension.ACCELERATION, "1"),
    DECIBEL("dB", Dimension.SOUND_LEVEL, "1");

    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal numerator;
    private final BigDecimal denominator;

    Unit(String symbol, Dimension dimension, String factor) {
        this(symbol, dimension, factor, 1);
    }

    Unit(String symbol, Dimension dimension, String numerator, int denominator) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.numerator = new BigDecimal(numerator);
        this.denominator = BigDecimal.valueOf(denominator);
    }

    /** The unit as it is written behind a number in a script: {@code min}, {@code ml}, {@code m2}. */
    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** The amount in the base unit of the dimension (minute, ml, g, m², m, µm, °C, %, piece, m/s², dB). */
    BigDecimal toBase(BigDecimal amount) {
        return denominator.compareTo(BigDecimal.ONE) == 0
                ? amount.multiply(numerator)
                : amount.multiply(numerator).divide(denominator, Quantity.PRECISION);
    }

    /** The unit written {@code symbol}, if there is one; letter case counts. */
    public static Optional<Unit> of(String symbol) {
        return Arrays.stream(values()).filter(u -> u.symbol.equals(symbol)).findFirst();
    }
}
