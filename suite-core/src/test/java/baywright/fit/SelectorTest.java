package baywright.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SelectorTest {

    private static final long PLENTY = 1_000_000;

    private static int[] numbers(String text) {
        return Arrays.stream(text.trim().split(" +"))
                .mapToInt(Integer::parseInt)
                .toArray();
    }

    private static Item item(String id, int rank, long worth, long price) {
        return new Item(id, rank, BigDecimal.valueOf(worth), BigDecimal.valueOf(price));
    }

    private static String places(BitSet kept) {
        return kept.stream().mapToObj(i -> String.valueOf(i + 1)).collect(Collectors.joining(" "));
    }

    /**
     * P01 to P07 of the KNAPSACK_01 collection of test sets, J. Burkardt, Florida State University, which took them from
     * Martello, Toth, Knapsack Problems (1990), Kreher, Stinson, Combinatorial Algorithms (1999) and others: capacity,
     * weights, profits, the optimum, the items chosen (numbered from 1), their weight.
     */
    @ParameterizedTest
    @CsvSource({
        "165, 23 31 29 44 53 38 63 85 89 82, 92 57 49 68 60 43 67 84 87 72, 309, 1 2 3 4 6, 165",
        "26, 12 7 11 8 9, 24 13 23 15 16, 51, 2 3 4, 26",
        "190, 56 59 80 64 75 17, 50 50 64 46 50 5, 150, 1 2 5, 190",
        "50, 31 10 20 19 4 3 6, 70 20 39 37 7 5 10, 107, 1 4, 50",
        "104, 25 35 45 5 25 3 2 2, 350 400 450 20 70 8 5 5, 900, 1 3 4 5 7 8, 104",
        "170, 41 50 49 59 55 57 60, 442 525 511 593 546 564 617, 1735, 2 4 7, 169",
        "750, 70 73 77 80 82 87 90 94 98 106 110 113 115 118 120, "
                + "135 139 149 150 156 163 173 184 192 201 210 214 221 229 240, 1458, 1 3 5 7 8 9 14 15, 749"
    })
    void findsThePublishedOptima(
            int capacity, String weights, String profits, long optimum, String chosen, int weight) {
        int[] w = numbers(weights);
        int[] p = numbers(profits);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < w.length; i++) {
            items.add(item("i" + (i + 1), 0, p[i], w[i]));
        }

        Selection found =
                Selector.of(items, new Listed(items, List.of(), List.of()), BigDecimal.valueOf(capacity), 1, PLENTY);

        assertThat(found.proved()).isTrue();
        Choice best = found.choices().get(0);
        assertThat(places(best.kept())).isEqualTo(chosen);
        assertThat(best.worth().get(0)).isEqualByComparingTo(BigDecimal.valueOf(optimum));
        assertThat(best.price()).isEqualByComparingTo(BigDecimal.valueOf(weight));
    }

    /** Invented figures, optima by full enumeration: a step needs one of others, and two exclude each other. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, '', 0",
        "300, 77, wash decon clay glass wheels, 270",
        "450, 137, wash decon clay one-step glass wheels, 450",
        "500, 152, wash decon clay one-step interior wheels, 500",
        "600, 172, wash decon clay one-step coating, 560",
        "750, 222, wash decon clay one-step interior coating wheels, 740",
        "900, 247, wash decon clay two-step interior coating wheels, 880"
    })
    void keepsWhatOthersNeed(int cap, long worth, String chosen, int price) {
        List<Item> items = List.of(
                item("wash", 0, 10, 45),
                item("decon", 0, 14, 40),
                item("clay", 0, 18, 55),
                item("one-step", 0, 60, 180),
                item("two-step", 0, 85, 320),
                item("glass", 0, 15, 60),
                item("interior", 0, 30, 110),
                item("coating", 0, 70, 240),
                item("wheels", 0, 20, 70));
        Listed terms = new Listed(
                items,
                List.of(
                        new Listed.Link(1, Set.of(0)),
                        new Listed.Link(2, Set.of(1)),
                        new Listed.Link(3, Set.of(2)),
                        new Listed.Link(4, Set.of(2)),
                        new Listed.Link(5, Set.of(0)),
                        new Listed.Link(7, Set.of(3, 4)),
                        new Listed.Link(8, Set.of(0))),
                List.of(Set.of(3, 4)));

        Choice best = Selector.of(items, terms, BigDecimal.valueOf(cap), 1, PLENTY)
                .choices()
                .get(0);

        assertThat(best.kept().stream().mapToObj(i -> items.get(i).id()).collect(Collectors.joining(" ")))
                .isEqualTo(chosen);
        assertThat(best.worth().get(0)).isEqualByComparingTo(BigDecimal.valueOf(worth));
        assertThat(best.price()).isEqualByComparingTo(BigDecimal.valueOf(price));
    }

    /** Prices that do not add up: a fixed amount for each kind of item in use, as for getting out a family's tools. */
    private record Shared(List<Item> items, long fixed, Set<BitSet> broken) implements Terms {

        @Override
        public BigDecimal price(BitSet kept) {
            BigDecimal parts =
                    kept.stream().mapToObj(i -> items.get(i).least()).reduce(BigDecimal.ZERO, BigDecimal::add);
            long kinds = kept.stream().map(i -> i % 3).distinct().count();
            return parts.add(BigDecimal.valueOf(fixed * kinds));
        }

        @Override
        public BigDecimal floor(BitSet kept) {
            return price(kept);
        }

        @Override
        public boolean stands(BitSet kept) {
            return !broken.contains(kept);
        }
    }

    private static Shared random(int size, long seed) {
        Random random = new Random(seed);
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            items.add(item("i" + i, random.nextInt(2), random.nextInt(8), random.nextInt(12)));
        }
        Set<BitSet> broken =
                subsets(size).stream().filter(s -> random.nextInt(3) == 0).collect(Collectors.toSet());
        return new Shared(items, random.nextInt(6), broken);
    }

    private static List<BitSet> subsets(int size) {
        List<BitSet> all = new ArrayList<>();
        for (long bits = 0; bits < 1L << size; bits++) {
            all.add(BitSet.valueOf(new long[] {bits}));
        }
        return all;
    }

    private static BigDecimal worth(List<Item> items, BitSet kept, int rank) {
        return kept.stream()
                .mapToObj(items::get)
                .filter(i -> i.rank() == rank)
                .map(Item::worth)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static Comparator<BitSet> byWorth(Shared terms) {
        Comparator<BitSet> most = Comparator.comparing((BitSet s) -> worth(terms.items(), s, 0))
                .thenComparing(s -> worth(terms.items(), s, 1));
        return most.thenComparing(terms::price, Comparator.reverseOrder()).thenComparing(BitSet::cardinality);
    }

    private static boolean within(BitSet few, BitSet many) {
        BitSet rest = (BitSet) few.clone();
        rest.andNot(many);
        return rest.isEmpty();
    }

    /** Whatever can be and whatever prices share, the answers are those of looking at every subset. */
    @Property(tries = 300)
    void agreesWithLookingAtEverything(
            @ForAll @IntRange(max = 8) int size, @ForAll long seed, @ForAll @IntRange(max = 60) int capacity) {
        Shared terms = random(size, seed);
        BigDecimal cap = BigDecimal.valueOf(capacity);
        List<BitSet> standing = subsets(size).stream().filter(terms::stands).toList();
        List<BitSet> can = standing.stream()
                .filter(s -> terms.price(s).compareTo(cap) <= 0)
                .toList();

        Selection found = Selector.of(terms.items(), terms, cap, 3, PLENTY);

        assertThat(found.proved()).isTrue();
        List<BitSet> before = new ArrayList<>();
        for (Choice choice : found.choices()) {
            BitSet best = can.stream()
                    .filter(s -> before.stream().noneMatch(old -> within(s, old)))
                    .max(byWorth(terms))
                    .orElseThrow();
            assertThat(byWorth(terms).compare(choice.kept(), best)).isZero();
            assertThat(can).contains(choice.kept());
            assertThat(before).noneMatch(old -> within(choice.kept(), old));
            before.add(choice.kept());
        }
        if (found.choices().size() < 3) {
            assertThat(can).allMatch(s -> before.stream().anyMatch(old -> within(s, old)));
        }
        for (int i = 0; i < size; i++) {
            int place = i;
            Optional<BitSet> having = can.stream().filter(s -> s.get(place)).max(byWorth(terms));
            Optional<Choice> told = found.having().get(i);
            assertThat(told.isPresent()).isEqualTo(having.isPresent());
            if (told.isPresent()) {
                assertThat(told.get().kept().get(i)).isTrue();
                assertThat(byWorth(terms).compare(told.get().kept(), having.orElseThrow()))
                        .isZero();
            }
        }
        Optional<BigDecimal> least =
                can.isEmpty() ? standing.stream().map(terms::price).min(Comparator.naturalOrder()) : Optional.empty();
        assertThat(found.smallest()).isEqualTo(least);
    }

    /**
     * What is told of needs changes no answer: the same items with the needs told and with them only felt, by brute force both
     * times. Needs are drawn so that some fail by a need and some otherwise.
     */
    @Property(tries = 300)
    void whatIsToldOfNeedsOnlySavesTime(
            @ForAll @IntRange(min = 1, max = 9) int size, @ForAll long seed, @ForAll @IntRange(max = 60) int capacity) {
        Random random = new Random(seed);
        List<Terms.Need> needs = new ArrayList<>();
        for (int n = random.nextInt(5); n > 0; n--) {
            BitSet anyOf = new BitSet();
            for (int k = random.nextInt(3); k > 0; k--) {
                anyOf.set(random.nextInt(size));
            }
            needs.add(new Terms.Need(random.nextInt(size + 1) - 1, anyOf));
        }
        Shared loose = random(size, seed);
        Set<BitSet> broken = subsets(size).stream()
                .filter(s -> loose.broken().contains(s)
                        || needs.stream()
                                .anyMatch(n -> (n.item() < 0 || s.get(n.item()))
                                        && !n.anyOf().intersects(s)))
                .collect(Collectors.toSet());
        Shared felt = new Shared(loose.items(), loose.fixed(), broken);
        Terms told = new Told(felt, needs);
        BigDecimal cap = BigDecimal.valueOf(capacity);

        Selection with = Selector.of(loose.items(), told, cap, 3, PLENTY);
        Selection without = Selector.of(loose.items(), felt, cap, 3, PLENTY);

        assertThat(with.proved()).isTrue();
        assertThat(with.smallest()).isEqualTo(without.smallest());
        List<BitSet> can = subsets(size).stream()
                .filter(s -> felt.stands(s) && felt.price(s).compareTo(cap) <= 0)
                .toList();
        assertThat(with.choices().isEmpty()).isEqualTo(can.isEmpty());
        if (!can.isEmpty()) {
            BitSet best = can.stream().max(byWorth(felt)).orElseThrow();
            assertThat(byWorth(felt).compare(with.choices().get(0).kept(), best))
                    .isZero();
        }
        for (int i = 0; i < size; i++) {
            int place = i;
            Optional<BitSet> having = can.stream().filter(s -> s.get(place)).max(byWorth(felt));
            Optional<Choice> answer = with.having().get(i);
            assertThat(answer.isPresent()).isEqualTo(having.isPresent());
            answer.ifPresent(choice -> assertThat(byWorth(felt).compare(choice.kept(), having.orElseThrow()))
                    .isZero());
        }
    }

    private record Told(Shared felt, List<Need> needs) implements Terms {

        @Override
        public BigDecimal price(BitSet kept) {
            return felt.price(kept);
        }

        @Override
        public BigDecimal floor(BitSet kept) {
            return felt.floor(kept);
        }

        @Override
        public boolean stands(BitSet kept) {
            return felt.stands(kept);
        }
    }

    /** A chain of forty items of which each needs the one before: without the needs told, ten thousand branches do not do. */
    @Test
    void fortyItemsThatHangOnEachOtherAreProved() {
        List<Item> items = new ArrayList<>();
        List<Listed.Link> felt = new ArrayList<>();
        List<Terms.Need> needs = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            items.add(item("i" + i, 0, 40 + i, 10));
            if (i > 0) {
                felt.add(new Listed.Link(i, Set.of(i - 1)));
                BitSet before = new BitSet();
                before.set(i - 1);
                needs.add(new Terms.Need(i, before));
            }
        }
        Listed plain = new Listed(items, felt, List.of());
        Terms told = new Terms() {
            @Override
            public BigDecimal price(BitSet kept) {
                return plain.price(kept);
            }

            @Override
            public BigDecimal floor(BitSet kept) {
                return plain.floor(kept);
            }

            @Override
            public boolean stands(BitSet kept) {
                return plain.stands(kept);
            }

            @Override
            public List<Need> needs() {
                return needs;
            }
        };
        BigDecimal cap = BigDecimal.valueOf(205);
        Selection found = Selector.of(items, told, cap, 1, 10_000);
        assertThat(found.proved()).isTrue();
        assertThat(found.choices().get(0).kept().cardinality()).isEqualTo(20);
        assertThat(found.choices().get(0).kept().nextClearBit(0)).isEqualTo(20);
        assertThat(Selector.of(items, plain, cap, 1, 10_000).proved()).isFalse();
    }

    /** A larger cap is never worse. */
    @Property(tries = 100)
    void moreMoneyBuysNoLess(@ForAll @IntRange(max = 8) int size, @ForAll long seed) {
        Shared terms = random(size, seed);
        List<BigDecimal> before = null;
        for (int cap = 0; cap < 60; cap += 7) {
            Selection found = Selector.of(terms.items(), terms, BigDecimal.valueOf(cap), 1, PLENTY);
            assertThat(before == null || !found.choices().isEmpty()).isTrue();
            if (!found.choices().isEmpty() && size > 0) {
                List<BigDecimal> now = found.choices().get(0).worth();
                if (before != null) {
                    int by = now.get(0).compareTo(before.get(0));
                    boolean no = by > 0 || now.size() == 1 || now.get(1).compareTo(before.get(1)) >= 0;
                    assertThat(by >= 0 && no).as("%s after %s", now, before).isTrue();
                }
                before = now;
            }
        }
    }

    /** What was not looked at is not called proved. */
    @Test
    void saysWhenItGaveUp() {
        List<Item> items = List.of(item("a", 0, 1, 1), item("b", 0, 1, 1), item("c", 0, 1, 1));
        Listed terms = new Listed(items, List.of(), List.of());
        Selection gaveUp = Selector.of(items, terms, BigDecimal.valueOf(3), 1, 1);
        assertThat(gaveUp.proved()).isFalse();
        assertThat(gaveUp.choices().get(0).kept().cardinality()).isEqualTo(3);
        assertThat(Selector.of(items, terms, BigDecimal.ONE, 1, 1000).proved()).isTrue();
    }
}
