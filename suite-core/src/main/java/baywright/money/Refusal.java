package baywright.money;

import baywright.plan.Finding;
import baywright.plan.Severity;
import java.util.List;

/**
 * A plan that does not prove is not quoted.
 *
 * @param findings everything that the proof found, in its order; at least one stop
 */
public record Refusal(List<Finding> findings) implements Offer {
    public Refusal {
        findings = List.copyOf(findings);
        if (findings.stream().noneMatch(f -> f.severity() == Severity.STOP)) {
            throw new IllegalArgumentException("a refusal needs a finding that stops, got " + findings);
        }
    }

    public List<Finding> stops() {
        return findings.stream().filter(f -> f.severity() == Severity.STOP).toList();
    }
}
