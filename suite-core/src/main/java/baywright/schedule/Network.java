package baywright.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;

/**
 * Earliest starts by waits and lengths alone: longest paths, with an arc back for each most-wait. After M. Bartusch,
 * R. Möhring, F. Radermacher, "Scheduling project networks with resource constraints and time windows", Annals of
 * Operations Research 16 (1988) 201-240.
 */
public final class Network {

    /** From one activity's start to another's: not sooner than {@code minutes} later. */
    record Arc(int from, int to, int minutes, int lag) {}

    private final Project project;
    private final List<Arc> arcs = new ArrayList<>();
    private final int[] earliest;
    private final int[] tails;
    private List<Integer> circle = List.of();

    private Network(Project project) {
        this.project = project;
        for (int i = 0; i < project.lags().size(); i++) {
            Lag lag = project.lags().get(i);
            int shift = length(lag.from(), lag.since()) - length(lag.to(), lag.until());
            arcs.add(new Arc(lag.from(), lag.to(), shift + lag.least(), i));
            if (lag.most().isPresent() && bothRigid(lag)) {
                arcs.add(new Arc(lag.to(), lag.from(), -shift - lag.most().getAsInt(), i));
            }
        }
        earliest = project.activities().stream().mapToInt(Activity::earliest).toArray();
        settle();
        tails = project.activities().stream().mapToInt(Activity::minutes).toArray();
        for (int round = 0; round < tails.length && circle.isEmpty() && raiseTails(); round++) {
            // each round carries the tails one arc further
        }
    }

    public static Network of(Project project) {
        return new Network(project);
    }

    /** Pauses can stretch what lies between ends that are not rigid, so that a most-wait cannot be reckoned back. */
    private boolean bothRigid(Lag lag) {
        return (lag.since() == Lag.Point.START
                        || project.activities().get(lag.from()).rigid())
                && (lag.until() == Lag.Point.START
                        || project.activities().get(lag.to()).rigid());
    }

    private int length(int activity, Lag.Point point) {
        return point == Lag.Point.END ? project.activities().get(activity).minutes() : 0;
    }

    private void settle() {
        int n = earliest.length;
        int[] by = new int[n];
        Arrays.fill(by, -1);
        for (int round = 0; round <= n; round++) {
            int changed = -1;
            for (int a = 0; a < arcs.size(); a++) {
                Arc arc = arcs.get(a);
                if (earliest[arc.from()] + arc.minutes() > earliest[arc.to()]) {
                    earliest[arc.to()] = earliest[arc.from()] + arc.minutes();
                    by[arc.to()] = a;
                    changed = arc.to();
                }
            }
            if (changed < 0) {
                return;
            }
            if (round == n) {
                circle = circleFrom(changed, by);
            }
        }
    }

    private List<Integer> circleFrom(int start, int[] by) {
        int at = start;
        for (int i = 0; i < by.length; i++) {
            at = arcs.get(by[at]).from();
        }
        List<Integer> lags = new ArrayList<>();
        int first = at;
        do {
            lags.add(arcs.get(by[at]).lag());
            at = arcs.get(by[at]).from();
        } while (at != first);
        Collections.reverse(lags);
        return lags;
    }

    private boolean raiseTails() {
        boolean changed = false;
        for (Arc arc : arcs) {
            if (arc.minutes() + tails[arc.to()] > tails[arc.from()]) {
                tails[arc.from()] = arc.minutes() + tails[arc.to()];
                changed = true;
            }
        }
        return changed;
    }

    /** Waits that contradict each other, in order round the circle; empty when there are none. */
    public List<Lag> contradiction() {
        return circle.stream().map(project.lags()::get).toList();
    }

    /** Earliest start of an activity if nothing but waits held it up; meaningless when there is a contradiction. */
    public int earliest(int activity) {
        return earliest[activity];
    }

    /** Minutes from an activity's start to the end of the last that hangs on it, at least. */
    public int tail(int activity) {
        return tails[activity];
    }

    /** Length of the longest path. */
    public int length() {
        OptionalInt most = java.util.stream.IntStream.range(0, earliest.length)
                .map(a -> earliest[a] + project.activities().get(a).minutes())
                .max();
        return most.orElse(0);
    }
}
