package baywright.swing;

import java.util.List;

/**
 * What the window shows of a workspace; all texts are ready for the reader.
 *
 * @param name name of the shop
 * @param jobs in the order in which they are listed
 */
record ShopView(String name, List<JobView> jobs) {

    /**
     * One job.
     *
     * @param title    its title
     * @param about    vehicle and customer, one line
     * @param trouble  why it could not be worked out; empty when it could
     * @param figures  main figures of its quote, most important last; empty when there is no quote
     * @param steps    its plan
     * @param findings what the proof found, worst first
     */
    record JobView(
            String title,
            String about,
            String trouble,
            List<Figure> figures,
            List<StepView> steps,
            List<FindingView> findings) {
        JobView {
            figures = List.copyOf(figures);
            steps = List.copyOf(steps);
            findings = List.copyOf(findings);
        }

        int count(Grade grade) {
            return (int) findings.stream().filter(f -> f.grade() == grade).count();
        }
    }

    /** A figure with its name. */
    record Figure(String name, String amount) {}

    /** A step of the plan as a row. */
    record StepView(String id, String stage, String zones, String start, String minutes) {}

    /** A finding; {@code step} is empty when it concerns the whole plan. */
    record FindingView(Grade grade, String step, String text) {}

    /** How grave a finding is; each has a shape of its own beside its colour. */
    enum Grade {
        STOP,
        WARN,
        NOTE
    }

    ShopView {
        jobs = List.copyOf(jobs);
    }
}
