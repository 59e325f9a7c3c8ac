package baywright.money;

import java.math.BigDecimal;

/**
 * What the customer may have to pay. Contingency is no line of the price; it is the distance between the ends.
 *
 * @param low                the price
 * @param high               the price with the contingency on labour
 * @param contingencyPercent of labour: the shop's for how well the paint is known, or what its confidence asks for
 */
public record Range(Price low, Price high, BigDecimal contingencyPercent) {}
