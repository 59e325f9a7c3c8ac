package baywright.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * The order of a timetable as a rule for days on which work takes another time than planned: who and what does each
 * activity stays, and so does the order in which each of them serves. Otherwise everything begins as early as waits, hours
 * and that order let it. An activity that another must follow in time begins only where the other could follow if all
 * took its planned time. With the planned times the timetable comes out again, if it puts nothing off without need.
 *
 * <p>Method: an early-start policy (R. Möhring, F. Radermacher, G. Weiss, "Stochastic scheduling problems I", Zeitschrift
 * für Operations Research 28 (1984) 193-260) on the chains of the resources' units (N. Policella, A. Cesta, A. Oddi,
 * S. Smith, "From precedence constraint posting to partial order schedules", AI Communications 20 (2007) 163-180).
 */
final class FixedOrder {

    /** Turns that looking ahead may take before an activity begins without. */
    private static final int TURNS = 200;

    /** To a start, from an end or a start. */
    private record Arc(int from, int to, boolean sinceStart, int least) {}

    /** A lag with a most-wait. */
    record Limit(int lag, int from, int to, boolean sinceStart, int most) {}

    /** What follows an activity that others must follow in time, in order. */
    private record Ahead(int[] nodes, boolean[] member, List<List<Limit>> limits) {
        static Ahead of(BitSet all, int source, int[] order, List<Limit> limits) {
            boolean[] member = new boolean[order.length];
            all.stream().forEach(v -> member[v] = true);
            int[] nodes =
                    Arrays.stream(order).filter(v -> v != source && member[v]).toArray();
            List<List<Limit>> ends = new ArrayList<>();
            for (int v : nodes) {
                ends.add(limits.stream()
                        .filter(l -> l.to() == v && member[l.from()])
                        .toList());
            }
            return new Ahead(nodes, member, ends);
        }
    }

    private final int activities;
    private final int size;
    private final int[] planned;
    private final int[] earliest;
    private final WorkClock[] clocks;
    private final int[] sequence;
    private final int[] position;
    private final Arc[][] into;
    private final List<Limit> limits = new ArrayList<>();
    private final Ahead[] ahead;

    private FixedOrder(Project project, Timetable timetable) {
        activities = project.activities().size();
        size = activities + project.holds().size();
        planned = new int[size];
        earliest = new int[size];
        clocks = new WorkClock[size];
        for (int i = 0; i < size; i++) {
            Activity activity = i < activities ? project.activities().get(i) : Activity.of("end of a hold", 0);
            planned[i] = activity.minutes();
            earliest[i] = activity.earliest();
            clocks[i] = new WorkClock(activity, i < activities ? away(project, timetable, i) : List.of());
        }
        project.budgets().forEach(budget -> notBeforePeriod(budget, timetable));
        project.rests().forEach(rest -> notBeforeRest(rest, project, timetable));
        List<Arc> arcs = arcs(project, timetable);
        int[] first = order(arcs, timetable);
        arcs = needed(arcs, first);
        into = incoming(arcs);
        BitSet[] after = after(first);
        limits(project);
        ahead = new Ahead[size];
        for (Limit limit : limits) {
            if (ahead[limit.from()] == null) {
                ahead[limit.from()] = Ahead.of(followers(limit.from(), after), limit.from(), first, limits);
            }
        }
        sequence = order(withLooks(arcs, after), timetable);
        position = new int[size];
        for (int k = 0; k < size; k++) {
            position[sequence[k]] = k;
        }
        for (int v = 0; v < size; v++) {
            if (ahead[v] != null) {
                ahead[v] = Ahead.of(withOthers(v), v, sequence, limits);
            }
        }
    }

    /**
     * The order of a timetable.
     *
     * @param project   whose waits all end at a start, and whose absences are those of single people
     * @param timetable of the project
     */
    static FixedOrder of(Project project, Timetable timetable) {
        return new FixedOrder(project, timetable);
    }

    /** What was put off for the sake of a day's budget is not done sooner because others were quick. */
    private void notBeforePeriod(Budget budget, Timetable timetable) {
        budget.loads().forEach((i, load) -> {
            int start = timetable.start(i);
            for (Window period : budget.periods()) {
                boolean begins = period.from() <= start && start < period.to();
                if (begins && load > 0) {
                    earliest[i] = Math.max(earliest[i], timetable.end(i) <= period.to() ? period.from() : start);
                }
            }
        });
    }

    /** Whoever rests does not begin a day sooner because others were quick. */
    private void notBeforeRest(Rest rest, Project project, Timetable timetable) {
        Map<Integer, Integer> firstOfDay = new HashMap<>();
        for (int i = 0; i < project.activities().size(); i++) {
            if (timetable.taken().get(i).stream().anyMatch(by -> by.contains(rest.resource()))) {
                firstOfDay.merge(
                        rest.day(timetable.start(i)), i, (a, b) -> timetable.start(a) <= timetable.start(b) ? a : b);
            }
        }
        firstOfDay.values().forEach(i -> earliest[i] = Math.max(earliest[i], timetable.start(i)));
    }

    /** Most-waits that can be missed. */
    List<Limit> limits() {
        return limits;
    }

    private static List<Window> away(Project project, Timetable timetable, int i) {
        List<Window> away = new ArrayList<>();
        for (List<Integer> serving : timetable.taken().get(i)) {
            for (int r : serving) {
                Resource resource = project.resources().get(r);
                if (!resource.absences().isEmpty() && resource.capacity() > 1) {
                    throw new IllegalArgumentException("only a single one can be absent here, but " + resource.id()
                            + " are " + resource.capacity());
                }
                resource.absences().forEach(a -> away.add(a.when()));
            }
        }
        return away;
    }

    // ---- arcs

    private List<Arc> arcs(Project project, Timetable timetable) {
        Map<List<Object>, Arc> arcs = new LinkedHashMap<>();
        for (Lag lag : project.lags()) {
            if (lag.until() == Lag.Point.END) {
                throw new IllegalArgumentException("a wait here ends at a start, got " + lag);
            }
            add(arcs, new Arc(lag.from(), lag.to(), lag.since() == Lag.Point.START, lag.least()));
        }
        for (int h = 0; h < project.holds().size(); h++) {
            for (int member : project.holds().get(h).activities()) {
                add(arcs, new Arc(member, activities + h, false, 0));
            }
        }
        for (int r = 0; r < project.resources().size(); r++) {
            chain(project, timetable, r, arcs);
        }
        return new ArrayList<>(arcs.values());
    }

    private static void add(Map<List<Object>, Arc> arcs, Arc arc) {
        arcs.merge(List.of(arc.from(), arc.to(), arc.sinceStart()), arc, (a, b) -> a.least() >= b.least() ? a : b);
    }

    /** A stretch in which a resource is taken: by an activity, or by a hold until its mark. */
    private record Taking(int start, int end, int amount, List<Integer> by, int until) {}

    private void chain(Project project, Timetable timetable, int r, Map<List<Object>, Arc> arcs) {
        int[] freeFrom = new int[project.resources().get(r).capacity()];
        int[] last = new int[freeFrom.length];
        Arrays.fill(last, -1);
        List<Taking> takings = takings(project, timetable, r);
        takings.sort(Comparator.comparingInt(Taking::start)
                .thenComparingInt(Taking::end)
                .thenComparingInt(Taking::until));
        for (Taking taking : takings) {
            for (int k = 0; k < taking.amount(); k++) {
                int unit = unit(freeFrom, taking.start());
                int before = last[unit];
                if (before >= 0) {
                    taking.by().forEach(by -> add(arcs, new Arc(before, by, false, 0)));
                }
                freeFrom[unit] = taking.end();
                last[unit] = taking.until();
            }
        }
    }

    /** The unit that came free last, so that others keep more room. */
    private static int unit(int[] freeFrom, int start) {
        int best = -1;
        for (int u = 0; u < freeFrom.length; u++) {
            if (freeFrom[u] <= start && (best < 0 || freeFrom[u] > freeFrom[best])) {
                best = u;
            }
        }
        if (best < 0) {
            throw new IllegalArgumentException("the timetable takes more of a resource than there is at " + start);
        }
        return best;
    }

    private List<Taking> takings(Project project, Timetable timetable, int r) {
        List<Taking> takings = new ArrayList<>();
        for (int i = 0; i < activities; i++) {
            for (int k = 0; k < timetable.taken().get(i).size(); k++) {
                if (timetable.taken().get(i).get(k).contains(r) && timetable.end(i) > timetable.start(i)) {
                    int amount = project.activities().get(i).needs().get(k).amount();
                    takings.add(new Taking(timetable.start(i), timetable.end(i), amount, List.of(i), i));
                }
            }
        }
        for (int h = 0; h < project.holds().size(); h++) {
            Hold hold = project.holds().get(h);
            if (timetable.held().get(h).contains(r)) {
                int from = hold.activities().stream()
                        .mapToInt(timetable::start)
                        .min()
                        .orElseThrow();
                int to = hold.activities().stream()
                        .mapToInt(timetable::end)
                        .max()
                        .orElseThrow();
                if (to > from) {
                    takings.add(new Taking(from, to, hold.need().amount(), hold.activities(), activities + h));
                }
            }
        }
        return takings;
    }

    /** Without those that a way round implies. */
    private List<Arc> needed(List<Arc> arcs, int[] first) {
        List<List<Arc>> in = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            in.add(new ArrayList<>());
        }
        arcs.forEach(arc -> in.get(arc.to()).add(arc));
        BitSet[] ended = new BitSet[size];
        for (int v : first) {
            ended[v] = new BitSet(size);
            for (Arc arc : in.get(v)) {
                if (!arc.sinceStart()) {
                    ended[v].set(arc.from());
                    ended[v].or(ended[arc.from()]);
                }
            }
        }
        return new ArrayList<>(arcs.stream()
                .filter(arc -> arc.sinceStart()
                        || arc.least() > 0
                        || in.get(arc.to()).stream()
                                .noneMatch(other -> !other.sinceStart() && ended[other.from()].get(arc.from())))
                .toList());
    }

    private Arc[][] incoming(List<Arc> arcs) {
        List<List<Arc>> in = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            in.add(new ArrayList<>());
        }
        arcs.forEach(arc -> in.get(arc.to()).add(arc));
        return in.stream().map(list -> list.toArray(Arc[]::new)).toArray(Arc[][]::new);
    }

    /** An order in which each comes after what it waits for, otherwise that of the timetable. */
    private int[] order(List<Arc> arcs, Timetable timetable) {
        int[] missing = new int[size];
        Map<Integer, List<Integer>> out = new HashMap<>();
        for (Arc arc : arcs) {
            missing[arc.to()]++;
            out.computeIfAbsent(arc.from(), from -> new ArrayList<>()).add(arc.to());
        }
        PriorityQueue<Integer> ready =
                new PriorityQueue<>(Comparator.comparingInt((Integer i) -> i < activities ? timetable.start(i) : 0)
                        .thenComparing(i -> i));
        for (int i = 0; i < size; i++) {
            if (missing[i] == 0) {
                ready.add(i);
            }
        }
        int[] order = new int[size];
        int found = 0;
        while (!ready.isEmpty()) {
            int next = ready.remove();
            order[found++] = next;
            for (int to : out.getOrDefault(next, List.of())) {
                if (--missing[to] == 0) {
                    ready.add(to);
                }
            }
        }
        if (found < size) {
            throw new IllegalStateException("a timetable's activities wait for each other in a circle");
        }
        return order;
    }

    /** All that come after each. */
    private BitSet[] after(int[] first) {
        BitSet[] after = new BitSet[size];
        for (int i = 0; i < size; i++) {
            after[i] = new BitSet(size);
        }
        for (int k = size - 1; k >= 0; k--) {
            int v = first[k];
            for (Arc arc : into[v]) {
                after[arc.from()].set(v);
                after[arc.from()].or(after[v]);
            }
        }
        return after;
    }

    // ---- looking ahead

    /** What puts itself off for the sake of another need not begin when it may. */
    private void limits(Project project) {
        boolean[] source = new boolean[size];
        boolean[] taken = new boolean[project.lags().size()];
        boolean grown = true;
        while (grown) {
            grown = false;
            for (int l = 0; l < taken.length; l++) {
                Lag lag = project.lags().get(l);
                if (!taken[l] && lag.most().isPresent() && (source[lag.to()] || !follows(lag))) {
                    taken[l] = true;
                    source[lag.from()] = true;
                    grown = true;
                }
            }
        }
        for (int l = 0; l < taken.length; l++) {
            Lag lag = project.lags().get(l);
            if (taken[l]) {
                boolean sinceStart = lag.since() == Lag.Point.START;
                int most = lag.most().getAsInt();
                limits.add(new Limit(l, lag.from(), lag.to(), sinceStart, most));
            }
        }
    }

    /** Whether one always begins when it may at the earliest. */
    private boolean follows(Lag lag) {
        Arc[] arcs = into[lag.to()];
        return clocks[lag.to()].free()
                && earliest[lag.to()] <= earliest[lag.from()]
                && arcs.length == 1
                && arcs[0].from() == lag.from()
                && arcs[0].sinceStart() == (lag.since() == Lag.Point.START);
    }

    /** What lies between an activity and those that must follow it in time, and those that must follow them. */
    private BitSet followers(int source, BitSet[] after) {
        BitSet all = new BitSet(size);
        all.set(source);
        boolean grown = true;
        while (grown) {
            int before = all.cardinality();
            for (Limit limit : limits) {
                if (all.get(limit.from())) {
                    after[source].stream()
                            .filter(v -> v == limit.to() || after[v].get(limit.to()))
                            .forEach(all::set);
                }
            }
            grown = all.cardinality() > before;
        }
        return all;
    }

    /** The same with all else that they wait for and that comes later in the sequence. */
    private BitSet withOthers(int source) {
        BitSet all = new BitSet(size);
        for (int v = 0; v < size; v++) {
            all.set(v, ahead[source].member()[v]);
        }
        boolean grown = true;
        while (grown) {
            int before = all.cardinality();
            for (int v : all.stream().filter(u -> u != source).toArray()) {
                for (Arc arc : into[v]) {
                    if (position[arc.from()] > position[source]) {
                        all.set(arc.from());
                    }
                }
            }
            limits.stream().filter(l -> all.get(l.from())).forEach(l -> all.set(l.to()));
            grown = all.cardinality() > before;
        }
        return all;
    }

    /** Who looks ahead does so after what else those ahead wait for, where that does not wait for it itself. */
    private List<Arc> withLooks(List<Arc> arcs, BitSet[] after) {
        List<Arc> all = new ArrayList<>(arcs);
        for (int i = 0; i < size; i++) {
            if (ahead[i] == null) {
                continue;
            }
            for (int v : ahead[i].nodes()) {
                for (Arc arc : into[v]) {
                    int k = arc.from();
                    if (!ahead[i].member()[k] && !after[i].get(k) && !after[k].get(i)) {
                        all.add(new Arc(k, i, false, 0));
                        include(after, k, i);
                    }
                }
            }
        }
        return all;
    }

    private void include(BitSet[] after, int from, int to) {
        for (int v = 0; v < size; v++) {
            if (v == from || after[v].get(from)) {
                after[v].set(to);
                after[v].or(after[to]);
            }
        }
    }

    /** A run of the rule. Belongs to one thread. */
    final class Day {
        private final int[] starts = new int[size];
        private final int[] ends = new int[size];
        private final int[] thoughtStarts = new int[size];
        private final int[] thoughtEnds = new int[size];
        private final int[] putOff = new int[size];
        private final boolean[] marked = new boolean[size];

        int start(int activity) {
            return starts[activity];
        }

        int end(int activity) {
            return ends[activity];
        }

        boolean misses(Limit limit) {
            int since = limit.sinceStart() ? starts[limit.from()] : ends[limit.from()];
            return starts[limit.to()] - since > limit.most();
        }

        /** Lets activities take so many minutes, by index. */
        void pass(int... minutes) {
            for (int v : sequence) {
                int start = clocks[v].startFrom(waited(v));
                if (ahead[v] != null) {
                    start = lookedAhead(v, start);
                }
                starts[v] = start;
                ends[v] = clocks[v].endOf(start, v < activities ? minutes[v] : 0);
            }
        }

        private int waited(int v) {
            int at = earliest[v];
            for (Arc arc : into[v]) {
                at = Math.max(at, over(arc));
            }
            return at;
        }

        private int over(Arc arc) {
            return (arc.sinceStart() ? starts[arc.from()] : ends[arc.from()]) + arc.least();
        }

        private int lookedAhead(int v, int first) {
            int start = first;
            for (int turn = 0; turn < TURNS; turn++) {
                int later = thought(v, start);
                if (later <= start) {
                    return start;
                }
                start = clocks[v].startFrom(later);
            }
            return first;
        }

        /** The start itself when all that must follow in time could; else a later one to try. */
        private int thought(int v, int start) {
            Ahead look = ahead[v];
            for (int u : look.nodes()) {
                putOff[u] = 0;
            }
            thoughtStarts[v] = start;
            thoughtEnds[v] = clocks[v].endOf(start, planned[v]);
            for (int turn = 0, k = 0; k < look.nodes().length && turn < TURNS; k++) {
                int u = look.nodes()[k];
                int at = Math.max(earliest[u], putOff[u]);
                for (Arc arc : into[u]) {
                    at = Math.max(at, expected(look, arc, start));
                }
                thoughtStarts[u] = clocks[u].startFrom(at);
                thoughtEnds[u] = clocks[u].endOf(thoughtStarts[u], planned[u]);
                for (Limit limit : look.limits().get(k)) {
                    int from = limit.from();
                    int least = thoughtStarts[u] - limit.most();
                    if (least > (limit.sinceStart() ? thoughtStarts[from] : thoughtEnds[from])) {
                        int later = limit.sinceStart()
                                ? least
                                : clocks[from].beginToEnd(thoughtStarts[from], planned[from], least);
                        if (from == v) {
                            return later;
                        }
                        putOff[from] = later;
                        k = -1;
                        turn++;
                        break;
                    }
                }
            }
            return start;
        }

        /** Of what runs only its start and its planned time are known. */
        private int expected(Ahead look, Arc arc, int now) {
            int from = arc.from();
            if (look.member()[from]) {
                return (arc.sinceStart() ? thoughtStarts[from] : thoughtEnds[from]) + arc.least();
            }
            if (arc.sinceStart() || ends[from] <= now) {
                return over(arc);
            }
            return Math.max(now, clocks[from].endOf(starts[from], planned[from])) + arc.least();
        }

        /**
         * Marks what the start of an activity hung on in the last pass, back to where nothing held it up: of what it waited
         * for, what was over last. Several at the same minute all count.
         */
        boolean[] hungOn(int last) {
            Arrays.fill(marked, false);
            marked[last] = true;
            for (int k = position[last]; k >= 0; k--) {
                int v = sequence[k];
                if (marked[v]) {
                    int at = waited(v);
                    for (Arc arc : into[v]) {
                        marked[arc.from()] |= at > earliest[v] && over(arc) == at;
                    }
                }
            }
            return marked;
        }
    }
}
