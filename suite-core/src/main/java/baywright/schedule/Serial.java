package baywright.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A timetable at once: serial schedule generation. One activity after the other, by a rule, is put as early as waits,
 * hours and resources allow. When a most-wait cannot be kept, the activity that waits is put later and all begins anew.
 *
 * <p>Method: R. Kolisch, "Serial and parallel resource-constrained project scheduling methods revisited", European
 * Journal of Operational Research 90 (1996) 320-333; putting later as in K. Neumann, C. Schwindt, J. Zimmermann, "Project
 * Scheduling with Time Windows and Scarce Resources" (2003), ch. 2.6.
 */
public final class Serial {

    /** Which activity comes first of those that can. */
    enum Rule {
        LATEST_FINISH,
        LONGEST_TAIL,
        MOST_WORK,
        GIVEN_ORDER
    }

    private static final int MORE_TURNS = 20;

    private final Project project;
    private final Network network;
    private final Map<Rule, double[]> keys = new EnumMap<>(Rule.class);
    private final List<List<Lag>> before = new ArrayList<>();
    private final List<List<Integer>> after = new ArrayList<>();
    private final List<List<Integer>> holdsOf = new ArrayList<>();
    private final int[] wanted;
    private final List<Course> courses;

    private int[] release;
    private int[] starts;
    private int[] ends;
    private List<Usage> usages;
    private Ledger ledger;
    private List<List<List<Integer>>> taken;
    private List<List<Integer>> held;
    private int[] heldFrom;
    private int[] heldTo;
    private int[] membersLeft;

    private Serial(Project project) {
        this.project = project;
        network = Network.of(project);
        int n = project.activities().size();
        courses = project.activities().stream().map(Course::new).toList();
        wanted = new int[project.resources().size()];
        for (int i = 0; i < n; i++) {
            before.add(new ArrayList<>());
            after.add(new ArrayList<>());
            holdsOf.add(new ArrayList<>());
            for (Need need : project.activities().get(i).needs()) {
                need.anyOf().forEach(r -> wanted[r]++);
            }
        }
        for (Lag lag : project.lags()) {
            before.get(lag.to()).add(lag);
            after.get(lag.from()).add(lag.to());
        }
        for (int h = 0; h < project.holds().size(); h++) {
            for (int activity : project.holds().get(h).activities()) {
                holdsOf.get(activity).add(h);
            }
        }
        rank(n);
    }

    /** The best timetable of all rules; empty when none of them found one. The same each time. */
    public static Optional<Timetable> first(Project project) {
        Serial serial = new Serial(project);
        if (!serial.network.contradiction().isEmpty()) {
            return Optional.empty();
        }
        Optional<Timetable> best = Optional.empty();
        for (Rule rule : Rule.values()) {
            Optional<Timetable> found = serial.by(rule);
            if (found.isPresent()
                    && (best.isEmpty() || found.get().goal() < best.get().goal())) {
                best = found;
            }
        }
        return best;
    }

    private void rank(int n) {
        for (Rule rule : Rule.values()) {
            keys.put(rule, new double[n]);
        }
        int[] due = new int[n];
        Arrays.fill(due, Hours.END_OF_TIME);
        for (Goal.Term term : project.goal().terms()) {
            due[term.activity()] = term.lateWeight() > 0 ? term.due() : project.horizon();
        }
        for (int round = 0; round < n; round++) {
            for (Lag lag : project.lags()) {
                int span = lag.until() == Lag.Point.END ? 0 : length(lag.to());
                int own = lag.since() == Lag.Point.END ? 0 : length(lag.from());
                due[lag.from()] = Math.min(due[lag.from()], due[lag.to()] - span - lag.least() + own);
            }
        }
        for (int i = 0; i < n; i++) {
            keys.get(Rule.LATEST_FINISH)[i] = due[i];
            keys.get(Rule.LONGEST_TAIL)[i] = -network.tail(i);
            keys.get(Rule.MOST_WORK)[i] = -length(i)
                    - after.get(i).stream().distinct().mapToDouble(this::length).sum();
            keys.get(Rule.GIVEN_ORDER)[i] = i;
        }
    }

    private int length(int activity) {
        return project.activities().get(activity).minutes();
    }

    private Optional<Timetable> by(Rule rule) {
        int n = project.activities().size();
        release = new int[n];
        for (int i = 0; i < n; i++) {
            release[i] = network.earliest(i);
        }
        double[] key = keys.get(rule);
        Comparator<Integer> order =
                Comparator.comparingDouble((Integer i) -> key[i]).thenComparing(i -> i);
        for (int turn = 0; turn < n + MORE_TURNS; turn++) {
            int placed = pass(order);
            if (placed == n) {
                return Optional.of(timetable());
            }
            if (placed < 0) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** Puts everything; how many were put, fewer when something had to be put later, -1 when there is no way. */
    private int pass(Comparator<Integer> order) {
        int n = project.activities().size();
        starts = new int[n];
        ends = new int[n];
        Arrays.fill(starts, -1);
        usages = new ArrayList<>();
        project.resources().forEach(r -> usages.add(new Usage(r)));
        ledger = new Ledger(project, courses);
        taken = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            taken.add(List.of());
        }
        int holds = project.holds().size();
        held = new ArrayList<>();
        heldFrom = new int[holds];
        heldTo = new int[holds];
        membersLeft = new int[holds];
        for (int h = 0; h < holds; h++) {
            held.add(List.of());
            membersLeft[h] = project.holds().get(h).activities().size();
        }
        int[] missing = new int[n];
        project.lags().forEach(lag -> missing[lag.to()]++);
        List<Integer> ready = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (missing[i] == 0) {
                ready.add(i);
            }
        }
        int placed = 0;
        while (!ready.isEmpty()) {
            ready.sort(order);
            int next = firstThatCan(ready);
            if (next < 0) {
                return -1;
            }
            int late = put(next);
            if (late != 0) {
                return late < 0 ? -1 : placed;
            }
            placed++;
            ready.remove((Integer) next);
            for (int successor : after.get(next)) {
                if (--missing[successor] == 0) {
                    ready.add(successor);
                }
            }
        }
        return placed == n ? n : -1;
    }

    /** An activity that opens a hold must wait while all that could be held is held by something unfinished. */
    private int firstThatCan(List<Integer> ready) {
        for (int activity : ready) {
            boolean can = true;
            for (int h : holdsOf.get(activity)) {
                can &= !held.get(h).isEmpty()
                        || able(project.holds().get(h)).size()
                                >= project.holds().get(h).need().count();
            }
            if (can) {
                return activity;
            }
        }
        return -1;
    }

    private List<Integer> able(Hold hold) {
        int amount = hold.need().amount();
        return hold.need().anyOf().stream()
                .filter(r -> usages.get(r).blockedUntil(Hours.END_OF_TIME - 1, Hours.END_OF_TIME, amount) < 0)
                .toList();
    }

    /** Puts an activity; 0 when it went, 1 when another was told to come later, -1 when there is no way. */
    private int put(int i) {
        Activity activity = project.activities().get(i);
        int start = Math.max(activity.earliest(), release[i]);
        for (Lag lag : before.get(i)) {
            int since = lag.since() == Lag.Point.START ? starts[lag.from()] : ends[lag.from()];
            start = Math.max(start, since + lag.least() - (lag.until() == Lag.Point.END ? activity.minutes() : 0));
        }
        int end;
        while (true) {
            start = activity.startFrom(start);
            end = start >= Hours.END_OF_TIME ? start : activity.endOf(start);
            if (end > project.horizon()) {
                return -1;
            }
            int later = Math.max(lateByEnd(i, start, end), blocked(i, activity, start, end));
            if (later <= start) {
                break;
            }
            start = later;
        }
        for (Lag lag : before.get(i)) {
            if (lag.most().isPresent()) {
                int since = lag.since() == Lag.Point.START ? starts[lag.from()] : ends[lag.from()];
                int over = (lag.until() == Lag.Point.START ? start : end)
                        - since
                        - lag.most().getAsInt();
                if (over > 0) {
                    release[lag.from()] = starts[lag.from()] + over;
                    return release[lag.from()]
                                    > project.activities().get(lag.from()).latest()
                            ? -1
                            : 1;
                }
            }
        }
        if (start > activity.latest()) {
            return -1;
        }
        take(i, activity, start, end);
        return 0;
    }

    /** Pauses may bring an end too early for a wait that is counted to it; then a minute later. */
    private int lateByEnd(int i, int start, int end) {
        for (Lag lag : before.get(i)) {
            int since = lag.since() == Lag.Point.START ? starts[lag.from()] : ends[lag.from()];
            if (lag.until() == Lag.Point.END && end < since + lag.least()) {
                return start + 1;
            }
        }
        return start;
    }

    private int blocked(int i, Activity activity, int start, int end) {
        int later = start;
        for (Need need : activity.needs()) {
            later = Math.max(later, freeFrom(i, need, start, end, true));
        }
        for (int h : holdsOf.get(i)) {
            if (held.get(h).isEmpty()) {
                later = Math.max(later, freeFrom(i, project.holds().get(h).need(), start, Hours.END_OF_TIME, false));
            } else {
                later = Math.max(later, heldFrom[h]);
                for (int r : held.get(h)) {
                    later = Math.max(later, ledger.budgeted(r, i, start));
                }
            }
        }
        return later > start || servedByAll(i, activity, start, end) ? later : start + 1;
    }

    /** Whether nobody would have to serve two needs at once. */
    private boolean servedByAll(int i, Activity activity, int start, int end) {
        List<Need> needs = new ArrayList<>(activity.needs());
        holdsOf.get(i).stream()
                .filter(h -> held.get(h).isEmpty())
                .forEach(h -> needs.add(project.holds().get(h).need()));
        if (needs.size() < 2 && holdsOf.get(i).isEmpty()) {
            return true;
        }
        inHolds(i, start, 1);
        List<List<Integer>> chosen = new ArrayList<>();
        boolean all = true;
        for (Need need : needs) {
            boolean own = chosen.size() < activity.needs().size();
            int to = own ? end : Hours.END_OF_TIME;
            List<Integer> serving = choose(i, need, start, to, own);
            serving.forEach(r -> serve(i, r, start, to, need, own));
            chosen.add(serving);
            all &= serving.size() == need.count();
        }
        for (int k = 0; k < chosen.size(); k++) {
            boolean own = k < activity.needs().size();
            int to = own ? end : Hours.END_OF_TIME;
            int amount = needs.get(k).amount();
            chosen.get(k).forEach(r -> {
                usages.get(r).take(start, to, -amount);
                if (own) {
                    ledger.give(r, i, start);
                } else {
                    ledger.count(r, i, start, -1);
                }
            });
        }
        inHolds(i, start, -1);
        return all;
    }

    /** Counts an activity where it is a member of what is held already, or undoes it. */
    private void inHolds(int i, int start, int sign) {
        holdsOf.get(i).forEach(h -> held.get(h).forEach(r -> ledger.count(r, i, start, sign)));
    }

    private void serve(int i, int r, int start, int to, Need need, boolean own) {
        usages.get(r).take(start, to, need.amount());
        if (own) {
            ledger.take(r, i, start);
        } else {
            ledger.count(r, i, start, 1);
        }
    }

    /** The start itself when enough are free; else a later time at which that may change. */
    private int freeFrom(int i, Need need, int start, int end, boolean own) {
        int[] from = need.anyOf().stream()
                .mapToInt(r -> freeFrom(i, r, need, start, end, own))
                .sorted()
                .toArray();
        return from[need.count() - 1];
    }

    private int freeFrom(int i, int r, Need need, int start, int end, boolean own) {
        int blocked = usages.get(r).blockedUntil(start, end, need.amount());
        return Math.max(Math.max(start, blocked), own ? ledger.from(r, i, start) : ledger.budgeted(r, i, start));
    }

    private void take(int i, Activity activity, int start, int end) {
        starts[i] = start;
        ends[i] = end;
        inHolds(i, start, 1);
        List<List<Integer>> chosen = new ArrayList<>();
        for (Need need : activity.needs()) {
            List<Integer> serving = choose(i, need, start, end, true);
            serving.forEach(r -> serve(i, r, start, end, need, true));
            chosen.add(serving);
        }
        taken.set(i, chosen);
        for (int h : holdsOf.get(i)) {
            Need need = project.holds().get(h).need();
            if (held.get(h).isEmpty()) {
                List<Integer> serving = choose(i, need, start, Hours.END_OF_TIME, false);
                serving.forEach(r -> serve(i, r, start, Hours.END_OF_TIME, need, false));
                held.set(h, serving);
                heldFrom[h] = start;
                heldTo[h] = end;
            }
            heldTo[h] = Math.max(heldTo[h], end);
            if (--membersLeft[h] == 0) {
                int to = heldTo[h];
                held.get(h).forEach(r -> usages.get(r).take(to, Hours.END_OF_TIME, -need.amount()));
            }
        }
    }

    /** Those that are free and least asked for by others. */
    private List<Integer> choose(int i, Need need, int start, int end, boolean own) {
        return need.anyOf().stream()
                .filter(r -> freeFrom(i, r, need, start, end, own) == start)
                .sorted(Comparator.comparingInt((Integer r) -> wanted[r]).thenComparing(r -> r))
                .limit(need.count())
                .toList();
    }

    private Timetable timetable() {
        return new Timetable(
                Arrays.stream(starts).boxed().toList(),
                Arrays.stream(ends).boxed().toList(),
                taken,
                held,
                project.goal().at(ends));
    }
}
