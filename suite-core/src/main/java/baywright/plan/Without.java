package baywright.plan;

import baywright.plan.Explanation.Where;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a plan would be without one of its steps, by proving it both ways.
 *
 * @param brings findings that it then has and does not have now, each with the zones that are new; in the proof's order
 * @param mends  findings that it has now, on other steps or none, and then not
 * @param loses  states that hold at the end now and then not; without a place
 * @param gains  states that hold at the end then and not now; without a place
 * @param goals  goals that are then not met and are met now, or that then lack more
 */
public record Without(
        List<Finding> brings, List<Finding> mends, List<Where> loses, List<Where> gains, List<GoalLoss> goals) {

    /**
     * What becomes of a goal without the step.
     *
     * @param goal    the goal
     * @param loses   states of it that would not hold at the end, on the zones where they hold now; without a place
     * @param stopped ids of steps that serve the goal and that the proof would stop, in the plan's order
     */
    public record GoalLoss(AskedGoal goal, List<Where> loses, List<String> stopped) {
        public GoalLoss {
            loses = List.copyOf(loses);
            stopped = List.copyOf(stopped);
        }
    }

    public Without {
        brings = List.copyOf(brings);
        mends = List.copyOf(mends);
        loses = List.copyOf(loses);
        gains = List.copyOf(gains);
        goals = List.copyOf(goals);
    }

    /**
     * Takes a step out and proves.
     *
     * @param ties how the steps of the plan serve the goals of the job
     * @throws IllegalArgumentException when the plan has no step of that id
     */
    public static Without of(Setting setting, Plan plan, String step, GoalTies ties) {
        Prover prover = Prover.forSetting(setting);
        Proof now = prover.prove(plan);
        Proof then = prover.prove(new Edit.Drop(step).applyTo(plan));
        List<Finding> others = now.findings().stream()
                .filter(f -> !f.step().equals(Optional.of(step)))
                .toList();
        List<Finding> brings = more(then.findings(), now.findings());
        return new Without(
                brings,
                more(others, then.findings()),
                more(setting, now.ends(), then.ends()),
                more(setting, then.ends(), now.ends()),
                goals(ties, plan, brings, GoalEnd.of(setting, ties.goals(), then)));
    }

    /** Takes a step out of a plan whose job says no goals. */
    public static Without of(Setting setting, Plan plan, String step) {
        return of(setting, plan, step, new GoalTies(setting, plan, List.of()));
    }

    private static List<GoalLoss> goals(GoalTies ties, Plan plan, List<Finding> brings, List<GoalEnd> then) {
        Set<String> stopped = new HashSet<>();
        brings.stream()
                .filter(f -> f.severity() == Severity.STOP)
                .forEach(f -> f.step().ifPresent(stopped::add));
        List<GoalLoss> losses = new ArrayList<>();
        for (GoalEnd end : then) {
            List<Where> loses = end.lacksBeside(ties.end(end.goal()));
            List<String> steps = plan.steps().stream()
                    .map(Step::id)
                    .filter(id -> stopped.contains(id) && ties.serves(id, end.goal()))
                    .toList();
            if (!loses.isEmpty() || !steps.isEmpty()) {
                losses.add(new GoalLoss(end.goal(), loses, steps));
            }
        }
        return losses;
    }

    /** What makes two findings the same though their causes or figures differ. */
    private record Matter(String code, Optional<String> step, String about) {
        static Matter of(Finding finding) {
            return new Matter(finding.code(), finding.step(), about(finding.reason()));
        }

        private static String about(Reason reason) {
            if (reason instanceof Reason.NeedUnmet r) {
                return String.join("|", r.anyOf());
            }
            if (reason instanceof Reason.MustNotHold r) {
                return r.state();
            }
            if (reason instanceof Reason.RuleSpeaks r) {
                return r.rule();
            }
            if (reason instanceof Reason.TooSoon r) {
                return r.after();
            }
            return reason instanceof Reason.TooLate r ? r.after() : "";
        }
    }

    private static List<Finding> more(List<Finding> these, List<Finding> thanThose) {
        Map<Matter, Set<String>> known = new HashMap<>();
        thanThose.forEach(
                f -> known.computeIfAbsent(Matter.of(f), m -> new TreeSet<>()).addAll(f.zones()));
        List<Finding> more = new ArrayList<>();
        for (Finding finding : these) {
            Set<String> before = known.get(Matter.of(finding));
            List<String> zones = finding.zones().stream()
                    .filter(z -> before == null || !before.contains(z))
                    .toList();
            if (before == null || !zones.isEmpty()) {
                more.add(new Finding(finding.code(), finding.severity(), finding.step(), zones, finding.reason()));
            }
        }
        return more;
    }

    private static List<Where> more(
            Setting setting, Map<String, Set<String>> these, Map<String, Set<String>> thanThose) {
        Map<String, Set<String>> zonesByState = new TreeMap<>();
        VehicleIndex vehicle = new VehicleIndex(setting.shape());
        for (int row = 0; row < vehicle.rows(); row++) {
            String zone = vehicle.id(row);
            Set<String> others = thanThose.getOrDefault(zone, Set.of());
            these.getOrDefault(zone, Set.of()).stream()
                    .filter(s -> !others.contains(s))
                    .forEach(s -> zonesByState
                            .computeIfAbsent(s, x -> new LinkedHashSet<>())
                            .add(zone));
        }
        List<Where> more = new ArrayList<>();
        zonesByState.forEach((state, zones) -> more.add(new Where(state, List.copyOf(zones), Optional.empty())));
        return more;
    }
}
