package baywright.safety;

import baywright.library.Item;
import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.plan.StepWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Enough people, trained people, nobody alone where help must be near. */
final class PeopleRule {

    /** Contains isocyanates (REACH, annex XVII, entry 74, from memory). */
    private static final String ISOCYANATES = "EUH204";

    private static final List<String> NOT_ALONE = List.of("lifting", "harmful-air");

    private final SafetyCase all;

    PeopleRule(SafetyCase all) {
        this.all = all;
    }

    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        Hazards hazards = new Hazards(all);
        for (StepWork work : all.work().steps()) {
            for (Item item : hazards.items(work)) {
                if (item.hazards().contains(ISOCYANATES) && !someone(Worker.TWO_PACK)) {
                    SafetyReason reason = new SafetyReason.NotTrained(item.title(), Worker.TWO_PACK);
                    findings.add(finding(SafetyCodes.TRAINED_PERSON, Severity.STOP, work, reason));
                }
            }
            int there = all.people().size();
            int needed = Exposures.hands(all, work);
            if (there > 0 && needed > there) {
                findings.add(finding(
                        SafetyCodes.TOO_FEW_PEOPLE, Severity.STOP, work, new SafetyReason.TooFew(needed, there)));
            } else if (there == 1) {
                Hazards.risks(work).stream()
                        .filter(NOT_ALONE::contains)
                        .findFirst()
                        .ifPresent(risk -> findings.add(
                                finding(SafetyCodes.LONE_WORK, Severity.WARN, work, new SafetyReason.Alone(risk))));
            }
        }
        return findings;
    }

    private boolean someone(String skill) {
        return all.people().stream().anyMatch(p -> p.skills().contains(skill));
    }

    private static Finding finding(String code, Severity severity, StepWork work, SafetyReason reason) {
        return new Finding(code, severity, Optional.of(work.step()), List.of(), reason);
    }
}
