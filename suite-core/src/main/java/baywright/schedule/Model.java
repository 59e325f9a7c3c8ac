package baywright.schedule;

import baywright.schedule.Cumulative.Task;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A project as bounds and statements about them. */
final class Model {

    final Bounds bounds = new Bounds();
    final Project project;

    /** Variable of each activity's start. */
    final int[] starts;

    /** For each need of each activity a variable for each resource that can serve; empty when there is no choice. */
    final int[][][] choices;

    /** The same for holds. */
    final int[][] holdChoices;

    final int goal;

    private final int[] ends;
    private final int[] plus;
    private final List<List<Task>> perResource = new ArrayList<>();
    private final List<Course> courses;
    private final List<Served> served = new ArrayList<>();
    private final Map<Set<Integer>, List<Task>> together = new HashMap<>();
    private final Set<Set<Integer>> groups = new LinkedHashSet<>();

    private record Joint(Need need, int start, int end, int plus, boolean solid) {}

    private final List<Joint> joints = new ArrayList<>();

    /** An activity that a resource serves, through a hold or not, if a variable is 1; -1: it does. */
    private record Served(int resource, int activity, boolean held, int present) {}

    Model(Project project) {
        this.project = project;
        courses = project.activities().stream().map(Course::new).toList();
        int n = project.activities().size();
        starts = new int[n];
        ends = new int[n];
        plus = new int[n];
        choices = new int[n][][];
        project.resources().forEach(r -> perResource.add(new ArrayList<>()));
        for (int i = 0; i < n; i++) {
            times(i, project.activities().get(i));
        }
        project.lags().forEach(this::lag);
        for (int i = 0; i < n; i++) {
            Activity activity = project.activities().get(i);
            List<Need> needs = activity.needs();
            choices[i] = new int[needs.size()][];
            for (int k = 0; k < needs.size(); k++) {
                choices[i][k] = serve(needs.get(k), starts[i], ends[i], plus[i], true, activity.minutes() > 0);
                served(i, needs.get(k), choices[i][k], false);
            }
        }
        holdChoices = new int[project.holds().size()][];
        for (int h = 0; h < holdChoices.length; h++) {
            Hold hold = project.holds().get(h);
            holdChoices[h] = hold(hold);
            for (int activity : hold.activities()) {
                served(activity, hold.need(), holdChoices[h], true);
            }
        }
        capacities();
        budgets();
        rests();
        goal = goal();
    }

    private void times(int i, Activity activity) {
        int last = Math.min(activity.latest(), project.horizon() - activity.minutes());
        starts[i] = bounds.variable(activity.earliest(), last);
        if (activity.rigid()) {
            ends[i] = starts[i];
            plus[i] = activity.minutes();
        } else {
            ends[i] = bounds.variable(activity.earliest() + activity.minutes(), project.horizon());
            bounds.difference(starts[i], ends[i], activity.minutes());
        }
        if (activity.minutes() > 0 && !(activity.rigid() && activity.hours().equals(Hours.ALWAYS))) {
            new Openings(bounds, activity, starts[i], activity.rigid() ? -1 : ends[i]).state();
        }
    }

    private int variable(int activity, Lag.Point point) {
        return point == Lag.Point.START ? starts[activity] : ends[activity];
    }

    private int offset(int activity, Lag.Point point) {
        return point == Lag.Point.START ? 0 : plus[activity];
    }

    private void lag(Lag lag) {
        int from = variable(lag.from(), lag.since());
        int to = variable(lag.to(), lag.until());
        int shift = offset(lag.from(), lag.since()) - offset(lag.to(), lag.until());
        bounds.difference(from, to, shift + lag.least());
        lag.most().ifPresent(most -> bounds.difference(to, from, -shift - most));
    }

    private int[] hold(Hold hold) {
        int start = bounds.variable(0, project.horizon());
        int end = bounds.variable(0, project.horizon());
        bounds.difference(start, end, 0);
        for (int activity : hold.activities()) {
            bounds.difference(start, starts[activity], 0);
            bounds.difference(ends[activity], end, plus[activity]);
        }
        boolean solid = hold.activities().stream()
                .anyMatch(a -> project.activities().get(a).minutes() > 0);
        return serve(hold.need(), start, end, 0, solid, true);
    }

    /** Work of no length takes nobody's time, though it is clear who does it. */
    private int[] serve(Need need, int start, int end, int more, boolean solid, boolean takes) {
        List<Integer> able = need.anyOf().stream()
                .filter(r -> project.resources().get(r).capacity() >= need.amount())
                .toList();
        if (able.size() == need.count()) {
            if (takes) {
                able.forEach(r -> perResource.get(r).add(new Task(start, end, more, solid, need.amount(), -1)));
                joints.add(new Joint(need, start, end, more, solid));
            }
            return new int[0];
        }
        int[] variables = new int[able.size()];
        for (int i = 0; i < variables.length; i++) {
            variables[i] = bounds.variable(0, 1);
            if (takes) {
                perResource.get(able.get(i)).add(new Task(start, end, more, solid, need.amount(), variables[i]));
            }
        }
        new Choice(bounds, variables, need.count()).state();
        groups.add(new HashSet<>(able));
        if (takes) {
            joints.add(new Joint(need, start, end, more, solid));
        }
        return variables;
    }

    /** Each resource by itself, and those that can serve for each other together, which holds whoever serves. */
    private void capacities() {
        for (int r = 0; r < perResource.size(); r++) {
            Resource resource = project.resources().get(r);
            new Cumulative(bounds, resource.capacity(), resource.absences(), perResource.get(r)).state();
        }
        for (Set<Integer> group : groups) {
            List<Resource.Absence> absences = new ArrayList<>();
            int capacity = 0;
            for (int r : group) {
                capacity += project.resources().get(r).capacity();
                absences.addAll(project.resources().get(r).absences());
            }
            List<Task> all = together.computeIfAbsent(group, g -> new ArrayList<>());
            for (Joint joint : joints) {
                if (group.containsAll(joint.need().anyOf())) {
                    int amount = joint.need().amount() * joint.need().count();
                    all.add(new Task(joint.start(), joint.end(), joint.plus(), joint.solid(), amount, -1));
                }
            }
            new Cumulative(bounds, capacity, absences, all).state();
        }
    }

    private void served(int activity, Need need, int[] variables, boolean held) {
        List<Integer> able = need.anyOf().stream()
                .filter(r -> project.resources().get(r).capacity() >= need.amount())
                .toList();
        for (int i = 0; i < able.size(); i++) {
            served.add(new Served(able.get(i), activity, held, variables.length == 0 ? -1 : variables[i]));
        }
    }

    private void budgets() {
        for (Budget budget : project.budgets()) {
            List<BudgetKept.Task> tasks = served.stream()
                    .filter(s -> s.resource() == budget.resource())
                    .map(s -> counted(s.activity(), s.present(), budget.loads().getOrDefault(s.activity(), 0L)))
                    .toList();
            new BudgetKept(bounds, budget.most(), budget.periods(), tasks).state();
        }
        groups.forEach(this::budgetsTogether);
    }

    private BudgetKept.Task counted(int activity, int present, long load) {
        return new BudgetKept.Task(courses.get(activity), starts[activity], present, load);
    }

    /** Those that can serve for each other together, whoever serves, where each has a budget of a kind. */
    private void budgetsTogether(Set<Integer> group) {
        Map<String, List<Budget>> kinds = new java.util.TreeMap<>();
        project.budgets().stream()
                .filter(b -> group.contains(b.resource()))
                .forEach(b ->
                        kinds.computeIfAbsent(b.id(), id -> new ArrayList<>()).add(b));
        for (List<Budget> kind : kinds.values()) {
            Budget first = kind.get(0);
            boolean alike = kind.stream().map(Budget::resource).distinct().count() == group.size()
                    && kind.size() == group.size()
                    && kind.stream()
                            .allMatch(b -> b.periods().equals(first.periods())
                                    && b.loads().equals(first.loads()));
            if (alike) {
                List<BudgetKept.Task> tasks = new ArrayList<>();
                for (int i = 0; i < starts.length; i++) {
                    for (Need need : project.activities().get(i).needs()) {
                        if (group.containsAll(need.anyOf())) {
                            tasks.add(
                                    counted(i, -1, need.count() * first.loads().getOrDefault(i, 0L)));
                        }
                    }
                }
                long most = kind.stream().mapToLong(Budget::most).sum();
                new BudgetKept(bounds, most, first.periods(), tasks).state();
            }
        }
    }

    private void rests() {
        for (Rest rest : project.rests()) {
            List<RestKept.Task> tasks = served.stream()
                    .filter(s -> s.resource() == rest.resource() && !s.held())
                    .map(s -> new RestKept.Task(
                            courses.get(s.activity()),
                            starts[s.activity()],
                            ends[s.activity()],
                            plus[s.activity()],
                            s.present()))
                    .toList();
            new RestKept(bounds, rest, tasks).state();
        }
    }

    private int goal() {
        List<Goal.Term> terms = project.goal().terms();
        List<int[]> parts = new ArrayList<>();
        for (Goal.Term term : terms) {
            int end = bounds.variable(0, project.horizon());
            bounds.difference(ends[term.activity()], end, plus[term.activity()]);
            if (term.weight() > 0) {
                parts.add(new int[] {end, term.weight()});
            }
            if (term.lateWeight() > 0) {
                int late = bounds.variable(0, project.horizon());
                bounds.difference(end, late, -Math.min(term.due(), project.horizon()));
                parts.add(new int[] {late, term.lateWeight()});
            }
        }
        if (parts.size() == 1 && parts.get(0)[1] == 1) {
            return parts.get(0)[0];
        }
        long most =
                parts.stream().mapToLong(p -> (long) p[1] * project.horizon()).sum();
        int total = bounds.variable(0, (int) Math.min(most, Hours.END_OF_TIME));
        new Total(
                        bounds,
                        parts.stream().mapToInt(p -> p[0]).toArray(),
                        parts.stream().mapToInt(p -> p[1]).toArray(),
                        total)
                .state();
        return total;
    }

    /** The timetable of bounds that leave nothing open. */
    Timetable timetable() {
        int n = starts.length;
        List<Integer> from = new ArrayList<>();
        List<Integer> to = new ArrayList<>();
        List<List<List<Integer>>> taken = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Activity activity = project.activities().get(i);
            int start = bounds.least(starts[i]);
            from.add(start);
            to.add(activity.minutes() == 0 ? start : activity.endOf(start));
            List<List<Integer>> needs = new ArrayList<>();
            for (int k = 0; k < activity.needs().size(); k++) {
                needs.add(chosen(activity.needs().get(k), choices[i][k]));
            }
            taken.add(needs);
        }
        List<List<Integer>> held = new ArrayList<>();
        for (int h = 0; h < holdChoices.length; h++) {
            held.add(chosen(project.holds().get(h).need(), holdChoices[h]));
        }
        int[] ending = to.stream().mapToInt(Integer::intValue).toArray();
        return new Timetable(from, to, taken, held, project.goal().at(ending));
    }

    private List<Integer> chosen(Need need, int[] variables) {
        List<Integer> able = need.anyOf().stream()
                .filter(r -> project.resources().get(r).capacity() >= need.amount())
                .toList();
        if (variables.length == 0) {
            return able;
        }
        List<Integer> chosen = new ArrayList<>();
        for (int i = 0; i < variables.length; i++) {
            if (bounds.least(variables[i]) == 1) {
                chosen.add(able.get(i));
            }
        }
        return chosen;
    }

    /** Remembers a timetable as the values to try first. */
    void remember(Timetable timetable, int[] phase) {
        Arrays.fill(phase, Integer.MIN_VALUE);
        for (int i = 0; i < starts.length; i++) {
            phase[starts[i]] = timetable.start(i);
            for (int k = 0; k < choices[i].length; k++) {
                Need need = project.activities().get(i).needs().get(k);
                remember(need, choices[i][k], timetable.taken().get(i).get(k), phase);
            }
        }
        for (int h = 0; h < holdChoices.length; h++) {
            remember(
                    project.holds().get(h).need(),
                    holdChoices[h],
                    timetable.held().get(h),
                    phase);
        }
    }

    private void remember(Need need, int[] variables, List<Integer> chosen, int[] phase) {
        List<Integer> able = need.anyOf().stream()
                .filter(r -> project.resources().get(r).capacity() >= need.amount())
                .toList();
        for (int i = 0; i < variables.length; i++) {
            phase[variables[i]] = chosen.contains(able.get(i)) ? 1 : 0;
        }
    }
}
