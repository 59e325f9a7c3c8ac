package baywright.safety;

import baywright.plan.Plan;
import baywright.plan.Step;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A way to bring an exposure below its limit: an edit of the plan or of what the job says about its safety. */
public sealed interface Remedy {

    /** A plan with what its job says about safety. */
    record Change(Plan plan, JobSafety safety) {}

    /** The plan and the words after it. */
    Change applyTo(Plan plan, JobSafety safety);

    /** Several people take turns at steps. */
    record Share(List<String> steps, int people) implements Remedy {
        public Share {
            steps = List.copyOf(steps);
        }

        @Override
        public Change applyTo(Plan plan, JobSafety safety) {
            JobSafety changed = safety;
            for (String step : steps) {
                changed = changed.with(step, changed.step(step).shared(people));
            }
            return new Change(plan, changed);
        }
    }

    /** A step and all after it wait for another day. */
    record Move(String step, LocalDateTime at) implements Remedy {
        @Override
        public Change applyTo(Plan plan, JobSafety safety) {
            List<Step> steps = new ArrayList<>();
            plan.steps().forEach(s -> steps.add(s.id().equals(step) ? Remedy.at(s, s.id(), s.zones(), at) : s));
            return new Change(new Plan(steps), safety);
        }
    }

    /** A step is done in parts on several days. */
    record Split(String step, List<Piece> pieces) implements Remedy {
        public Split {
            pieces = List.copyOf(pieces);
        }

        /** One part; the first keeps the step's id and start. */
        public record Piece(String id, List<String> zones, Optional<LocalDateTime> at) {
            public Piece {
                zones = List.copyOf(zones);
            }
        }

        @Override
        public Change applyTo(Plan plan, JobSafety safety) {
            List<Step> steps = new ArrayList<>();
            JobSafety changed = safety;
            for (Step old : plan.steps()) {
                if (!old.id().equals(step)) {
                    steps.add(old);
                    continue;
                }
                for (Piece piece : pieces) {
                    steps.add(Remedy.at(
                            old,
                            piece.id(),
                            piece.zones(),
                            piece.at().orElse(old.at().orElse(null))));
                    if (safety.steps().containsKey(step)) {
                        changed = changed.with(piece.id(), safety.step(step));
                    }
                }
            }
            return new Change(new Plan(steps), changed);
        }
    }

    /** Steps are done with a machine of at most such a level: m/s² or dB(A), by step id. */
    record Gentler(Agent agent, Map<String, BigDecimal> levels) implements Remedy {
        public Gentler {
            levels = java.util.Collections.unmodifiableMap(new TreeMap<>(levels));
        }

        @Override
        public Change applyTo(Plan plan, JobSafety safety) {
            JobSafety changed = safety;
            for (Map.Entry<String, BigDecimal> level : levels.entrySet()) {
                JobSafety.StepSafety old = changed.step(level.getKey());
                Optional<BigDecimal> value = Optional.of(level.getValue());
                changed = changed.with(
                        level.getKey(),
                        agent == Agent.VIBRATION
                                ? new JobSafety.StepSafety(old.people(), value, old.noise())
                                : new JobSafety.StepSafety(old.people(), old.vibration(), value));
            }
            return new Change(plan, changed);
        }
    }

    private static Step at(Step old, String id, List<String> zones, LocalDateTime at) {
        return new Step(id, old.stage(), zones, old.with(), old.priority(), Optional.ofNullable(at), old.drivers());
    }
}
