package baywright.money;

import baywright.plan.Trail;
import baywright.quantity.Quantity;
import baywright.script.Place;
import java.math.BigDecimal;
import java.util.List;

/** Where a number of a ledger line comes from. A line's trail is a list of these, from the work to the till. */
public sealed interface Origin {

    /** A line of a stage's script with the driver, inputs, surveyed facts and job factors that went into it. */
    record Work(Trail trail) implements Origin {}

    /** The set-up of a family of stages, and the steps that use it. */
    record FamilySetUp(String family, Place place, List<String> steps) implements Origin {
        public FamilySetUp {
            steps = List.copyOf(steps);
        }
    }

    /** An entry of the price list: what a pack holds and costs. */
    record Pack(String item, Quantity pack, BigDecimal price) implements Origin {}

    /** A field of the shop's or the job's terms, such as {@code rates.charge.detailing}, with its value. */
    record Term(String field, BigDecimal value) implements Origin {}

    /** Other lines of the same step or job that this one sums up or is a share of. */
    record Lines(List<LineKind> kinds, BigDecimal sum) implements Origin {
        public Lines {
            kinds = List.copyOf(kinds);
        }

        static Lines of(BigDecimal sum, LineKind... kinds) {
            return new Lines(List.of(kinds), sum);
        }
    }
}
