package example.roofwork;

import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.ZoneChoice;
import baywright.site.JudgedJob;
import baywright.swing.api.FindingRule;
import baywright.swing.api.Remark;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A roof above the shoulders is worked on from a platform, not from a ladder or a wheel (common practice, no source). */
final class RoofRule implements FindingRule {

    private static final String ROOF = "roof";
    private static final List<String> TALL = List.of("medium-van", "large-off-road");

    @Override
    public String id() {
        return "roof-work";
    }

    @Override
    public List<Remark> judge(JudgedJob judged) {
        if (!TALL.contains(judged.job().vehicle().shape())) {
            return List.of();
        }
        return steps(judged)
                .map(step -> new Remark(
                        id(),
                        Severity.NOTE,
                        Optional.of(step.id()),
                        Optional.of(ROOF),
                        "The roof of a tall vehicle: set up a work platform with a rail."))
                .toList();
    }

    /** The steps of a job that work on the roof. */
    static Stream<Step> steps(JudgedJob judged) {
        return judged.job().plan().steps().stream()
                .filter(step -> ZoneChoice.resolve(step.zones(), judged.setting().shape()).contains(ROOF));
    }
}
