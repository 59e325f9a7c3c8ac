package baywright.money;

import baywright.plan.PlanWork;
import baywright.plan.Setting;
import baywright.plan.StepWork;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import java.util.Set;
import java.util.stream.Stream;

/** How well the paint is known when a price is named; it sets the contingency. */
public enum Confidence {
    /** A trial section was made, or is part of the plan, or no paint is taken off. */
    TRIAL_DONE,
    /** Paint is taken off without a trial section. */
    NO_TRIAL,
    /** Paint is taken off single-stage or unknown panels. */
    RISKY;

    private static final String PAINT = "paint";
    private static final String PROVEN = "spot-proven";
    private static final Set<String> RISKY_PAINTS = Set.of("single-stage", "unknown");

    /** What survey and work tell about it. The words looked for are those of the standard library. */
    public static Confidence found(Setting setting, PlanWork work) {
        Set<String> painted = Set.copyOf(setting.shape().zones().stream()
                .filter(zone -> zone.surface().equals(PAINT))
                .map(Zone::id)
                .toList());
        Survey survey = setting.survey();
        if (cut(work, painted).anyMatch(zone -> RISKY_PAINTS.contains(paint(survey, zone)))) {
            return RISKY;
        }
        boolean proven = Stream.concat(
                        Stream.of(survey.states()),
                        survey.zones().values().stream().map(zone -> zone.states()))
                .anyMatch(states -> states.contains(PROVEN));
        boolean trial = work.steps().stream().anyMatch(Confidence::proves);
        return proven || trial || cut(work, painted).findAny().isEmpty() ? TRIAL_DONE : NO_TRIAL;
    }

    /** Painted zones that something takes paint off; what clay may take at most does not count. */
    private static Stream<String> cut(PlanWork work, Set<String> painted) {
        return work.steps().stream()
                .flatMap(step -> step.removals().stream())
                .filter(removal -> removal.micrometres().likely().signum() > 0)
                .map(StepWork.Removal::zone)
                .filter(painted::contains);
    }

    private static String paint(Survey survey, String zone) {
        return survey.zone(zone).facts().getOrDefault(PAINT, survey.facts().getOrDefault(PAINT, ""));
    }

    private static boolean proves(StepWork step) {
        return step.parts().stream()
                .flatMap(part -> part.terms().effects().stream())
                .anyMatch(effect -> effect.sets() && effect.state().equals(PROVEN));
    }
}
