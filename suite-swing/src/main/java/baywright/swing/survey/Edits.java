package baywright.swing.survey;

import baywright.swing.api.Change;
import baywright.swing.api.Desk;
import baywright.swing.api.Texts;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import baywright.workspace.Job;
import baywright.workspace.JobEdit;
import java.util.List;
import java.util.function.UnaryOperator;

/** Makes changes of the chosen job. */
final class Edits {

    private final Desk desk;
    private final Texts texts;

    Edits(Desk desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
    }

    Desk desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    /**
     * Changes the chosen job.
     *
     * @param title what the user did
     * @throws IllegalArgumentException when the job could not be so; nothing is changed then
     */
    void job(String title, UnaryOperator<Job> change) {
        desk.state().job().ifPresent(job -> {
            Job changed = change.apply(job);
            if (!changed.equals(job)) {
                desk.change(new Change(title, "", shop -> shop.withJob(changed)));
            }
        });
    }

    /** Changes values of the job beside its survey. */
    void values(String title, UnaryOperator<JobEdit> change) {
        job(title, job -> change.apply(JobEdit.of(job)).job());
    }

    void survey(String title, UnaryOperator<Survey> change) {
        job(title, job -> job.withSurvey(change.apply(job.survey())));
    }

    /** Changes what was found on zones. */
    void zones(String title, List<String> zones, UnaryOperator<ZoneSurvey> change) {
        survey(title, survey -> {
            Survey all = survey;
            for (String zone : zones) {
                all = all.withZone(zone, change.apply(all.zone(zone)));
            }
            return all;
        });
    }
}
