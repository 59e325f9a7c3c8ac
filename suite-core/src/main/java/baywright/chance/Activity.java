package baywright.chance;

import baywright.quantity.ThreePoint;
import java.util.Objects;

/**
 * Something that takes time.
 *
 * @param id            unique in its network
 * @param minutes       how long it takes
 * @param earliest      minutes after the network's start before which it cannot begin, not negative
 * @param loadings      what it shares its ups and downs with
 * @param rework        whether it may have to be done again
 * @param costPerMinute what a minute of it costs, not negative
 */
public record Activity(
        String id, ThreePoint minutes, double earliest, Loadings loadings, Rework rework, double costPerMinute) {

    public Activity {
        Objects.requireNonNull(id, "id");
        if (!(earliest >= 0) || Double.isInfinite(earliest)) {
            throw new IllegalArgumentException(
                    "activity " + id + " cannot begin earlier than the start of its network, got " + earliest);
        }
        if (!(costPerMinute >= 0) || Double.isInfinite(costPerMinute)) {
            throw new IllegalArgumentException(
                    "activity " + id + " needs a cost per minute that is not negative, got " + costPerMinute);
        }
    }

    /** An activity that depends on nothing but its links and costs nothing. */
    public static Activity of(String id, ThreePoint minutes) {
        return new Activity(id, minutes, 0, Loadings.NONE, Rework.NEVER, 0);
    }

    public Activity with(Loadings other) {
        return new Activity(id, minutes, earliest, other, rework, costPerMinute);
    }

    public Activity with(Rework other) {
        return new Activity(id, minutes, earliest, loadings, other, costPerMinute);
    }

    public Activity notBefore(double minute) {
        return new Activity(id, minutes, minute, loadings, rework, costPerMinute);
    }

    public Activity costing(double perMinute) {
        return new Activity(id, minutes, earliest, loadings, rework, perMinute);
    }
}
