package baywright.money;

import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The steps of one priority.
 *
 * @param priority which
 * @param minutes  attended minutes with set-ups that come on top of the priorities before
 * @param alone    what it adds to the price
 * @param upTo     the price of this priority and those before it, with its range
 * @param cap      the price up to here against the customer's cap
 * @param capHigh  the high end up to here against the customer's cap
 */
public record Part(
        Priority priority,
        BigDecimal minutes,
        Price alone,
        Range upTo,
        Optional<CapFit> cap,
        Optional<CapFit> capHigh) {}
