package baywright.plan;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/** Copies of steps that differ in one thing. */
final class Steps {

    private Steps() {}

    static Step withZones(Step step, List<String> zones) {
        return new Step(step.id(), step.stage(), zones, step.with(), step.priority(), step.at(), step.drivers());
    }

    static Step withStart(Step step, Optional<LocalDateTime> at) {
        return new Step(step.id(), step.stage(), step.zones(), step.with(), step.priority(), at, step.drivers());
    }
}
