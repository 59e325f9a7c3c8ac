package baywright.fit;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * The answer to a cap.
 *
 * @param choices  the best first, then the next best of which none stays within one before it; none: the cap is too low
 * @param having   by item: the best choice in which it stays; empty when there is none under the cap
 * @param smallest where the cap is too low, the price of the cheapest choice that can be; empty: none can be at any price
 * @param proved   whether all choices were looked at or ruled out
 */
public record Selection(
        List<Choice> choices, List<Optional<Choice>> having, Optional<BigDecimal> smallest, boolean proved) {
    public Selection {
        choices = List.copyOf(choices);
        having = List.copyOf(having);
    }
}
