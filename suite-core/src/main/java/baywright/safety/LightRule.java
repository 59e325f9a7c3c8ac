package baywright.safety;

import baywright.plan.Bay;
import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.plan.StepWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Measured light of a bay against what a stage wants. A bay that nobody measured is not judged. */
final class LightRule {

    private LightRule() {}

    static List<Finding> check(SafetyCase all) {
        SafetySettings.LightRule light = all.settings().light();
        Hazards hazards = new Hazards(all);
        List<Finding> findings = new ArrayList<>();
        for (StepWork work : all.work().steps()) {
            Optional<Bay> bay = hazards.place(work);
            Double there = bay.map(b -> light.bays().get(b.id())).orElse(null);
            double wanted = light.wanted(work.stage(), work.family());
            if (there != null && there < wanted) {
                findings.add(new Finding(
                        SafetyCodes.LIGHT,
                        Severity.WARN,
                        Optional.of(work.step()),
                        List.of(),
                        new SafetyReason.Dim(
                                DoseRule.rounded(there, 0), bay.get().title(), DoseRule.rounded(wanted, 0))));
            }
        }
        return findings;
    }
}
