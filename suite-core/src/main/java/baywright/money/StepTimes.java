package baywright.money;

import baywright.plan.Step.Priority;
import baywright.plan.StepWork;
import baywright.plan.Trail;
import baywright.quantity.ThreePoint;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The time lines of one step. */
final class StepTimes {

    /** The danger that tells of a machine in the hand. */
    private static final String VIBRATION = "vibration";

    private static final BigDecimal SIX = BigDecimal.valueOf(6);

    private StepTimes() {}

    static List<LedgerLine> of(StepWork step, Priority priority, int vehicles) {
        List<LedgerLine> lines = new ArrayList<>();
        BigDecimal times = BigDecimal.valueOf(vehicles);
        for (StepWork.Attended attended : step.attended()) {
            Trail trail = attended.trail();
            lines.add(line(
                    LineKind.HANDS_ON,
                    step,
                    priority,
                    trail.amount().multiply(times),
                    trail.driver(),
                    eachMinutes(attended),
                    trail));
        }
        for (StepWork.SetUp setUp : step.setUps()) {
            lines.add(line(LineKind.SET_UP, step, priority, times, "use", setUp.minutes(), setUp.trail()));
        }
        for (StepWork.Standing standing : step.standing()) {
            lines.add(line(LineKind.STANDING, step, priority, times, "use", standing.usual(), standing.trail()));
        }
        return lines;
    }

    /** Whether a machine runs through the hands-on time: the stage warns of vibration. */
    static boolean runsAMachine(StepWork step) {
        return step.parts().stream()
                .flatMap(part -> part.terms().hazards().risks().stream())
                .anyMatch(risk -> risk.kind().equals(VIBRATION));
    }

    /** Mean minutes for one of the driver, factors included. */
    private static BigDecimal eachMinutes(StepWork.Attended attended) {
        ThreePoint each = attended.each();
        BigDecimal mean = each.least()
                .add(each.likely().multiply(BigDecimal.valueOf(4)))
                .add(each.most())
                .divide(SIX, Rates.PRECISION);
        Trail trail = attended.trail();
        return trail.factors().stream()
                .map(Trail.Applied::by)
                .reduce(mean.multiply(trail.times()), BigDecimal::multiply);
    }

    private static LedgerLine line(
            LineKind kind,
            StepWork step,
            Priority priority,
            BigDecimal quantity,
            String unit,
            BigDecimal rate,
            Trail trail) {
        return new LedgerLine(
                kind,
                Optional.of(step.step()),
                priority,
                step.stage(),
                quantity,
                unit,
                rate,
                List.of(new Origin.Work(trail)));
    }
}
