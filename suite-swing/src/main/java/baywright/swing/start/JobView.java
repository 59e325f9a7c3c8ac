package baywright.swing.start;

import baywright.plan.Severity;
import java.util.List;

/**
 * What is shown of a job; all texts are ready for the reader.
 *
 * @param id       its id
 * @param title    its title
 * @param about    vehicle and customer, one line
 * @param trouble  why there is nothing to show; empty when there is
 * @param waiting  whether that is only because it is still being worked out
 * @param figures  main figures of its quote, most important last; empty when there is no quote
 * @param steps    its plan
 * @param findings what the proof found, worst first
 */
record JobView(
        String id,
        String title,
        String about,
        String trouble,
        boolean waiting,
        List<Figure> figures,
        List<StepView> steps,
        List<FindingView> findings) {

    /** A figure with its name. */
    record Figure(String name, String amount) {}

    /** A step of the plan as a row. */
    record StepView(String id, String stage, String zones, String start, String minutes) {}

    /** A finding; {@code step} is empty when it concerns the whole plan. */
    record FindingView(Severity severity, String step, String text) {}

    JobView {
        figures = List.copyOf(figures);
        steps = List.copyOf(steps);
        findings = List.copyOf(findings);
    }

    int count(Severity severity) {
        return (int) findings.stream().filter(f -> f.severity() == severity).count();
    }
}
