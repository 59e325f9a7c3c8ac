package baywright.swing.safety;

import baywright.safety.Caution;
import baywright.safety.JobSafety;
import baywright.safety.Remedy;
import baywright.swing.api.Change;
import baywright.swing.api.Desk;
import baywright.workspace.Job;
import baywright.workspace.JobEdit;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.function.UnaryOperator;

/** Every edit of what the chosen job says about its safety, each one change on the desk that can be undone. */
final class SafetyEdits {

    private final Desk desk;

    SafetyEdits(Desk desk) {
        this.desk = desk;
    }

    /** @throws IllegalArgumentException when the job could not be so; nothing is changed then */
    private void change(String title, String joins, UnaryOperator<JobSafety> how) {
        desk.state().job().ifPresent(job -> {
            Job changed = JobEdit.of(job).safety(how.apply(job.safety())).job();
            take(title, joins, job, changed);
        });
    }

    private void take(String title, String joins, Job before, Job after) {
        if (!after.equals(before)) {
            desk.change(new Change(title, joins, shop -> shop.withJob(after)));
        }
    }

    /** @throws IllegalArgumentException when nobody is named or the time is out of range */
    void answer(Caution caution, String by, LocalDateTime at) {
        change(
                Words.of("change.answer", caution.title()),
                "",
                safety -> safety.acknowledged(new JobSafety.Acknowledgement(caution.id(), by.strip(), at)));
    }

    void takeBack(Caution caution) {
        change(Words.of("change.take-back", caution.title()), "", safety -> safety.withoutAnswer(caution.id()));
    }

    /** @throws IllegalArgumentException when a figure is out of range */
    void climate(JobSafety.DayClimate air) {
        change(
                Words.of("change.climate", desk.readout().day(air.day())),
                "safety.climate." + air.day(),
                safety -> safety.with(air));
    }

    void clearClimate(LocalDate day) {
        change(
                Words.of("change.climate.clear", desk.readout().day(day)),
                "safety.climate." + day,
                safety -> safety.withoutClimate(day));
    }

    /** A way out that was found for this plan and these words; when they have been edited meanwhile nothing is done. */
    void apply(String title, Remedy remedy, Job found) {
        desk.state()
                .job()
                .filter(job -> job.plan().equals(found.plan()) && job.safety().equals(found.safety()))
                .ifPresent(job -> {
                    Remedy.Change change = remedy.applyTo(job.plan(), job.safety());
                    take(title, "", job, job.withPlan(change.plan(), change.safety()));
                });
    }
}
