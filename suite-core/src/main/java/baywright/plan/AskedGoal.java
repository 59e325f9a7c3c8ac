package baywright.plan;

import baywright.library.Goal;
import baywright.plan.Step.Priority;
import baywright.script.Place;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A goal of a job, with the wishes that it comes down to on this vehicle.
 *
 * @param id       the goal's own id, or the library's, or a number made for it; unique among the goals of the job
 * @param title    words for people
 * @param priority how it is weighed against the others
 * @param worth    what it is worth beside others of the same priority, not negative
 * @param wishes   states on zones; empty when the vehicle has no zone that the goal is about
 * @param place    where the library declares it; empty for states that the job names itself
 */
public record AskedGoal(
        String id, String title, Priority priority, BigDecimal worth, List<Wish> wishes, Optional<Place> place) {

    public AskedGoal {
        wishes = List.copyOf(wishes);
    }

    /**
     * The goals of a job on its vehicle, in their order. A goal that the library does not have comes down to nothing.
     */
    public static List<AskedGoal> of(List<JobGoal> goals, Setting setting) {
        Map<String, Goal> known = setting.library().goals().stream()
                .collect(Collectors.toMap(Goal::id, Function.identity(), (a, b) -> a));
        Set<String> taken = new HashSet<>();
        goals.forEach(g -> g.id().ifPresent(taken::add));
        List<AskedGoal> asked = new ArrayList<>();
        for (JobGoal goal : goals) {
            Optional<Goal> of = goal.goal().map(known::get);
            String id = goal.id()
                    .orElseGet(() ->
                            free(goal.goal().orElseGet(() -> goal.states().get(0)), taken));
            String words = of.map(Goal::title).orElseGet(() -> String.join(", ", goal.states()));
            List<Wish> wishes = of.map(g -> wishes(g, goal, setting)).orElseGet(() -> plain(goal));
            asked.add(new AskedGoal(
                    id,
                    goal.title().isEmpty() ? words : goal.title(),
                    goal.priority(),
                    goal.worth().orElse(BigDecimal.ONE),
                    wishes,
                    of.map(Goal::place)));
        }
        return asked;
    }

    private static String free(String like, Set<String> taken) {
        String id = like;
        for (int n = 2; !taken.add(id); n++) {
            id = like + "-" + n;
        }
        return id;
    }

    private static List<Wish> plain(JobGoal goal) {
        return goal.states().stream()
                .map(state -> new Wish(state, goal.zones(), goal.priority()))
                .toList();
    }

    private static List<Wish> wishes(Goal of, JobGoal goal, Setting setting) {
        Set<String> narrowed = new LinkedHashSet<>(ZoneChoice.resolve(goal.zones(), setting.shape()));
        List<Wish> wishes = new ArrayList<>();
        for (Goal.Want want : of.wants()) {
            List<String> zones = want.surfaces().equals(List.of(VehicleIndex.VEHICLE))
                    ? List.of(VehicleIndex.VEHICLE)
                    : setting.shape().zones().stream()
                            .filter(z -> want.surfaces().contains(z.surface()))
                            .map(Zone::id)
                            .filter(z -> goal.zones().isEmpty() || narrowed.contains(z))
                            .toList();
            if (!zones.isEmpty()) {
                want.states().forEach(state -> wishes.add(new Wish(state, zones, goal.priority())));
            }
        }
        return wishes;
    }

    /** Whether the goal wants this state on one of these zones. */
    boolean wants(String state, List<String> zones, Setting setting) {
        return wishes.stream()
                .filter(w -> w.state().equals(state))
                .anyMatch(w -> ComposeWishes.vehicleWide(w)
                        || zones.equals(List.of(VehicleIndex.VEHICLE))
                        || ZoneChoice.resolve(w.zones(), setting.shape()).stream()
                                .anyMatch(zones::contains));
    }
}
