package baywright.swing.plan;

import baywright.plan.ComposeText;
import baywright.plan.GoalComposition;
import baywright.plan.Placing;
import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.schedule.ShopScheduler;
import baywright.site.FittedGoals;
import baywright.site.Numbers;
import baywright.site.PlanLimits;
import baywright.site.Site;
import baywright.site.TimetableText;
import baywright.site.WorkedJob;
import baywright.swing.api.Desk;
import baywright.swing.api.Notice;
import baywright.swing.api.Task;
import baywright.workspace.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** What lasts too long for the event thread: composing, placing a step, working out a plan kept aside. */
final class PlanTasks {

    private final Desk desk;
    private final PlanEdits edits;

    PlanTasks(Desk desk, PlanEdits edits) {
        this.desk = desk;
        this.edits = edits;
    }

    private Optional<Site> site() {
        return desk.state().shop().map(shop -> shop.site());
    }

    private void failed(Exception fault) {
        desk.say(Notice.failed(Words.of("task.failed", String.valueOf(fault.getMessage()))));
    }

    /** Composes a plan from the job's goals and shows what it would be. */
    void compose(Consumer<ComparePanel.Pair> show) {
        Optional<Job> job = desk.state().job();
        if (job.isEmpty() || site().isEmpty()) {
            return;
        }
        if (job.get().goals().isEmpty()) {
            desk.say(new Notice(Notice.Weight.NOTE, Words.of("compose.no-goals"), Optional.empty()));
            return;
        }
        Site site = site().get();
        Job now = job.get();
        desk.run(new Task<>(
                Words.of("compose.task"),
                progress -> {
                    FittedGoals fitted = site.compose(now, PlanLimits.of(now), progress::cancelled);
                    return new Composed(site.work(now), fitted, chain(site, fitted));
                },
                done -> show.accept(pair(done)),
                this::failed));
    }

    /**
     * A composed plan beside today's.
     *
     * @param chain what its end hangs on, where it is late
     */
    private record Composed(WorkedJob today, FittedGoals fitted, List<String> chain) {
        WorkedJob worked() {
            return fitted.shown().composed().worked();
        }
    }

    private List<String> chain(Site site, FittedGoals fitted) {
        Locale locale = desk.readout().locale();
        List<Job> jobs = List.of(fitted.shown().composed().worked().job());
        TimetableText texts = new TimetableText(site, jobs, new Numbers(locale), locale);
        return fitted.isLate()
                ? site.timed(jobs, ShopScheduler.Effort.AT_ONCE)
                        .map(timed -> texts.chain(timed.timetable().entries()))
                        .orElse(List.of())
                : List.of();
    }

    private ComparePanel.Pair pair(Composed done) {
        GoalComposition composition = done.fitted().shown().composed().composed();
        ComposeText texts = new ComposeText(composition, desk.readout().locale());
        List<String> notes = new ArrayList<>();
        notes.add(Words.of(
                composition.grantsAllMusts() ? "compose.granted" : "compose.not-granted",
                composition.goals().size() - composition.missed().size(),
                composition.goals().size() + done.fitted().out().size()));
        composition.missed().stream()
                .flatMap(goal -> composition.unmet(goal).stream())
                .map(unmet -> Words.capital(texts.of(unmet)))
                .distinct()
                .forEach(notes::add);
        notes.addAll(new LimitNotes(done.fitted(), desk.readout()).all());
        notes.addAll(done.chain());
        Plan before = done.today().job().plan();
        return new ComparePanel.Pair(
                Words.of("compose.title"),
                notes,
                Words.of("compare.today"),
                done.today(),
                Words.of("compare.composed"),
                done.worked(),
                Words.of("compose.take"),
                () -> edits.take(
                        Words.of("change.compose"), before, done.worked().job().plan()));
    }

    /** Works out another plan of the job beside today's. */
    void beside(Plan other, Runnable take, Consumer<ComparePanel.Pair> show) {
        Optional<Job> job = desk.state().job();
        if (job.isEmpty() || site().isEmpty()) {
            return;
        }
        Site site = site().get();
        Job now = job.get();
        Job with = now.withPlan(other, now.safety().kept(now.plan(), other));
        desk.run(new Task<>(
                Words.of("variant.task"),
                progress -> List.of(site.work(now), site.work(with)),
                both -> show.accept(new ComparePanel.Pair(
                        Words.of("variant.title"),
                        List.of(),
                        Words.of("compare.today"),
                        both.get(0),
                        Words.of("compare.kept"),
                        both.get(1),
                        Words.of("variant.take"),
                        take)),
                this::failed));
    }

    /**
     * Adds a step of a stage where it does best.
     *
     * @param wished place that is wished for; elsewhere only when that has fewer stops
     * @param added  gets the id of the new step
     */
    void add(String stage, int wished, Consumer<String> added) {
        Optional<Job> job = desk.state().job();
        if (job.isEmpty() || site().isEmpty()) {
            return;
        }
        Site site = site().get();
        Plan plan = job.get().plan();
        Optional<Step> step = Placing.fresh(site.setting(job.get()), plan, stage);
        if (step.isEmpty()) {
            desk.say(new Notice(
                    Notice.Weight.NOTE,
                    Words.of(
                            "add.nowhere",
                            edits.stage(stage).map(s -> s.title()).orElse(stage)),
                    Optional.empty()));
            return;
        }
        desk.run(new Task<>(
                Words.of("add.task"),
                progress -> Placing.best(site.setting(job.get()), plan, step.get(), wished, progress::cancelled),
                place -> {
                    edits.add(step.get(), place);
                    added.accept(step.get().id());
                },
                this::failed));
    }

    /** Adds a step of a stage at a place, whatever stands against it. */
    void addAt(String stage, int place, Consumer<String> added) {
        desk.state()
                .job()
                .flatMap(job -> site().flatMap(site -> Placing.fresh(site.setting(job), job.plan(), stage)))
                .ifPresent(step -> {
                    edits.add(step, place);
                    added.accept(step.id());
                });
    }

    /** Reads a worked job's figures off. */
    void figures(WorkedJob worked, Consumer<PlanFigures> done) {
        site().ifPresent(site -> desk.run(new Task<>(
                Words.of("figures.task"),
                progress -> PlanFigures.of(
                        worked, site.shop().name(), desk.readout().locale()),
                done,
                this::failed)));
    }
}
