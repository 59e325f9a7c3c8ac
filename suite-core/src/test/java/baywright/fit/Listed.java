package baywright.fit;

import java.math.BigDecimal;
import java.util.BitSet;
import java.util.List;
import java.util.Set;

/**
 * Items with prices that add up.
 *
 * @param items their least is their price
 * @param links an item with those of which it needs one
 * @param apart items of which one excludes the other
 */
record Listed(List<Item> items, List<Link> links, List<Set<Integer>> apart) implements Terms {

    record Link(int item, Set<Integer> anyOf) {}

    @Override
    public BigDecimal price(BitSet kept) {
        return kept.stream().mapToObj(i -> items.get(i).least()).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    @Override
    public BigDecimal floor(BitSet kept) {
        return price(kept);
    }

    @Override
    public boolean stands(BitSet kept) {
        return links.stream()
                        .allMatch(n -> !kept.get(n.item()) || n.anyOf().stream().anyMatch(kept::get))
                && apart.stream().noneMatch(two -> two.stream().allMatch(kept::get));
    }
}
