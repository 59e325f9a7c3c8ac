package baywright.fit;

import java.math.BigDecimal;
import java.util.BitSet;
import java.util.List;

/** What a choice costs and whether it can be. The bits are places of items in their list. */
public interface Terms {

    /** What these cost together, with all that stays in any case. */
    BigDecimal price(BitSet kept);

    /**
     * What these cost at least, whatever else is added to them and however it is rounded: what any more items cost together
     * with them is no less than this and the {@link Item#least} of those items.
     */
    BigDecimal floor(BitSet kept);

    /**
     * What is known of what cannot be, so that choices against it need not be looked at: no choice stands that keeps the item
     * and none of the others. There may be more that cannot be.
     */
    default List<Need> needs() {
        return List.of();
    }

    /**
     * An item that stays only with another.
     *
     * @param item  place of the item; below 0: whatever stays needs it
     * @param anyOf places of items of which one must stay
     */
    record Need(int item, BitSet anyOf) {
        public Need {
            anyOf = (BitSet) anyOf.clone();
        }

        @Override
        public BitSet anyOf() {
            return (BitSet) anyOf.clone();
        }

        boolean asks(BitSet kept) {
            return item < 0 || kept.get(item);
        }

        boolean isMetBy(BitSet others) {
            return anyOf.intersects(others);
        }
    }

    /** Whether these can be without the others. Asked only about choices that the price would allow. */
    boolean stands(BitSet kept);
}
