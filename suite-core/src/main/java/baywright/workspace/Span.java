package baywright.workspace;

import java.math.BigDecimal;

/**
 * Which numbers a field takes.
 *
 * @param least     the lowest
 * @param most      the highest, which it takes
 * @param withLeast whether it takes the lowest itself
 */
public record Span(BigDecimal least, BigDecimal most, boolean withLeast) {

    static final Span PERCENT = from(0, 100);
    static final Span RATE = above(0, 100_000);
    static final Span AMOUNT = from(0, 1_000_000);
    static final Span MONEY = from(0, 100_000_000);

    /** Both ends belong to it. */
    public static Span from(long least, long most) {
        return new Span(BigDecimal.valueOf(least), BigDecimal.valueOf(most), true);
    }

    /** The lower end does not belong to it. */
    public static Span above(long least, long most) {
        return new Span(BigDecimal.valueOf(least), BigDecimal.valueOf(most), false);
    }

    boolean holds(BigDecimal number) {
        int toLeast = number.compareTo(least);
        return (withLeast ? toLeast >= 0 : toLeast > 0) && number.compareTo(most) <= 0;
    }

    /** {@code from 0 to 100}, {@code above 0, at most 1000}. */
    String words() {
        return withLeast
                ? "from " + least.toPlainString() + " to " + most.toPlainString()
                : "above " + least.toPlainString() + ", at most " + most.toPlainString();
    }
}
