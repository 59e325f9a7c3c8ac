package baywright.plan;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;

/**
 * Edits that together leave a plan without a stop (without those that no edit mends).
 *
 * @param edits     to be applied in this order
 * @param plan      the plan with them
 * @param addedCost what the plan costs more (or less) than before: money where the search was given a price, else
 *                  attended minutes
 */
public record Repair(List<Edit> edits, Plan plan, BigDecimal addedCost) {

    public Repair {
        edits = List.copyOf(edits);
        Objects.requireNonNull(plan, "plan");
    }

    /**
     * How long to search and what counts.
     *
     * @param time         longest time
     * @param variants     most variants of the plan that are walked
     * @param edits        most edits of a repair, 1 to 20
     * @param alternatives how many repairs to give, from 1
     * @param cancelled    asked now and then; true stops the search
     * @param price        price of a plan in one currency; empty: attended minutes count
     */
    public record Options(
            Duration time,
            int variants,
            int edits,
            int alternatives,
            BooleanSupplier cancelled,
            Optional<Function<Plan, BigDecimal>> price) {

        /** Two seconds, eight edits, three repairs, cost in attended minutes. */
        public static final Options USUAL =
                new Options(Duration.ofSeconds(2), 200_000, 8, 3, () -> false, Optional.empty());

        public Options {
            if (time.isNegative() || variants < 1 || edits < 1 || edits > 20 || alternatives < 1) {
                throw new IllegalArgumentException(
                        "a search needs a time from 0, variants and alternatives from 1 and edits from 1 to 20, got "
                                + time + ", " + variants + ", " + alternatives + ", " + edits);
            }
        }

        public Options within(Duration longest) {
            return new Options(longest, variants, edits, alternatives, cancelled, price);
        }

        public Options cancelledBy(BooleanSupplier cancel) {
            return new Options(time, variants, edits, alternatives, cancel, price);
        }

        public Options pricedBy(Function<Plan, BigDecimal> how) {
            return new Options(time, variants, edits, alternatives, cancelled, Optional.of(how));
        }
    }

    /**
     * Looks for the smallest sets of edits that leave no stop. Work that must be done is left out only when nothing else
     * is found; among repairs of one size those come first that leave out least, then those that cost least.
     */
    public static RepairResult find(Setting setting, Plan plan, Options options) {
        return new RepairSearch(Prover.forSetting(setting), plan, options).run();
    }
}
