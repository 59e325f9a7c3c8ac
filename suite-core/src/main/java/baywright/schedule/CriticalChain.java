package baywright.schedule;

import java.util.ArrayList;
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

    private CriticalChain(Project project, Timetable timetable) {
        this.project = project;
        this.timetable = timetable;
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
            if (!takes(i, r)) {
                continue;
            }
            for (int other = 0; other < timetable.starts().size(); other++) {
                if (other != i
                        && !seen.contains(other)
                        && timetable.end(other) <= timetable.start(i)
                        && takes(other, r)
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
        for (int h = 0; h < project.holds().size(); h++) {
            if (project.holds().get(h).activities().contains(i)
                    && timetable.held().get(h).contains(r)) {
                least = Math.min(least, others(project.holds().get(h).need()));
            }
        }
        return least;
    }

    private static int others(Need need) {
        return need.anyOf().size() - need.count();
    }

    private boolean takes(int i, int r) {
        boolean own = timetable.taken().get(i).stream().anyMatch(by -> by.contains(r));
        for (int h = 0; h < project.holds().size() && !own; h++) {
            own = project.holds().get(h).activities().contains(i)
                    && timetable.held().get(h).contains(r);
        }
        return own;
    }

    /** Two steps of one sitting do not wait for their bay. */
    private boolean heldTogether(int i, int other, int r) {
        for (int h = 0; h < project.holds().size(); h++) {
            List<Integer> members = project.holds().get(h).activities();
            if (timetable.held().get(h).contains(r) && members.contains(i) && members.contains(other)) {
                return true;
            }
        }
        return false;
    }
}
