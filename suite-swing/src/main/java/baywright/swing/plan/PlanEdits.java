package baywright.swing.plan;

import baywright.library.Stage;
import baywright.plan.Edit;
import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.plan.Step.Priority;
import baywright.safety.Remedy;
import baywright.script.Value;
import baywright.site.OpenShop;
import baywright.swing.api.Change;
import baywright.swing.api.Desk;
import baywright.workspace.Job;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Every edit of the chosen job's plan, each one change on the desk that can be undone. What is gone meanwhile is passed over. */
final class PlanEdits {

    private final Desk desk;

    PlanEdits(Desk desk) {
        this.desk = desk;
    }

    private Plan plan() {
        return desk.state().job().map(Job::plan).orElse(new Plan(List.of()));
    }

    private void change(String title, String joins, UnaryOperator<Job> how) {
        desk.state().jobId().ifPresent(id -> desk.change(new Change(title, joins, shop -> changed(shop, id, how))));
    }

    private static OpenShop changed(OpenShop shop, String id, UnaryOperator<Job> how) {
        Optional<Job> before = shop.job(id);
        return before.map(how)
                .filter(after -> !after.equals(before.get()))
                .map(shop::withJob)
                .orElse(shop);
    }

    private void changePlan(String title, String joins, UnaryOperator<Plan> how) {
        change(title, joins, job -> {
            Plan after = how.apply(job.plan());
            return after.equals(job.plan())
                    ? job
                    : job.withPlan(after, job.safety().kept(job.plan(), after));
        });
    }

    private void changeStep(String title, String joins, String id, UnaryOperator<Step> how) {
        changePlan(title, joins, plan -> plan.step(id).map(how).map(plan::with).orElse(plan));
    }

    /** What a step is called in titles of changes. */
    String name(String id) {
        return plan().step(id).map(step -> stageTitle(step.stage())).orElse(id);
    }

    private String stageTitle(String id) {
        return stage(id).map(Stage::title).orElse(id);
    }

    Optional<Stage> stage(String id) {
        return desk.state().shop().map(shop -> shop.site().library().stageById().get(id));
    }

    private String names(List<String> ids) {
        return ids.size() == 1 ? name(ids.get(0)) : Words.of("change.several", ids.size());
    }

    void add(Step step, int place) {
        changePlan(
                Words.of("change.add", stageTitle(step.stage())),
                "",
                plan -> new Edit.Insert(step.withId(plan.freeId()), place).applyTo(plan));
    }

    void copy(List<String> ids) {
        changePlan(Words.of("change.copy", names(ids)), "", plan -> {
            Plan now = plan;
            int place = ids.stream().mapToInt(plan::indexOf).max().orElse(-1) + 1;
            for (String id : ids) {
                Optional<Step> step = plan.step(id);
                if (step.isPresent()) {
                    now = new Edit.Insert(step.get().withId(now.freeId()), place++).applyTo(now);
                }
            }
            return now;
        });
    }

    void drop(List<String> ids) {
        changePlan(Words.of("change.drop", names(ids)), "", plan -> plan.without(ids));
    }

    void move(List<String> ids, int before) {
        changePlan(Words.of("change.move", names(ids)), "", plan -> plan.moved(ids, before));
    }

    void moveUp(List<String> ids) {
        Plan plan = plan();
        int first = ids.stream().mapToInt(plan::indexOf).min().orElse(0);
        changePlan(Words.of("change.up", names(ids)), "", p -> p.moved(ids, first - 1));
    }

    void moveDown(List<String> ids) {
        Plan plan = plan();
        int last = ids.stream().mapToInt(plan::indexOf).max().orElse(0);
        changePlan(Words.of("change.down", names(ids)), "", p -> p.moved(ids, last + 2));
    }

    /** Empty: the usual value. */
    void input(String id, String input, Optional<Value> value) {
        changePlan(
                Words.of("change.input", input, name(id)),
                "plan.input." + id + "." + input,
                plan -> plan.step(id)
                        .map(s -> new Edit.ChangeInput(id, input, value).applyTo(plan))
                        .orElse(plan));
    }

    void zones(String id, List<String> zones) {
        changePlan(
                Words.of("change.zones", name(id)),
                "plan.zones." + id,
                plan -> plan.step(id)
                        .map(s -> new Edit.ChangeZones(id, zones).applyTo(plan))
                        .orElse(plan));
    }

    void priority(String id, Priority priority) {
        changeStep(
                Words.of("change.priority", name(id), Words.of("priority", priority)),
                "",
                id,
                step -> step.withPriority(priority));
    }

    /** Empty: as soon as it can. */
    void start(String id, Optional<LocalDateTime> at) {
        changePlan(
                Words.of("change.start", name(id)),
                "plan.start." + id,
                plan -> plan.step(id)
                        .map(s -> new Edit.Delay(id, at).applyTo(plan))
                        .orElse(plan));
    }

    /** An edit that the core proposes, made to this plan; to another plan nothing is done. */
    void apply(String title, Edit edit, Plan made) {
        changePlan(title, "", plan -> plan.equals(made) ? edit.applyTo(plan) : plan);
    }

    void apply(String title, Remedy remedy) {
        change(title, "", job -> {
            Remedy.Change change = remedy.applyTo(job.plan(), job.safety());
            return job.withPlan(change.plan(), change.safety());
        });
    }

    /** A plan that was made of this one; when it has been edited meanwhile nothing is done. */
    void take(String title, Plan made, Plan plan) {
        changePlan(title, "", before -> before.equals(made) ? plan : before);
    }

    /** Another plan in place of this one. */
    void take(String title, Plan plan) {
        changePlan(title, "", before -> plan);
    }
}
