package baywright.vehicle;

import java.math.BigDecimal;

/**
 * How many readings a zone should have before its paint is worked on. The usual counts are common practice, no source;
 * from which area a panel is a large one is from memory.
 *
 * @param small     on a zone that does not count as a panel, such as a pillar or a sill; fewer than this say nothing
 * @param panel     on a panel, not fewer than {@code small}
 * @param large     on a large panel, not fewer than {@code panel}
 * @param largeFrom m² from which a panel is a large one, above 0
 */
public record ReadingCounts(int small, int panel, int large, BigDecimal largeFrom) {

    /** 3, 5, and 9 from 1.3 m². */
    public static final ReadingCounts USUAL = new ReadingCounts(3, 5, 9, new BigDecimal("1.3"));

    public ReadingCounts {
        if (small < 1 || panel < small || large < panel || largeFrom.signum() <= 0) {
            throw new IllegalArgumentException(
                    "reading counts need 1 <= small <= panel <= large and an area above 0, got " + small + ", " + panel
                            + ", " + large + " and " + largeFrom.toPlainString());
        }
    }

    /** How many a zone should have, by its measures {@code panel} and {@code m2}. */
    public int wanted(Zone zone) {
        BigDecimal panels = zone.measures().getOrDefault("panel", BigDecimal.ZERO);
        BigDecimal area = zone.measures().getOrDefault("m2", BigDecimal.ZERO);
        if (panels.signum() == 0) {
            return small;
        }
        return area.compareTo(largeFrom) < 0 ? panel : large;
    }
}
