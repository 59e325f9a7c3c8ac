package baywright.fit;

import java.math.BigDecimal;
import java.util.BitSet;

/** What a choice costs and whether it can be. The bits are places of items in their list. */
public interface Terms {

    /** What these cost together, with all that stays in any case. */
    BigDecimal price(BitSet kept);

    /**
     * What these cost at least, whatever else is added to them and however it is rounded: what any more items cost together
     * with them is no less than this and the {@link Item#least} of those items.
     */
    BigDecimal floor(BitSet kept);

    /** Whether these can be without the others. Asked only about choices that the price would allow. */
    boolean stands(BitSet kept);
}
