package baywright.money;

import baywright.plan.Step.Priority;
import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A line of the quote as the customer sees it. The nets of all positions add up to the quote's net.
 *
 * @param step     id of the step; empty for the set-up of a family or the rest of an opened pack
 * @param subject  id of the stage, the family or the item
 * @param priority priority of the step, or the highest that needs it
 * @param exactNet unrounded, without tax
 * @param net      in coins, without tax
 */
public record Position(Optional<String> step, String subject, Priority priority, BigDecimal exactNet, Money net) {}
