package baywright.plan;

import baywright.library.Goal;
import baywright.library.State;
import baywright.plan.Explanation.Where;
import baywright.script.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a plan leaves of a goal at its end.
 *
 * @param goal  the goal
 * @param holds states of it that hold, on the zones where they do; without a place
 * @param lacks states of it that do not hold, on the zones where they do not; without a place
 */
public record GoalEnd(AskedGoal goal, List<Where> holds, List<Where> lacks) {

    public GoalEnd {
        holds = List.copyOf(holds);
        lacks = List.copyOf(lacks);
    }

    /** The goals in their order; those that ask for nothing on this vehicle are left out, as no plan can miss them. */
    public static List<GoalEnd> of(Setting setting, List<AskedGoal> goals, Proof proof) {
        List<GoalEnd> ends = new ArrayList<>();
        for (AskedGoal goal : goals) {
            List<Where> holds = new ArrayList<>();
            List<Where> lacks = new ArrayList<>();
            for (Wish wish : goal.wishes()) {
                List<String> zones = zones(wish, setting);
                List<String> with = zones.stream()
                        .filter(z -> proof.ends().getOrDefault(z, Set.of()).contains(wish.state()))
                        .toList();
                add(holds, wish, with);
                add(lacks, wish, zones.stream().filter(z -> !with.contains(z)).toList());
            }
            if (!holds.isEmpty() || !lacks.isEmpty()) {
                ends.add(new GoalEnd(goal, holds, lacks));
            }
        }
        return ends;
    }

    /** The rows on which a wish is looked for: a state of the vehicle as a whole is there or not, whatever the zones. */
    static List<String> zones(Wish wish, Setting setting) {
        State state = setting.library().stateById().get(wish.state());
        List<String> zones = ZoneChoice.resolve(wish.zones(), setting.shape()).stream()
                .filter(z -> !z.equals(VehicleIndex.VEHICLE))
                .toList();
        boolean whole = ComposeWishes.vehicleWide(wish)
                || (state != null && state.scope() != State.Scope.ZONE && !zones.isEmpty());
        return whole ? List.of(VehicleIndex.VEHICLE) : zones;
    }

    private static void add(List<Where> to, Wish wish, List<String> zones) {
        if (!zones.isEmpty()) {
            to.add(new Where(wish.state(), zones, Optional.empty()));
        }
    }

    /** Whether all that it asks for holds. */
    public boolean met() {
        return lacks.isEmpty();
    }

    /** The same for one zone alone; empty when the goal asks for nothing there. */
    public Optional<GoalEnd> on(String zone) {
        GoalEnd there = new GoalEnd(goal, on(zone, holds), on(zone, lacks));
        return there.holds.isEmpty() && there.lacks.isEmpty() ? Optional.empty() : Optional.of(there);
    }

    private static List<Where> on(String zone, List<Where> all) {
        return all.stream()
                .filter(w -> w.zones().contains(zone))
                .map(w -> new Where(w.state(), List.of(zone), w.place()))
                .toList();
    }

    /** What it lacks and the other does not. */
    List<Where> lacksBeside(GoalEnd other) {
        List<Where> more = new ArrayList<>();
        for (Where lack : lacks) {
            List<String> zones = lack.zones().stream()
                    .filter(z -> other.lacks.stream()
                            .noneMatch(w ->
                                    w.state().equals(lack.state()) && w.zones().contains(z)))
                    .toList();
            if (!zones.isEmpty()) {
                more.add(new Where(lack.state(), zones, Optional.empty()));
            }
        }
        return more;
    }

    /**
     * What there is to say of the goals of a job: goals that the library does not have warn; then for each goal and each
     * set of zones that lacks the same states of it a finding, which warns for a goal that must be and else is a note.
     */
    public static List<Finding> findings(Setting setting, List<JobGoal> goals, Proof proof) {
        List<String> known = setting.library().goals().stream().map(Goal::id).toList();
        List<Finding> findings = new ArrayList<>();
        goals.stream()
                .flatMap(g -> g.goal().stream())
                .filter(id -> !known.contains(id))
                .distinct()
                .forEach(id -> findings.add(
                        whole(new Reason.GoalGone(id, Nearest.to(id, known).orElse("")))));
        of(setting, AskedGoal.of(goals, setting), proof).forEach(end -> findings.addAll(end.findings()));
        return findings;
    }

    private static Finding whole(Reason reason) {
        return new Finding(Codes.GOAL_GONE, Severity.WARN, Optional.empty(), List.of(), reason);
    }

    private List<Finding> findings() {
        Map<List<String>, List<String>> statesByZones = new LinkedHashMap<>();
        lacks.forEach(w ->
                statesByZones.computeIfAbsent(w.zones(), z -> new ArrayList<>()).add(w.state()));
        Severity severity = goal.priority() == Step.Priority.MUST ? Severity.WARN : Severity.NOTE;
        List<Finding> findings = new ArrayList<>();
        statesByZones.forEach((zones, states) -> findings.add(new Finding(
                Codes.GOAL_MISSED,
                severity,
                Optional.empty(),
                zones,
                new Reason.GoalMissed(goal.id(), goal.title(), states))));
        return findings;
    }
}
