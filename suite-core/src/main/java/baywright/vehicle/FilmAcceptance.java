package baywright.vehicle;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Whether readings of a coating meet what was specified, by two published rules. They lend their rule, not their scope. */
public final class FilmAcceptance {

    private static final BigDecimal FOUR_FIFTHS = new BigDecimal("0.8");
    private static final int FEW_PARTS = 5;

    private FilmAcceptance() {}

    /** What a set of readings fails by. */
    public enum Fault {
        /** The mean lies below the nominal film. */
        MEAN_TOO_LOW,
        /** A reading lies below 80 % of the nominal film. */
        READING_TOO_LOW,
        /** A fifth of the readings or more lie between 80 % and 100 % of the nominal film. */
        TOO_MANY_LOW,
        /** A reading lies above the agreed most. */
        READING_TOO_HIGH
    }

    /**
     * Acceptance by ISO 19840:2012: mean not below nominal, no reading below 80 % of it, fewer than 20 % of the readings
     * between 80 % and 100 %, none above the agreed most. At exactly 20 % the sources at hand do not settle it; here it
     * fails.
     *
     * @param readings µm, at least one
     * @param nominal  specified film, µm
     * @param most     agreed most, µm; empty: none
     * @return what it fails by; empty when it passes
     * @throws IllegalArgumentException when there are no readings
     */
    public static Set<Fault> faults(Collection<BigDecimal> readings, BigDecimal nominal, Optional<BigDecimal> most) {
        Set<Fault> faults = EnumSet.noneOf(Fault.class);
        BigDecimal low = nominal.multiply(FOUR_FIFTHS);
        long below = readings.stream().filter(r -> r.compareTo(low) < 0).count();
        long between = readings.stream().filter(r -> r.compareTo(nominal) < 0).count() - below;
        add(faults, Fault.MEAN_TOO_LOW, mean(readings).compareTo(nominal) < 0);
        add(faults, Fault.READING_TOO_LOW, below > 0);
        add(faults, Fault.TOO_MANY_LOW, between * FEW_PARTS >= readings.size());
        add(
                faults,
                Fault.READING_TOO_HIGH,
                readings.stream()
                        .anyMatch(r -> most.filter(m -> r.compareTo(m) > 0).isPresent()));
        return faults;
    }

    private static void add(Set<Fault> faults, Fault fault, boolean holds) {
        if (holds) {
            faults.add(fault);
        }
    }

    /**
     * How far a spot may lie outside what was specified; the mean of an area never may. Source: SSPC-PA 2 (now AMPP),
     * table of restriction levels.
     */
    public enum Level {
        ONE("1", "1"),
        TWO("1", "1.2"),
        /** The usual one. */
        THREE("0.8", "1.2"),
        FOUR("0.8", "1.5"),
        FIVE("0.8", "");

        private final BigDecimal least;
        private final Optional<BigDecimal> most;

        Level(String least, String most) {
            this.least = new BigDecimal(least);
            this.most = most.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(most));
        }

        /** The least that a spot may have, in the unit of the specified least. */
        public BigDecimal leastSpot(BigDecimal specifiedLeast) {
            return specifiedLeast.multiply(least);
        }

        /** The most that a spot may have; empty: no limit. */
        public Optional<BigDecimal> mostSpot(BigDecimal specifiedMost) {
            return most.map(specifiedMost::multiply);
        }

        /**
         * Whether the spots of one area conform: each within the limits of this level, their mean as specified.
         *
         * @throws IllegalArgumentException when there are no spots
         */
        public boolean conforms(Collection<BigDecimal> spots, BigDecimal specifiedLeast, BigDecimal specifiedMost) {
            BigDecimal mean = mean(spots);
            return mean.compareTo(specifiedLeast) >= 0
                    && mean.compareTo(specifiedMost) <= 0
                    && spots.stream()
                            .allMatch(s -> s.compareTo(leastSpot(specifiedLeast)) >= 0
                                    && mostSpot(specifiedMost)
                                            .filter(m -> s.compareTo(m) > 0)
                                            .isEmpty());
        }
    }

    /** Mean to 16 digits. */
    static BigDecimal mean(Collection<BigDecimal> films) {
        if (films.isEmpty()) {
            throw new IllegalArgumentException("a coating is judged by at least one reading, got none");
        }
        return films.stream()
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(films.size()), MathContext.DECIMAL64);
    }
}
