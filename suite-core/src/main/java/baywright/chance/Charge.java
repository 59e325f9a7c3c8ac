package baywright.chance;

import baywright.quantity.ThreePoint;

/**
 * A cost that takes no time of its own, such as an item of which more or less may be used.
 *
 * @param id       unique among the charges
 * @param amount   what it costs
 * @param loadings what it shares its ups and downs with
 */
public record Charge(String id, ThreePoint amount, Loadings loadings) {}
