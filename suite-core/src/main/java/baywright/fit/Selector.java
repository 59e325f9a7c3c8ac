package baywright.fit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses what stays under a cap: as much as can be of what is wanted most, then of what is wanted less; of choices that are
 * worth the same the cheaper, then the one in which more stays. Branch and bound: items are taken in or left out one after
 * the other, the worthiest first. A branch is cut when it costs too much whatever else is left out, or when even the rest of
 * the money, spent on parts of items, brings no more than what is known already. What can be is asked only of whole
 * choices, for leaving out one more can both break a choice and mend it; so the answer is exact for any such condition.
 * What is known to need each other is taken in and left out together, as by unit propagation of clauses.
 */
public final class Selector {

    /** Keeps bounds reckoned in binary fractions on the safe side. */
    private static final double MARGIN = 1e-9;

    private final List<Item> items;
    private final Terms terms;
    private final List<Terms.Need> needs;
    private final int ranks;
    private final Map<BitSet, BigDecimal> prices = new HashMap<>();
    private final Map<BitSet, BigDecimal> floors = new HashMap<>();
    private final Map<BitSet, Boolean> standing = new HashMap<>();
    private long left;

    private Selector(List<Item> items, Terms terms, long most) {
        this.items = List.copyOf(items);
        this.terms = terms;
        needs = List.copyOf(terms.needs());
        left = most;
        ranks = items.stream().mapToInt(Item::rank).max().orElse(-1) + 1;
    }

    /**
     * The best choice under a cap and the next best.
     *
     * @param cap     the most that a choice may cost
     * @param choices how many choices at most, from 1
     * @param most    how many branches to look at; beyond them the answer is not proved
     */
    public static Selection of(List<Item> items, Terms terms, BigDecimal cap, int choices, long most) {
        if (choices < 1 || most < 1) {
            throw new IllegalArgumentException("choices and most must be 1 or more, got " + choices + " and " + most);
        }
        return new Selector(items, terms, most).select(cap, choices);
    }

    private Selection select(BigDecimal cap, int choices) {
        List<Choice> found = new ArrayList<>();
        Optional<Choice> next = new Dive(cap, found, new BitSet()).best();
        while (next.isPresent()) {
            found.add(next.get());
            next = found.size() < choices ? new Dive(cap, found, new BitSet()).best() : Optional.empty();
        }
        Optional<BigDecimal> smallest =
                found.isEmpty() ? new Dive(null, List.of(), new BitSet()).best().map(Choice::price) : Optional.empty();
        List<Optional<Choice>> having = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            having.add(found.isEmpty() ? Optional.empty() : having(i, cap, found.get(0)));
        }
        return new Selection(found, having, smallest, left >= 0);
    }

    private Optional<Choice> having(int item, BigDecimal cap, Choice best) {
        if (best.kept().get(item)) {
            return Optional.of(best);
        }
        BitSet needed = new BitSet();
        needed.set(item);
        return new Dive(cap, List.of(), needed).best();
    }

    /** What is still to be decided, the worthiest first. */
    private List<Integer> order(BitSet decided) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            if (!decided.get(i)) {
                order.add(i);
            }
        }
        order.sort(Comparator.comparing((Integer i) -> items.get(i).rank())
                .thenComparing(i -> items.get(i).worth(), Comparator.reverseOrder()));
        return order;
    }

    /** One search: the worthiest under the cap, or the cheapest without one. */
    private final class Dive {
        private final BigDecimal cap;
        private final List<Choice> before;
        private final BitSet needed;
        private final List<Integer> order;
        private final boolean cheapest;
        private Choice best;

        Dive(BigDecimal cap, List<Choice> before, BitSet needed) {
            this.cap = cap;
            this.before = before;
            this.needed = needed;
            order = order(needed);
            cheapest = cap == null;
        }

        /** Begins with all up to each rank, so that a search which gives up has looked at those at least. */
        Optional<Choice> best() {
            for (int first = 0; first <= ranks; first++) {
                BitSet wanted = (BitSet) needed.clone();
                for (int i = 0; i < items.size(); i++) {
                    if (items.get(i).rank() < first) {
                        wanted.set(i);
                    }
                }
                withWhatIsNeeded(wanted);
                if (!isOld(wanted)) {
                    whole(wanted);
                }
            }
            BitSet may = new BitSet();
            may.set(0, items.size());
            down(0, needed, may, BigDecimal.ZERO);
            return Optional.ofNullable(best);
        }

        /** Takes in the first of those that are needed and missing, until none is. */
        private void withWhatIsNeeded(BitSet wanted) {
            boolean more = true;
            while (more) {
                more = false;
                for (Terms.Need need : needs) {
                    if (need.asks(wanted)
                            && !need.isMetBy(wanted)
                            && !need.anyOf().isEmpty()) {
                        wanted.set(need.anyOf().nextSetBit(0));
                        more = true;
                    }
                }
            }
        }

        /**
         * A branch: items that stay, and those that may.
         *
         * @param sure a price that nothing in it is below, as known before
         */
        private void down(int depth, BitSet stays, BitSet stillMay, BigDecimal sure) {
            BitSet kept = (BitSet) stays.clone();
            BitSet may = (BitSet) stillMay.clone();
            if (left < 0 || --left < 0 || !settled(kept, may) || isOld(may)) {
                return;
            }
            BigDecimal floor = sure.add(added(stays, kept));
            if (isHopeless(kept, may, floor)) {
                return;
            }
            floor = floor.max(floors.computeIfAbsent(kept, terms::floor));
            if (isHopeless(kept, may, floor)) {
                return;
            }
            int next = depth;
            while (next < order.size() && kept.get(order.get(next)) == may.get(order.get(next))) {
                next++;
            }
            if (next == order.size()) {
                whole(kept);
                return;
            }
            int item = order.get(next);
            BitSet with = (BitSet) kept.clone();
            with.set(item);
            BitSet without = (BitSet) may.clone();
            without.clear(item);
            BigDecimal more = floor.add(items.get(item).least());
            if (cheapest) {
                down(next + 1, kept, without, floor);
                down(next + 1, with, may, more);
            } else {
                down(next + 1, with, may, more);
                down(next + 1, kept, without, floor);
            }
        }

        /** What those that stay now and did not before add at least. */
        private BigDecimal added(BitSet before, BitSet now) {
            BitSet fresh = (BitSet) now.clone();
            fresh.andNot(before);
            return fresh.stream().mapToObj(i -> items.get(i).least()).reduce(BigDecimal.ZERO, BigDecimal::add);
        }

        /** Takes in and leaves out what follows from the needs; false when they contradict each other. */
        private boolean settled(BitSet kept, BitSet may) {
            boolean more = true;
            while (more) {
                more = false;
                for (Terms.Need need : needs) {
                    BitSet open = need.anyOf();
                    open.and(may);
                    if (open.isEmpty()) {
                        if (need.asks(kept)) {
                            return false;
                        }
                        more |= may.get(need.item());
                        may.clear(need.item());
                    } else if (open.cardinality() == 1 && need.asks(kept) && !kept.get(open.nextSetBit(0))) {
                        kept.or(open);
                        more = true;
                    }
                }
            }
            return true;
        }

        /** Whether all that can still come stays within a choice that is known. */
        private boolean isOld(BitSet may) {
            Choice utmost = new Choice(may, List.of(), BigDecimal.ZERO);
            return before.stream().anyMatch(old -> utmost.isWithin(old.kept()));
        }

        private boolean isHopeless(BitSet kept, BitSet may, BigDecimal floor) {
            if (cheapest) {
                return best != null && floor.compareTo(best.price()) >= 0;
            }
            return floor.compareTo(cap) > 0 || (best != null && isWorthLess(kept, may, cap.subtract(floor)));
        }

        /** Whether the worth of a branch, bounded rank by rank, stays below that of the best. */
        private boolean isWorthLess(BitSet kept, BitSet may, BigDecimal money) {
            List<BigDecimal> sure = worth(kept);
            for (int rank = 0; rank < ranks; rank++) {
                double known = best.worth().get(rank).doubleValue();
                double bound = sure.get(rank).doubleValue() + parts(kept, may, rank, money.doubleValue());
                double safe = MARGIN * (1 + Math.abs(known));
                if (bound < known - safe) {
                    return true;
                }
                if (bound > known + safe) {
                    return false;
                }
            }
            return false;
        }

        /** What the items of a rank that are still to come are worth at most for so much money, parts of items allowed. */
        private double parts(BitSet kept, BitSet may, int rank, double money) {
            List<Item> open = order.stream()
                    .filter(i -> may.get(i) && !kept.get(i))
                    .map(items::get)
                    .filter(item -> item.rank() == rank)
                    .sorted(Comparator.comparingDouble(item ->
                            item.least().doubleValue() / Math.max(item.worth().doubleValue(), Double.MIN_NORMAL)))
                    .toList();
            double rest = money;
            double worth = 0;
            for (Item item : open) {
                double least = item.least().doubleValue();
                double part = least <= rest ? 1 : rest / least;
                worth += part * item.worth().doubleValue();
                rest -= part * least;
            }
            return worth;
        }

        private void whole(BitSet kept) {
            BigDecimal price = prices.computeIfAbsent((BitSet) kept.clone(), terms::price);
            Choice choice = new Choice(kept, worth(kept), price);
            boolean wanted = best == null || (cheapest ? price.compareTo(best.price()) < 0 : isBetter(choice));
            boolean allowed = cheapest || price.compareTo(cap) <= 0;
            if (wanted && allowed && standing.computeIfAbsent((BitSet) kept.clone(), terms::stands)) {
                best = choice;
            }
        }

        private boolean isBetter(Choice choice) {
            for (int rank = 0; rank < ranks; rank++) {
                int by = choice.worth().get(rank).compareTo(best.worth().get(rank));
                if (by != 0) {
                    return by > 0;
                }
            }
            int dearer = choice.price().compareTo(best.price());
            return dearer < 0
                    || (dearer == 0 && choice.kept().cardinality() > best.kept().cardinality());
        }
    }

    private List<BigDecimal> worth(BitSet kept) {
        List<BigDecimal> sums = new ArrayList<>();
        for (int rank = 0; rank < ranks; rank++) {
            int of = rank;
            sums.add(kept.stream()
                    .mapToObj(items::get)
                    .filter(item -> item.rank() == of)
                    .map(Item::worth)
                    .reduce(BigDecimal.ZERO, BigDecimal::add));
        }
        return sums;
    }
}
