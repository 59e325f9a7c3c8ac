package baywright.cli;

import baywright.money.CapFit;
import baywright.money.Outlook;
import baywright.money.Quote;
import baywright.money.Refusal;
import baywright.plan.Plan;
import baywright.plan.Step;
import baywright.site.Numbers;
import baywright.site.PlanOption;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.Job;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code baywright plan options JOB}: what a job costs when less of it is done, side by side. Each option is a plan of its own
 * that is proved, priced and simulated.
 */
@Command(name = "options", resourceBundle = CommandTree.HELP)
final class PlanOptionsCommand implements Callable<Integer> {

    private static final String INDENT = "  ";

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--without", paramLabel = "STEP[,STEP]", descriptionKey = "without")
    private List<String> without = List.of();

    /** A part of the plan under a name. */
    private record Choice(String title, Plan plan) {}

    /** What a choice comes to. */
    private record Answer(Choice choice, WorkedJob worked) {}

    PlanOptionsCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        OpenedJob opened = OpenedJob.at(session, job);
        Site site = opened.site();
        List<Answer> answers = choices(opened.job()).stream()
                .map(choice -> new Answer(choice, site.work(opened.job().withPlan(choice.plan()))))
                .toList();
        if (session.json()) {
            ObjectNode all = Answers.object();
            all.put("job", opened.job().id());
            ArrayNode options = all.putArray("options");
            answers.forEach(answer -> options.add(json(site, answer)));
            all.set("warnings", ProblemPrinter.json(opened.warnings()));
            Answers.print(session, all);
        } else {
            print(opened, answers);
        }
        boolean any = answers.stream().anyMatch(answer -> answer.worked().offer() instanceof Quote);
        return any ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    /** By priority, those that differ, and what was asked for. */
    private List<Choice> choices(Job job) {
        List<Choice> choices = new ArrayList<>();
        List<Step> all = job.plan().steps();
        for (PlanOption option : PlanOption.of(job.plan())) {
            choices.add(new Choice(session.text("options.up-to-" + Answers.word(option.upTo())), option.plan()));
        }
        for (String given : without) {
            Set<String> left = new TreeSet<>(List.of(given.split(",", -1)));
            for (String name : left) {
                if (all.stream().noneMatch(step -> isCalled(step, name))) {
                    throw session.badInput("options.no-step", name);
                }
            }
            choices.add(new Choice(
                    session.text("options.without", String.join(", ", left)),
                    new Plan(all.stream()
                            .filter(step -> left.stream().noneMatch(name -> isCalled(step, name)))
                            .toList())));
        }
        return choices;
    }

    private static boolean isCalled(Step step, String name) {
        return step.id().equals(name) || step.stage().equals(name);
    }

    private void print(OpenedJob opened, List<Answer> answers) {
        Numbers numbers = new Numbers(opened.site().shop().locale());
        session.say(
                "options.title",
                opened.job().title(),
                opened.site().shop().currency().getCode());
        Table table = new Table(
                "~" + session.text("options.option"),
                ">" + session.text("quote.hands-on"),
                ">" + session.text("figure.price"),
                ">" + session.text("quote.with-contingency"),
                session.text("quote.cap"),
                ">" + session.text("options.left"),
                ">" + session.text("options.loss"));
        for (Answer answer : answers) {
            if (answer.worked().offer() instanceof Quote quote) {
                table.add(
                        answer.choice().title(),
                        numbers.duration(quote.ledger().minutes()),
                        numbers.coins(quote.price().gross()),
                        numbers.coins(quote.range().high().gross()),
                        quote.cap().map(fit -> fit(numbers, fit)).orElse(""),
                        quote.margin()
                                .afterAll()
                                .map(p -> numbers.fixed(p, 1) + " %")
                                .orElse("–"),
                        numbers.fixed(BigDecimal.valueOf(100 * loss(opened.site(), answer.worked(), quote)), 1) + " %");
            } else {
                int stops = ((Refusal) answer.worked().offer()).stops().size();
                table.add(answer.choice().title(), "–", "–", "–", session.text("options.stopped", stops), "–", "–");
            }
        }
        table.print(session.console(), INDENT);
        session.say("options.note");
    }

    private String fit(Numbers numbers, CapFit fit) {
        return fit.fits()
                ? session.text("quote.fits", numbers.coins(fit.spare()))
                : session.text("quote.over", numbers.coins(fit.over()));
    }

    private static double loss(Site site, WorkedJob worked, Quote quote) {
        return site.outlook(worked, quote, Outlook.usual()).lossAt(quote.price().net());
    }

    private static ObjectNode json(Site site, Answer answer) {
        ObjectNode one = Answers.object();
        one.put("option", answer.choice().title());
        ArrayNode steps = one.putArray("steps");
        answer.choice().plan().steps().forEach(step -> steps.add(step.id()));
        if (answer.worked().offer() instanceof Quote quote) {
            one.put("quoted", true);
            one.put("minutes", Answers.figure(quote.ledger().minutes()));
            one.put("net", quote.price().net().getAmount());
            one.put("gross", quote.price().gross().getAmount());
            one.put("high", quote.range().high().gross().getAmount());
            quote.cap().ifPresent(fit -> one.put("fits", fit.fits()));
            quote.margin().afterAll().ifPresent(p -> one.put("afterAllPercent", Answers.figure(p)));
            one.put("lossChance", Answers.figure(BigDecimal.valueOf(loss(site, answer.worked(), quote))));
        } else {
            one.put("quoted", false);
            one.put("stops", ((Refusal) answer.worked().offer()).stops().size());
        }
        return one;
    }
}
