package baywright.share;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * The order of what two sides have made of a list. What is new stays behind what it stands behind on its side. Where both sides put the
 * same things in another order, one of the two orders is taken, whichever side it is of: order says nothing in the language.
 */
final class Sequence {

    private static final String START = "";

    private final List<String> base;
    private final UnaryOperator<String> text;

    private Sequence(List<String> base, UnaryOperator<String> text) {
        this.base = base;
        this.text = text;
    }

    /**
     * All ids of the three lists in one order; each list holds each id once.
     *
     * @param text decides what comes first of what both sides put at the same place
     */
    static List<String> of(List<String> base, List<String> ours, List<String> theirs, UnaryOperator<String> text) {
        return new Sequence(base, text).merge(ours, theirs);
    }

    private List<String> merge(List<String> ours, List<String> theirs) {
        List<String> anchors = new ArrayList<>(List.of(START));
        anchors.addAll(spine(isMoved(ours) && (!isMoved(theirs) || isFirst(ours, theirs)) ? ours : theirs));
        Map<String, List<String>> ourNew = added(ours);
        Map<String, List<String>> theirNew = added(theirs);
        Set<String> merged = new LinkedHashSet<>();
        for (String anchor : anchors) {
            merged.add(anchor);
            weave(ourNew.getOrDefault(anchor, List.of()), theirNew.getOrDefault(anchor, List.of()), merged);
        }
        merged.remove(START);
        return List.copyOf(merged);
    }

    private boolean isMoved(List<String> side) {
        return !kept(side, base).equals(kept(base, side));
    }

    private boolean isFirst(List<String> ours, List<String> theirs) {
        return String.join("\n", kept(ours, base)).compareTo(String.join("\n", kept(theirs, base))) <= 0;
    }

    private static List<String> kept(List<String> all, List<String> of) {
        Set<String> wanted = new HashSet<>(of);
        return all.stream().filter(wanted::contains).toList();
    }

    /** What was there before in the order of a side; what the side has taken out stands behind what it stood behind. */
    private List<String> spine(List<String> side) {
        List<String> spine = new ArrayList<>(kept(side, base));
        Set<String> there = new HashSet<>(spine);
        for (int i = 0; i < base.size(); i++) {
            if (there.add(base.get(i))) {
                spine.add(i == 0 ? 0 : spine.indexOf(base.get(i - 1)) + 1, base.get(i));
            }
        }
        return spine;
    }

    private Map<String, List<String>> added(List<String> side) {
        Set<String> old = new HashSet<>(base);
        Map<String, List<String>> added = new HashMap<>();
        String anchor = START;
        for (String id : side) {
            if (old.contains(id)) {
                anchor = id;
            } else {
                added.computeIfAbsent(anchor, a -> new ArrayList<>()).add(id);
            }
        }
        return added;
    }

    /** What both have parts the rest into runs; of two runs at one place the one that begins with the lesser text comes first. */
    private void weave(List<String> ours, List<String> theirs, Set<String> merged) {
        int our = 0;
        int their = 0;
        while (our < ours.size() || their < theirs.size()) {
            int ourEnd = our;
            while (ourEnd < ours.size() && theirs.subList(their, theirs.size()).indexOf(ours.get(ourEnd)) < 0) {
                ourEnd++;
            }
            int theirEnd = ourEnd < ours.size() ? theirs.indexOf(ours.get(ourEnd)) : theirs.size();
            List<String> one = ours.subList(our, ourEnd);
            List<String> other = theirs.subList(their, theirEnd);
            boolean oursFirst =
                    one.isEmpty() || other.isEmpty() || text.apply(one.get(0)).compareTo(text.apply(other.get(0))) <= 0;
            merged.addAll(oursFirst ? one : other);
            merged.addAll(oursFirst ? other : one);
            if (ourEnd < ours.size()) {
                merged.add(ours.get(ourEnd));
            }
            our = ourEnd + 1;
            their = theirEnd + 1;
        }
    }
}
