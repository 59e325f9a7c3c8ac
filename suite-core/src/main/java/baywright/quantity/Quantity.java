package baywright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Objects;

/**
 * An amount with its unit, kept as written. Two quantities are equal when they were written alike; compare sizes with
 * {@link #compareTo}.
 *
 * @param amount any finite decimal
 * @param unit   what it counts
 */
public record Quantity(BigDecimal amount, Unit unit) implements Comparable<Quantity> {

    /** Precision of every division in quantities: 16 significant digits, half even. */
    public static final MathContext PRECISION = MathContext.DECIMAL64;

    public Quantity {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(unit, "unit");
    }

    public static Quantity of(String amount, Unit unit) {
        return new Quantity(new BigDecimal(amount), unit);
    }

    public static Quantity of(long amount, Unit unit) {
        return new Quantity(BigDecimal.valueOf(amount), unit);
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** The amount in the dimension's base unit (minute, ml, g, m², m, µm, °C, %, piece, m/s², dB). */
    public BigDecimal inBase() {
        return unit.toBase(amount);
    }

    public Quantity times(BigDecimal factor) {
        return new Quantity(amount.multiply(factor), unit);
    }

    /**
     * Orders by size within one dimension.
     *
     * @throws IllegalArgumentException when the dimensions differ
     */
    @Override
    public int compareTo(Quantity other) {
        if (dimension() != other.dimension()) {
            throw new IllegalArgumentException("cannot compare " + this + " with " + other);
        }
        return inBase().compareTo(other.inBase());
    }

    @Override
    public String toString() {
        return amount.toPlainString() + " " + unit.symbol();
    }
}
