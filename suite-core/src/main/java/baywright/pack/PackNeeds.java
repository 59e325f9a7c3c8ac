package baywright.pack;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Packs that are to be used together: those that come, and those that are in use already. One that comes takes the place of the one
 * of the same id that is in use.
 */
public final class PackNeeds {

    private final SortedMap<String, Manifest> all = new TreeMap<>();
    private final List<PackRefused> refusals = new ArrayList<>();
    private final Set<String> ordered = new LinkedHashSet<>();
    private final Deque<String> path = new ArrayDeque<>();
    private final Set<Set<String>> circles = new HashSet<>();

    /**
     * Holds packs against each other.
     *
     * @param coming    packs that are to be taken
     * @param held      packs in use
     * @param downgrade whether a pack may take the place of a later version of itself
     */
    public PackNeeds(Collection<Manifest> coming, Collection<Manifest> held, boolean downgrade) {
        SortedMap<String, Manifest> fresh = new TreeMap<>();
        for (Manifest manifest : coming) {
            Manifest twin = fresh.putIfAbsent(manifest.id(), manifest);
            if (twin != null && !twin.equals(manifest)) {
                refuse(manifest.id(), Refusal.PACK_TWICE, twin.version(), manifest.version());
            }
        }
        for (Manifest manifest : held) {
            all.put(manifest.id(), manifest);
            Manifest next = fresh.get(manifest.id());
            if (next != null && next.version().isBefore(manifest.version()) && !downgrade) {
                refuse(next.id(), Refusal.DOWNGRADE, next.version(), manifest.version());
            }
        }
        all.putAll(fresh);
        all.values().forEach(this::judgeNeeds);
        all.keySet().forEach(this::visit);
    }

    private void refuse(String id, Refusal refusal, Object... values) {
        refusals.add(new PackRefused(id, refusal, values));
    }

    private void judgeNeeds(Manifest manifest) {
        for (Manifest.Need need : manifest.needs()) {
            Manifest other = all.get(need.id());
            if (other == null) {
                refuse(manifest.name(), Refusal.NEED_MISSING, need.id(), need.range());
            } else if (!need.range().holds(other.version())) {
                refuse(manifest.name(), Refusal.NEED_CLASH, need.id(), need.range(), other.version());
            }
        }
    }

    /** Puts a pack behind those that it needs; a pack that is met on the way to itself closes a circle. */
    private void visit(String id) {
        if (ordered.contains(id)) {
            return;
        }
        if (path.contains(id)) {
            noteCircle(id);
            return;
        }
        path.addLast(id);
        for (Manifest.Need need : all.get(id).needs()) {
            if (all.containsKey(need.id())) {
                visit(need.id());
            }
        }
        path.removeLast();
        ordered.add(id);
    }

    private void noteCircle(String id) {
        List<String> circle = new ArrayList<>(path);
        circle = circle.subList(circle.indexOf(id), circle.size());
        if (circles.add(Set.copyOf(circle))) {
            String shown = String.join(" → ", circle) + " → " + id;
            refuse(id, Refusal.NEED_CIRCLE, shown);
        }
    }

    /** Everything that stands against it, each in one line; empty when all of it fits. */
    public List<PackRefused> refusals() {
        return List.copyOf(refusals);
    }

    /**
     * All packs, each behind those that it needs; else by id.
     *
     * @throws PackRefused with the first thing that stands against it
     */
    public List<Manifest> inOrder() {
        if (!refusals.isEmpty()) {
            throw refusals.get(0);
        }
        Map<String, Manifest> known = all;
        return ordered.stream().map(known::get).toList();
    }
}
