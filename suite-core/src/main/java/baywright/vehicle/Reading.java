package baywright.vehicle;

import java.math.BigDecimal;

/**
 * One film reading.
 *
 * @param micrometres total film, above zero
 * @param source      where it was recorded, for the trail: {@code readings.csv:14}
 */
public record Reading(BigDecimal micrometres, String source) {}
