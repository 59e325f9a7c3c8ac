package baywright.editor;

import baywright.script.Nearest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Orders proposals: those that begin as the author began, then those with a part that does, then near misses. */
final class Ranking {

    private static final int NEAR = 10;
    private static final int NOT = 100;

    /** A proposal with how far it is from what was begun. */
    private record Ranked(Proposal proposal, int distance, int order) {}

    private final String begun;
    private final Map<String, Ranked> all = new LinkedHashMap<>();

    Ranking(String begun) {
        this.begun = begun.toLowerCase(Locale.ROOT);
    }

    void add(Proposal proposal) {
        add(proposal, distance(proposal.label().toLowerCase(Locale.ROOT)));
    }

    /** Takes a proposal that comes behind what was begun instead of in its place. */
    void addBehind(Proposal proposal) {
        add(proposal, NEAR);
    }

    private void add(Proposal proposal, int distance) {
        if (distance < NOT) {
            all.putIfAbsent(proposal.edit().with() + " " + proposal.kind(), new Ranked(proposal, distance, all.size()));
        }
    }

    private int distance(String label) {
        if (label.startsWith(begun)) {
            return 0;
        }
        if (label.contains("-" + begun) || label.contains("'" + begun)) {
            return 1;
        }
        if (begun.length() >= 2 && label.contains(begun)) {
            return 2;
        }
        if (begun.length() < 3) {
            return NOT;
        }
        int edits = Nearest.edits(begun, label.substring(0, Math.min(begun.length(), label.length())));
        int whole = Nearest.edits(begun, label);
        int least = Math.min(edits, whole);
        return least <= (begun.length() <= 4 ? 1 : 2) ? NEAR + least : NOT;
    }

    List<Proposal> best() {
        List<Ranked> list = new ArrayList<>(all.values());
        list.sort(Comparator.comparingInt(Ranked::distance).thenComparingInt(Ranked::order));
        return list.stream().map(Ranked::proposal).toList();
    }
}
