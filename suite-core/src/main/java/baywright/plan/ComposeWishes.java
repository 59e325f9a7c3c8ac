package baywright.plan;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The wishes of a composition: on which rows each is still hoped for, and what was given up. */
final class ComposeWishes {

    private final Setting setting;
    private final StateIndex states;
    private final VehicleIndex vehicle;
    private final List<Wish> all;
    private final Map<Wish, BitSet> hoped = new LinkedHashMap<>();
    private final List<Unmet> unmet = new ArrayList<>();

    ComposeWishes(Prover prover, List<Wish> all) {
        setting = prover.setting();
        states = prover.states();
        vehicle = prover.vehicle();
        this.all = List.copyOf(all);
        for (Wish wish : all) {
            BitSet rows = new BitSet();
            ZoneChoice.resolve(wish.zones(), setting.shape()).forEach(z -> rows.set(vehicle.row(z)));
            rows.clear(vehicle.vehicle());
            if (vehicleWide(wish)) {
                rows.set(vehicle.vehicle());
            }
            hoped.put(wish, rows);
            if (rows.isEmpty()) {
                unmet.add(new Unmet(wish, new Hindrance.NoZone()));
            }
        }
    }

    static boolean vehicleWide(Wish wish) {
        return wish.zones().equals(List.of(VehicleIndex.VEHICLE));
    }

    /** Wishes for a row; none when only the vehicle as a whole is wished something for. */
    List<Wish> on(int row) {
        boolean own = all.stream().anyMatch(w -> hoped.get(w).get(row));
        return own
                ? all.stream()
                        .filter(w -> hoped.get(w).get(row) || hoped.get(w).get(vehicle.vehicle()))
                        .toList()
                : List.of();
    }

    /** Wishes that are still hoped for somewhere. */
    List<Wish> open() {
        return all.stream().filter(w -> !hoped.get(w).isEmpty()).toList();
    }

    /** Rows on which the wish is hoped for; the vehicle's own row for one for the vehicle as a whole. */
    BitSet rows(Wish wish) {
        return hoped.get(wish);
    }

    /** Gives a wish up on these rows; one for the vehicle as a whole altogether. */
    void giveUp(Wish wish, BitSet on, Hindrance why) {
        BitSet rows = (BitSet) hoped.get(wish).clone();
        if (!vehicleWide(wish)) {
            rows.and(on);
        }
        if (rows.isEmpty()) {
            return;
        }
        hoped.get(wish).andNot(rows);
        List<String> zones = rows.stream().mapToObj(vehicle::id).toList();
        boolean whole = hoped.get(wish).isEmpty() && unmet.stream().noneMatch(u -> isOf(u, wish));
        unmet.add(new Unmet(whole ? wish : new Wish(wish.state(), zones, wish.priority()), why));
    }

    private static boolean isOf(Unmet unmet, Wish wish) {
        return unmet.wish().state().equals(wish.state()) && unmet.wish().priority() == wish.priority();
    }

    List<Unmet> unmet() {
        return List.copyOf(unmet);
    }

    /** Whether what is still hoped for holds at the end. */
    boolean granted(Map<String, Set<String>> ends) {
        return lost(ends).isEmpty();
    }

    /** What is still hoped for and does not hold at the end. */
    List<Wish> lost(Map<String, Set<String>> ends) {
        return open().stream().filter(w -> !granted(w, ends)).toList();
    }

    private boolean granted(Wish wish, Map<String, Set<String>> ends) {
        int state = states.of(wish.state());
        if (state < 0) {
            return false;
        }
        if (!states.isZoneScope(state)) {
            return ends.get(VehicleIndex.VEHICLE).contains(wish.state());
        }
        return hoped.get(wish).stream()
                .allMatch(row -> ends.get(vehicle.id(row)).contains(wish.state()));
    }
}
