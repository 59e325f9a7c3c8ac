package baywright.cli;

import baywright.plan.AskedGoal;
import baywright.plan.Explanation;
import baywright.plan.Explanation.Account;
import baywright.plan.Explanation.Strip;
import baywright.plan.FilmBudget;
import baywright.plan.Finding;
import baywright.plan.GoalTies;
import baywright.plan.Plan;
import baywright.plan.Prover;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.script.Nearest;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code baywright plan explain JOB STEP|ZONE}: why a step is there, or what happens to a zone. */
@Command(name = "explain", resourceBundle = CommandTree.HELP)
final class PlanExplainCommand implements Callable<Integer> {

    private final Session session;

    @Parameters(index = "0", paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Parameters(index = "1", paramLabel = "STEP|ZONE", arity = "1", descriptionKey = "about")
    private String about;

    PlanExplainCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        Setting setting = opened.site().setting(opened.job());
        Plan plan = opened.job().plan();
        Explanation explanation = Explanation.of(setting, plan);
        GoalTies ties = new GoalTies(setting, plan, AskedGoal.of(opened.job().goals(), setting), explanation);
        ExplanationPrinter printer = new ExplanationPrinter(session, setting, plan, ties);
        List<Step> steps = plan.steps().stream()
                .filter(s -> s.id().equals(about) || s.stage().equals(about))
                .toList();
        Optional<Strip> strip = explanation.zone(about);
        if (!steps.isEmpty()) {
            List<Account> accounts = steps.stream()
                    .flatMap(s -> explanation.step(s.id()).stream())
                    .toList();
            printer.steps(opened, accounts);
        } else if (strip.isPresent()) {
            List<Finding> there = Prover.prove(setting, plan).findings().stream()
                    .filter(f -> f.zones().contains(about))
                    .toList();
            printer.zone(opened, strip.get(), FilmBudget.of(setting, plan), there);
        } else {
            throw unknown(plan, explanation);
        }
        return ExitStatus.FINE;
    }

    private BadInput unknown(Plan plan, Explanation explanation) {
        Set<String> known = new LinkedHashSet<>();
        plan.steps().forEach(s -> {
            known.add(s.id());
            known.add(s.stage());
        });
        explanation.strips().forEach(s -> known.add(s.zone()));
        String hint = Nearest.to(about, known)
                .map(near -> session.text("nearest", near))
                .orElse("");
        return session.badInput("why.none", about, hint);
    }
}
