package baywright.cli;

import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.safety.SafetyCodes;
import baywright.site.JudgedJob;
import baywright.site.Site;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What hurts people only because of the days, people and bays of a timetable, and all that stops it. */
final class TimetableDangers {

    private final Session session;
    private final Site site;
    private final List<JudgedJob> judged;

    /**
     * Of the jobs of a timetable.
     *
     * @param judged each by the timetable
     */
    TimetableDangers(Session session, Site site, List<JudgedJob> judged) {
        this.session = session;
        this.site = site;
        this.judged = judged;
    }

    /** Whether nothing about safety stops a job. */
    boolean hold() {
        return judged.stream().allMatch(j -> j.safety().holds());
    }

    /** Nothing where nothing is to be told. */
    void print() {
        boolean first = true;
        for (JudgedJob job : judged) {
            List<Finding> told = told(job);
            if (told.isEmpty()) {
                continue;
            }
            if (first) {
                session.console().out().println();
                session.say("timetable.dangers");
            }
            first = false;
            if (judged.size() > 1) {
                session.say("timetable.dangers.job", job.job().title());
            }
            printer(job).print(told);
            String shown = session.shown(
                    site.workspace().root().resolve("jobs").resolve(job.job().id()));
            Wrap.lines(session.text("timetable.dangers.read-on", session.command(), shown), Console.WIDTH)
                    .forEach(session.console().out()::println);
        }
    }

    ArrayNode json() {
        ArrayNode all = Answers.array();
        for (JudgedJob job : judged) {
            List<Finding> told = told(job);
            if (!told.isEmpty()) {
                ObjectNode one = all.addObject();
                one.put("job", job.job().id());
                one.put("holds", job.safety().holds());
                one.set("findings", printer(job).json(told));
            }
        }
        return all;
    }

    private FindingPrinter printer(JudgedJob job) {
        return new FindingPrinter(
                session, session.sentences(job.setting(), job.job().plan()));
    }

    private static List<Finding> told(JudgedJob job) {
        return job.safety().findings().stream()
                .filter(f -> f.severity() == Severity.STOP || f.code().equals(SafetyCodes.KEEP_APART))
                .toList();
    }
}
