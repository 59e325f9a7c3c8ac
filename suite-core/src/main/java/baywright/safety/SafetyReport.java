package baywright.safety;

import baywright.plan.Finding;
import baywright.plan.Severity;
import java.util.List;

/**
 * What a check of a plan's safety found. It guides; it never says that a shop complies with a law.
 *
 * @param days     what each pair of hands takes in on each day, in order
 * @param findings in stable order
 * @param remedies ways to bring an exposure below its limit; each was tried, proves and stops no more
 */
public record SafetyReport(List<PersonDay> days, List<Finding> findings, List<Remedy> remedies) {

    public SafetyReport {
        days = List.copyOf(days);
        findings = List.copyOf(findings);
        remedies = List.copyOf(remedies);
    }

    /** Whether no finding stops the plan. */
    public boolean holds() {
        return findings.stream().noneMatch(f -> f.severity() == Severity.STOP);
    }
}
