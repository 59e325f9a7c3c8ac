package baywright.plan;

import baywright.plan.CompiledTerms.Change;
import baywright.plan.CompiledTerms.Condition;
import baywright.plan.ComposeDomain.Action;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.ToLongFunction;

/** The cheapest row of actions that brings zones which are alike from what was found to what is wanted. */
final class ComposeSearch {

    /** A cheapest row of actions and what it costs in the measure that it was sought with. */
    record Path(List<Action> actions, long cost) {}

    /** What holds, and what was paid once already. */
    private static final class Key {
        private final long[] states;
        private final long out;

        Key(long[] states, long out) {
            this.states = states;
            this.out = out;
        }

        long[] states() {
            return states;
        }

        long out() {
            return out;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && out == key.out && Arrays.equals(states, key.states);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(states) * 31 + Long.hashCode(out);
        }
    }

    private record Node(Key key, long cost, int length, Action by, Node from) {}

    private final ComposeDomain domain;
    private final StateIndex states;
    private final long[] start;
    private final long[] work;
    private final long[] goal;
    private final int most;
    private boolean gaveUp;

    /**
     * Sets out.
     *
     * @param work    wanted states that come of the work on the zones
     * @param closing wanted states that close the job; what only serves them is done when the work is
     * @param given   states that other zones' work sees to
     * @param most    most states to look at
     */
    ComposeSearch(ComposeDomain domain, StateIndex states, long[] work, long[] closing, long[] given, int most) {
        this.domain = domain;
        this.states = states;
        this.work = work;
        goal = work.clone();
        ComposeDomain.add(goal, closing);
        this.most = most;
        start = domain.start.clone();
        ComposeDomain.add(start, given);
    }

    /**
     * Looks for the cheapest row of actions.
     *
     * @param cost   what an action costs
     * @param setUps what is paid once with the first action that brings it with it, such as getting a family's tools out;
     *               what is missing costs nothing
     * @return empty when the wanted states cannot be reached, or too many were looked at
     */
    Optional<Path> cheapest(ToLongFunction<Action> cost, Map<String, Long> setUps) {
        List<String> onces = setUps.keySet().stream().sorted().limit(Long.SIZE).toList();
        long[] prices = onces.stream().mapToLong(setUps::get).toArray();
        long[] wanted = new long[goal.length];
        long[] unwanted = new long[goal.length];
        Set<Action> working = new HashSet<>(relevant(work, new long[goal.length], new long[goal.length]));
        List<Action> useful = relevant(goal, wanted, unwanted);
        Map<Action, Long> brings = new HashMap<>();
        useful.forEach(a -> brings.put(a, mask(a, onces)));
        // a state to look at is only what some useful action or the goal asks for
        long[] mask = wanted.clone();
        ComposeDomain.add(mask, unwanted);
        PriorityQueue<Node> queue = new PriorityQueue<>((a, b) ->
                a.cost() != b.cost() ? Long.compare(a.cost(), b.cost()) : Integer.compare(a.length(), b.length()));
        Map<Key, Long> best = new HashMap<>();
        Key first = new Key(masked(start, mask), 0);
        queue.add(new Node(first, 0, 0, null, null));
        best.put(first, 0L);
        int looked = 0;
        while (!queue.isEmpty() && looked++ < most) {
            Node node = queue.poll();
            if (node.cost() > best.get(node.key())) {
                continue;
            }
            if (Bits.contains(node.key().states(), goal)) {
                return Optional.of(path(node));
            }
            boolean closes = Bits.contains(node.key().states(), work);
            for (Action action : useful) {
                if (!closes && !working.contains(action)) {
                    continue;
                }
                long[] after = domain.after(node.key().states(), action);
                if (after == null || Arrays.equals(after, node.key().states())) {
                    continue;
                }
                long out = node.key().out() | brings.get(action);
                Key key = new Key(masked(after, mask), out);
                long setUp = price(out & ~node.key().out(), prices);
                long reached = node.cost() + setUp + cost.applyAsLong(action);
                Long known = best.get(key);
                if (known == null || reached < known) {
                    best.put(key, reached);
                    queue.add(new Node(key, reached, node.length() + 1, action, node));
                }
            }
        }
        gaveUp = !queue.isEmpty();
        return Optional.empty();
    }

    /** Whether the last search ended because too many states were looked at. */
    boolean gaveUp() {
        return gaveUp;
    }

    private static long mask(Action action, List<String> onces) {
        long mask = 0;
        for (String once : action.onces) {
            int bit = onces.indexOf(once);
            mask |= bit < 0 ? 0 : 1L << bit;
        }
        return mask;
    }

    private static long price(long fresh, long[] prices) {
        long price = 0;
        for (long left = fresh; left != 0; left &= left - 1) {
            price += prices[Long.numberOfTrailingZeros(left)];
        }
        return price;
    }

    private static Path path(Node end) {
        List<Action> actions = new ArrayList<>();
        for (Node node = end; node.by() != null; node = node.from()) {
            actions.add(node.by());
        }
        Collections.reverse(actions);
        return new Path(actions, end.cost());
    }

    private static long[] masked(long[] found, long[] mask) {
        long[] kept = found.clone();
        for (int w = 0; w < kept.length; w++) {
            kept[w] &= mask[w];
        }
        return kept;
    }

    /** Actions that make something wanted or end something unwanted, and what those want in turn. */
    private List<Action> relevant(long[] aim, long[] wanted, long[] unwanted) {
        ComposeDomain.add(wanted, aim);
        List<Action> useful = new ArrayList<>();
        List<Action> left = new ArrayList<>(domain.actions);
        boolean more = true;
        while (more) {
            more = false;
            for (Action action : List.copyOf(left)) {
                if (serves(action, wanted, unwanted)) {
                    left.remove(action);
                    useful.add(action);
                    more = true;
                    for (Condition condition : domain.conditions(action)) {
                        long[] into = condition.need().absent() ? unwanted : wanted;
                        condition.alternatives().forEach(a -> ComposeDomain.add(into, a));
                    }
                }
            }
        }
        return useful;
    }

    private boolean serves(Action action, long[] wanted, long[] unwanted) {
        for (Change change : action.terms.sets) {
            if (Bits.meet(states.brings(change.state()), wanted) || Bits.meet(states.ends(change.state()), unwanted)) {
                return true;
            }
        }
        return action.terms.clears.stream().anyMatch(c -> Bits.meet(states.clears(c.state()), unwanted));
    }
}
