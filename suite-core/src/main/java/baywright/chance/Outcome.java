package baywright.chance;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What many runs of a network came to.
 *
 * @param seed    what the draws grew from
 * @param finish  minutes from the network's start to its end, run by run
 * @param cost    run by run
 * @param roles   of the activities, in the network's order
 * @param drivers what drives the spread, the strongest on the finish first
 * @param missed  how often each window was missed, in the network's order
 */
public record Outcome(
        long seed, Sample finish, Sample cost, List<Role> roles, List<Driver> drivers, List<Missed> missed) {

    /**
     * What an activity has to do with the finish.
     *
     * @param activity    its id
     * @param criticality share of the runs in which it has no room (criticality index)
     * @param correlation of its time's ranks with the finish's (Spearman), over the first runs
     */
    public record Role(String activity, double criticality, double correlation) {}

    /** What a driver is. */
    public enum Kind {
        /** A cause that several figures share. */
        SHARED,
        /** An activity's own ups and downs. */
        ACTIVITY,
        /** A charge's own ups and downs. */
        CHARGE
    }

    /**
     * A cause of spread. The causes are independent of each other, so the shares add up to 1 at most; what is left comes
     * from several acting together and from bends in what they do.
     *
     * @param kind     what it is
     * @param name     name of the shared cause, or id of the activity or charge
     * @param ofFinish share of the finish's variance that goes straight with it: squared correlations
     * @param ofCost   the same for the cost
     */
    public record Driver(Kind kind, String name, double ofFinish, double ofCost) {}

    /** How often a window was missed: 0 to 1. */
    public record Missed(Window window, double chance) {}

    public Outcome {
        roles = List.copyOf(roles);
        drivers = List.copyOf(drivers);
        missed = List.copyOf(missed);
    }

    public int runs() {
        return finish.size();
    }

    /** The role of an activity. */
    public Optional<Role> role(String activity) {
        return roles.stream().filter(role -> role.activity().equals(activity)).findFirst();
    }

    /** The drivers, the strongest on the cost first. */
    public List<Driver> driversOfCost() {
        return drivers.stream()
                .sorted(Comparator.comparingDouble(Driver::ofCost).reversed())
                .toList();
    }
}
