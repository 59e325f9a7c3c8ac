package baywright.schedule;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** The chain of activities that decides when one of them ends: each begins when what it waited for is over. */
final class CriticalChain {

    /**
     * A link.
     *
     * @param resource what the activity waited for, when it was somebody or something that the one before had
     */
    record Link(int activity, OptionalInt resource) {}

    private final Project project;
    private final Timetable timetable;

    /** Each activity's holds, by their places. */
    private final List<List<Integer>> holds;

    /** The activities that each resource serves, by itself or in a hold. */
    private final List<BitSet> served;

    private CriticalChain(Project project, Timetable timetable) {
        this.project = project;
        this.timetable = timetable;
        holds = project.activities().stream()
                .map(a -> (List<Integer>) new ArrayList<Integer>())
                .toList();
        served = project.resources().stream().map(r -> new BitSet()).toList();
        for (int i = 0; i < timetable.starts().size(); i++) {
            for (Collection<Integer> by : timetable.taken().get(i)) {
                for (int r : by) {
                    served.get(r).set(i);
                }
            }
        }
        for (int h = 0; h < project.holds().size(); h++) {
            for (int i : project.holds().get(h).activities()) {
                holds.get(i).add(h);
                for (int r : timetable.held().get(h)) {
                    served.get(r).set(i);
                }
            }
        }
    }

    /** The links from the first to the given activity. */
    static List<Link> to(Project project, Timetable timetable, int last) {
        return new CriticalChain(project, timetable).chain(last);
    }

    /** {@code others}: how many could have served instead; who cannot be replaced is named first. */
    private record Before(int activity, int end, OptionalInt resource, int others) {}

    private List<Link> chain(int last) {
        List<Link> links = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        int at = last;
        while (seen.add(at)) {
            Before before = before(at, seen);
            links.add(new Link(at, before == null ? OptionalInt.empty() : before.resource()));
            if (before == null) {
                break;
            }
            at = before.activity();
        }
        Collections.reverse(links);
        return links;
    }

    /** What ended last before an activity could begin; null when it came as early as it may or nothing held it up. */
    private Before before(int i, Set<Integer> seen) {
        Before latest = null;
        for (Lag lag : project.lags()) {
            if (lag.to() == i && !seen.contains(lag.from())) {
                int since = lag.since() == Lag.Point.START ? timetable.start(lag.from()) : timetable.end(lag.from());
                latest = later(latest, new Before(lag.from(), since + lag.least(), OptionalInt.empty(), -1));
            }
        }
        for (int r = 0; r < project.resources().size(); r++) {
            if (!served.get(r).get(i)) {
                continue;
            }
            for (int other : served.get(r).stream().toArray()) {
                if (other != i
                        && timetable.end(other) <= timetable.start(i)
                        && !seen.contains(other)
                        && !heldTogether(i, other, r)) {
                    latest = later(latest, new Before(other, timetable.end(other), OptionalInt.of(r), others(i, r)));
                }
            }
        }
        Activity activity = project.activities().get(i);
        boolean held = latest != null
                && activity.startFrom(Math.max(activity.earliest(), latest.end())) >= timetable.start(i)
                && latest.end() > activity.earliest();
        return held ? latest : null;
    }

    private static Before later(Before a, Before b) {
        boolean later = a == null || b.end() > a.end();
        return later || (b.end() == a.end() && b.others() < a.others()) ? b : a;
    }

    private int others(int i, int r) {
        int least = Integer.MAX_VALUE;
        for (int k = 0; k < timetable.taken().get(i).size(); k++) {
            if (timetable.taken().get(i).get(k).contains(r)) {
                least = Math.min(
                        least, others(project.activities().get(i).needs().get(k)));
            }
        }
        for (int h : holds.get(i)) {
            if (timetable.held().get(h).contains(r)) {
                least = Math.min(least, others(project.holds().get(h).need()));
            }
        }
        return least;
    }

    private static int others(Need need) {
        return need.anyOf().size() - need.count();
    }

    /** Two steps of one sitting do not wait for their bay. */
    private boolean heldTogether(int i, int other, int r) {
        return holds.get(i).stream()
                .anyMatch(h ->
                        timetable.held().get(h).contains(r) && holds.get(other).contains(h));
    }
}
