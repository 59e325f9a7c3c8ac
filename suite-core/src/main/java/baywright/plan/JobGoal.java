package baywright.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What one job is to come to, as it is written: a goal of the library by its id, or states.
 *
 * @param id       its own id, unique in the job, if it has one
 * @param title    words for people; empty: those of the library's goal
 * @param goal     id of a goal of the library; empty: {@code states} say what is wanted
 * @param states   ids of states that must hold when all is done; empty exactly when {@code goal} is given
 * @param zones    where, written as a step writes its zones; empty: wherever the library's goal says
 * @param priority how it is weighed against the others
 * @param worth    what it is worth beside others of the same priority, not negative; empty: as much as any other, 1
 */
public record JobGoal(
        Optional<String> id,
        String title,
        Optional<String> goal,
        List<String> states,
        List<String> zones,
        Step.Priority priority,
        Optional<BigDecimal> worth) {

    public JobGoal {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(priority, "priority");
        states = List.copyOf(states);
        zones = List.copyOf(zones);
        if (goal.isPresent() != states.isEmpty()) {
            throw new IllegalArgumentException(
                    "a goal names a goal of the library or states, not both; got " + goal + " and " + states);
        }
        if (!states.isEmpty() && zones.isEmpty()) {
            throw new IllegalArgumentException("states are wanted on zones; got none for " + states);
        }
        if (worth.filter(w -> w.signum() < 0).isPresent()) {
            throw new IllegalArgumentException(
                    "worth must not be negative, got " + worth.get().toPlainString());
        }
    }

    /** A goal of the library, wherever it says, that must be. */
    public static JobGoal of(String goal) {
        return of(goal, Step.Priority.MUST);
    }

    /** A goal of the library on some zones; none: wherever it says. */
    public static JobGoal of(String goal, Step.Priority priority, String... zones) {
        return new JobGoal(
                Optional.empty(), "", Optional.of(goal), List.of(), List.of(zones), priority, Optional.empty());
    }

    /** The same goal with a worth of its own. */
    public JobGoal worth(BigDecimal other) {
        return new JobGoal(id, title, goal, states, zones, priority, Optional.of(other));
    }
}
