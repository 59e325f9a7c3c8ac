package baywright.plan;

import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Map;

/**
 * What work costs, for whoever looks for the cheapest: so much a minute, so much for an amount of an item, and so much
 * for opening a pack that is charged whole.
 */
public interface Costing {

    /** Attended minutes, set-ups included, and nothing for materials. */
    Costing MINUTES = new Costing() {
        @Override
        public BigDecimal minute() {
            return BigDecimal.ONE;
        }

        @Override
        public BigDecimal amount(String item, Quantity amount) {
            return BigDecimal.ZERO;
        }

        @Override
        public Map<String, BigDecimal> opened() {
            return Map.of();
        }

        @Override
        public BigDecimal of(PlanWork work) {
            return work.attendedMinutes().mean();
        }
    };

    /** What an attended minute costs, not negative. */
    BigDecimal minute();

    /** What an amount of an item costs, not negative; nothing for an item of {@link #opened}. */
    BigDecimal amount(String item, Quantity amount);

    /** What a pack costs, by item, for those items of which opened packs are charged whole. */
    Map<String, BigDecimal> opened();

    /**
     * What all of it costs. Never less than its minutes, its amounts and one pack of every item of {@link #opened} that it
     * uses.
     */
    BigDecimal of(PlanWork work);
}
