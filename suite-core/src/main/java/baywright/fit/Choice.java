package baywright.fit;

import java.math.BigDecimal;
import java.util.BitSet;
import java.util.List;

/**
 * What stays.
 *
 * @param kept  places of the items that stay
 * @param worth their worth by rank
 * @param price what they cost together, with all that stays in any case
 */
public record Choice(BitSet kept, List<BigDecimal> worth, BigDecimal price) {
    public Choice {
        kept = (BitSet) kept.clone();
        worth = List.copyOf(worth);
    }

    @Override
    public BitSet kept() {
        return (BitSet) kept.clone();
    }

    /** Whether no more stays here than there. */
    boolean isWithin(BitSet others) {
        BitSet rest = (BitSet) kept.clone();
        rest.andNot(others);
        return rest.isEmpty();
    }
}
