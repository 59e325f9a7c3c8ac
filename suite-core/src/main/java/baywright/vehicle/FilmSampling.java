package baywright.vehicle;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * How many readings published plans ask for on an area of coating. They are made for steelwork; a vehicle is one to
 * three of their areas, and readings panel by panel are the shop's own, finer plan.
 */
public final class FilmSampling {

    private static final BigDecimal TEN = BigDecimal.TEN;
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int[][] READINGS_TO = {{1, 5}, {3, 10}, {10, 15}, {30, 20}, {100, 30}};

    private FilmSampling() {}

    /**
     * Areas of about ten square metres with five spots of three readings each.
     *
     * @param areas how many areas
     */
    public record Spots(int areas) {

        public int spots() {
            return areas * 5;
        }

        public int readings() {
            return spots() * 3;
        }
    }

    /**
     * Areas to measure: up to 30 m² each ten; to 100 m² three; above, one more for each further 100 m² or part. Source:
     * SSPC-PA 2 (now AMPP), sections on measurement.
     *
     * @param squareMetres above 0
     * @throws IllegalArgumentException when it is not above 0
     */
    public static Spots spots(BigDecimal squareMetres) {
        refuseNothing(squareMetres);
        if (squareMetres.compareTo(HUNDRED) <= 0) {
            return new Spots(Math.min(3, parts(squareMetres, TEN)));
        }
        return new Spots(2 + parts(squareMetres, HUNDRED));
    }

    /**
     * Readings on an area: to 1 m² 5, to 3 m² 10, to 10 m² 15, to 30 m² 20, to 100 m² 30, each further 100 m² or part 10
     * more. Source: ISO 19840:2012, table of readings.
     *
     * @param squareMetres above 0
     * @throws IllegalArgumentException when it is not above 0
     */
    public static int readings(BigDecimal squareMetres) {
        refuseNothing(squareMetres);
        for (int[] row : READINGS_TO) {
            if (squareMetres.compareTo(BigDecimal.valueOf(row[0])) <= 0) {
                return row[1];
            }
        }
        return 20 + 10 * parts(squareMetres, HUNDRED);
    }

    private static int parts(BigDecimal whole, BigDecimal part) {
        return whole.divide(part, 0, RoundingMode.CEILING).intValueExact();
    }

    private static void refuseNothing(BigDecimal squareMetres) {
        if (squareMetres.signum() <= 0) {
            throw new IllegalArgumentException(
                    "an area to measure must be above 0 m2, got " + squareMetres.toPlainString());
        }
    }
}
