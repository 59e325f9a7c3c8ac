package baywright.cli;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import baywright.site.JudgedJob;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Shows what a proof found. */
final class FindingPrinter {

    private static final String INDENT = "      ";

    private final Session session;
    private final FindingText sentences;

    FindingPrinter(Session session, FindingText sentences) {
        this.session = session;
        this.sentences = sentences;
    }

    void print(List<Finding> findings) {
        findings.forEach(this::print);
    }

    /** The findings of a job's plan and of its safety, whether it holds, and where to read on about safety. */
    void printJudged(JudgedJob judged, String shownJob) {
        List<Finding> findings = judged.findings();
        print(findings);
        Console console = session.console();
        String verdict = judged.holds()
                ? console.paint(Ink.GOOD, session.text("prove.holds"))
                : console.paint(Ink.STOP, session.text("prove.stopped"));
        session.say(
                "prove.verdict",
                judged.job().title(),
                judged.job().plan().steps().size(),
                verdict,
                summary(findings));
        if (!judged.safety().holds()) {
            session.say("safety.read-on", session.command(), shownJob);
        }
    }

    /** The findings of one zone, and whether the plan as a whole holds. */
    void printZone(String zone, List<Finding> shown, JudgedJob judged) {
        print(shown);
        Console console = session.console();
        String verdict = judged.holds()
                ? console.paint(Ink.GOOD, session.text("prove.holds"))
                : console.paint(Ink.STOP, session.text("prove.stopped"));
        session.say(
                "prove.of-zone",
                zone,
                summary(shown),
                verdict,
                judged.findings().size());
    }

    private void print(Finding finding) {
        Console console = session.console();
        String grade =
                console.paint(ink(finding.severity()), session.text("finding." + Answers.word(finding.severity())));
        List<String> lines = Wrap.lines(sentences.of(finding), Console.WIDTH - INDENT.length());
        console.out().println(grade + " ".repeat(Math.max(1, INDENT.length() - Wrap.width(grade))) + lines.get(0));
        lines.stream().skip(1).forEach(line -> console.out().println(INDENT + line));
        console.out().println(INDENT + console.paint(Ink.FAINT, finding.code()));
    }

    static Ink ink(Severity severity) {
        return switch (severity) {
            case STOP -> Ink.STOP;
            case WARN -> Ink.WARN;
            case NOTE -> Ink.NOTE;
        };
    }

    /** One line that counts them: {@code 2 stops, 3 warnings}. */
    String summary(List<Finding> findings) {
        Map<Severity, Integer> counts = new HashMap<>();
        findings.forEach(f -> counts.merge(f.severity(), 1, Integer::sum));
        return session.text(
                "finding.summary",
                counts.getOrDefault(Severity.STOP, 0),
                counts.getOrDefault(Severity.WARN, 0),
                counts.getOrDefault(Severity.NOTE, 0));
    }

    ArrayNode json(List<Finding> findings) {
        ArrayNode all = Answers.array();
        for (Finding finding : findings) {
            ObjectNode one = all.addObject();
            one.put("code", finding.code());
            one.put("severity", Answers.word(finding.severity()));
            finding.step().ifPresentOrElse(step -> one.put("step", step), () -> one.putNull("step"));
            ArrayNode zones = one.putArray("zones");
            finding.zones().forEach(zones::add);
            one.put("sentence", sentences.of(finding));
        }
        return all;
    }
}
