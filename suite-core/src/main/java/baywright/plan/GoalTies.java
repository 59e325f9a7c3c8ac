package baywright.plan;

import baywright.plan.Explanation.Account;
import baywright.plan.Explanation.Where;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How the steps of a plan serve the goals of its job: by what they leave to the end, or through steps that rely on them. */
public final class GoalTies {

    /**
     * A step serves a goal.
     *
     * @param goal    the goal
     * @param wants   states of the goal that the step leaves to the end, with the zones; without a place; none when it
     *                serves the goal through later steps only
     * @param through ids of later steps that rely on it, directly or not, and leave a state of the goal to the end, in the
     *                plan's order; told only when {@code wants} is empty
     */
    public record Tie(AskedGoal goal, List<Where> wants, List<String> through) {
        public Tie {
            wants = List.copyOf(wants);
            through = List.copyOf(through);
        }
    }

    private final Setting setting;
    private final StateIndex states;
    private final List<AskedGoal> goals;
    private final List<GoalEnd> ends;
    private final Explanation explanation;
    private final Map<String, Map<AskedGoal, List<Where>>> direct = new LinkedHashMap<>();

    /** Ties a plan to goals. */
    public GoalTies(Setting setting, Plan plan, List<AskedGoal> goals) {
        this(setting, plan, goals, Explanation.of(setting, plan));
    }

    /** Ties a plan that is explained already to goals. */
    public GoalTies(Setting setting, Plan plan, List<AskedGoal> goals, Explanation explanation) {
        Prover prover = Prover.forSetting(setting);
        this.setting = setting;
        this.explanation = explanation;
        this.goals = List.copyOf(goals);
        states = prover.states();
        ends = GoalEnd.of(setting, goals, prover.prove(plan));
        for (Account account : explanation.steps()) {
            Map<AskedGoal, List<Where>> wants = new LinkedHashMap<>();
            for (AskedGoal goal : goals) {
                List<Where> some = wants(account, goal);
                if (!some.isEmpty()) {
                    wants.put(goal, some);
                }
            }
            direct.putIfAbsent(account.step(), wants);
        }
    }

    private List<Where> wants(Account account, AskedGoal goal) {
        List<Where> wants = new ArrayList<>();
        for (Wish wish : goal.wishes()) {
            int state = states.of(wish.state());
            List<String> zones = state < 0
                    ? List.of()
                    : GoalEnd.zones(wish, setting).stream()
                            .filter(zone -> leaves(account, state, zone))
                            .toList();
            if (!zones.isEmpty()) {
                wants.add(new Where(wish.state(), zones, Optional.empty()));
            }
        }
        return wants;
    }

    /** A worked-out state is left by whoever leaves one of its parts; on the vehicle as a whole, by whoever does somewhere. */
    private boolean leaves(Account account, int state, String zone) {
        for (int part : states.parts(state)) {
            String id = states.id(part);
            boolean anywhere = zone.equals(VehicleIndex.VEHICLE) || !states.isZoneScope(part);
            if (account.lasts().stream()
                    .anyMatch(
                            w -> w.state().equals(id) && (anywhere || w.zones().contains(zone)))) {
                return true;
            }
        }
        return false;
    }

    /** The goals that were tied. */
    public List<AskedGoal> goals() {
        return goals;
    }

    /** What the plan leaves of each goal that asks for something on this vehicle. */
    public List<GoalEnd> ends() {
        return ends;
    }

    GoalEnd end(AskedGoal goal) {
        return ends.stream().filter(e -> e.goal().equals(goal)).findFirst().orElseThrow();
    }

    /** Whether a step serves a goal, directly or through others. */
    boolean serves(String step, AskedGoal goal) {
        return closure(step, List.of()).stream()
                .anyMatch(id -> direct.getOrDefault(id, Map.of()).containsKey(goal));
    }

    /**
     * The goals that a step serves, in the job's order.
     *
     * @param step    its id
     * @param byRules ids of later steps that a rule forbids without it
     */
    public List<Tie> of(String step, List<String> byRules) {
        Set<String> later = closure(step, byRules);
        List<Tie> all = new ArrayList<>();
        for (AskedGoal goal : goals) {
            List<Where> wants = direct.getOrDefault(step, Map.of()).getOrDefault(goal, List.of());
            List<String> through = !wants.isEmpty()
                    ? List.of()
                    : explanation.steps().stream()
                            .map(Account::step)
                            .filter(id -> later.contains(id) && direct.get(id).containsKey(goal))
                            .toList();
            if (!wants.isEmpty() || !through.isEmpty()) {
                all.add(new Tie(goal, wants, through));
            }
        }
        return all;
    }

    /** A step with all that rely on it; the accounts are in the plan's order, so that one pass finds them. */
    private Set<String> closure(String step, List<String> byRules) {
        Set<String> all = new LinkedHashSet<>(byRules);
        all.add(step);
        for (Account account : explanation.steps()) {
            if (all.contains(account.step())) {
                account.carries().forEach(link -> all.add(link.step()));
            }
        }
        return all;
    }
}
