package baywright.vehicle;

import baywright.quantity.Spread;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The readings of one zone in figures.
 *
 * @param lowest  the reading that plans rest on, the first of equals
 * @param highest the highest reading, the first of equals
 * @param mean    exact mean to 16 digits, µm; for talking to the customer
 * @param spread  count, mean and standard deviation, µm
 */
public record FilmStatistics(Reading lowest, Reading highest, BigDecimal mean, Spread spread) {

    private static final Comparator<Reading> BY_FILM = Comparator.comparing(Reading::micrometres);
    private static final BigDecimal RAGGED_RATIO = new BigDecimal("1.4");
    private static final BigDecimal RAGGED_RANGE = BigDecimal.valueOf(40);

    /** The figures of some readings; empty when there are none. */
    public static Optional<FilmStatistics> of(List<Reading> readings) {
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        List<BigDecimal> films = readings.stream().map(Reading::micrometres).toList();
        BigDecimal sum = films.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
        Reading highest = readings.get(0);
        for (Reading reading : readings) {
            highest = BY_FILM.compare(reading, highest) > 0 ? reading : highest;
        }
        return Optional.of(new FilmStatistics(
                readings.stream().min(BY_FILM).orElseThrow(),
                highest,
                sum.divide(BigDecimal.valueOf(films.size()), MathContext.DECIMAL64),
                Spread.of(films)));
    }

    /**
     * The middle one of some readings in order of thickness, µm; of an even number the mean of the two in the middle. One reading on a
     * filled dent moves it less than the mean.
     *
     * @throws IllegalArgumentException when there are no readings
     */
    public static BigDecimal median(List<Reading> readings) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("a median needs at least one reading, got none");
        }
        List<BigDecimal> films =
                readings.stream().map(Reading::micrometres).sorted().toList();
        int middle = films.size() / 2;
        return films.size() % 2 == 1
                ? films.get(middle)
                : films.get(middle - 1).add(films.get(middle)).divide(BigDecimal.valueOf(2));
    }

    /** How many readings. */
    public int count() {
        return spread.count();
    }

    /** Highest less lowest reading, µm. */
    public BigDecimal range() {
        return highest.micrometres().subtract(lowest.micrometres());
    }

    /**
     * Whether the readings differ more than one coat of paint does: over 1.4 times, or over 40 µm (from memory). A mean
     * of such readings says nothing.
     */
    public boolean isRagged() {
        return range().compareTo(RAGGED_RANGE) > 0
                || highest.micrometres().compareTo(lowest.micrometres().multiply(RAGGED_RATIO)) > 0;
    }
}
