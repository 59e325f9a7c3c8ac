package baywright.cli;

import baywright.library.Stage;
import baywright.money.CapFit;
import baywright.money.Position;
import baywright.money.Quote;
import baywright.money.Refusal;
import baywright.plan.AskedGoal;
import baywright.plan.ComposeText;
import baywright.plan.Composition;
import baywright.plan.GoalComposition;
import baywright.plan.Proof;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.plan.Unmet;
import baywright.site.ComposedJob;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.Job;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/** Shows a composed plan step by step, why each step is there, what it comes to and what could not be had. */
final class ComposePrinter {

    private static final String INDENT = "      ";
    private static final int REASONS_SHOWN = 3;

    private final Session session;
    private final Site site;
    private final Job before;
    private final GoalComposition composed;
    private final WorkedJob worked;
    private final ComposeText sentences;
    private final FindingPrinter findings;
    private final Numbers numbers;

    ComposePrinter(Session session, Site site, Job before, ComposedJob job) {
        this.session = session;
        this.site = site;
        this.before = before;
        composed = job.composed();
        worked = job.worked();
        sentences = new ComposeText(composed, session.console().locale());
        findings = new FindingPrinter(
                session, session.sentences(worked.setting(), worked.job().plan()));
        numbers = new Numbers(site.shop().locale());
    }

    void print() {
        printSteps();
        printMissed();
        if (!composed.composition().composed()) {
            findings.print(worked.proof().findings().stream()
                    .filter(f -> f.severity() == Severity.STOP)
                    .toList());
        }
        printVerdict();
    }

    private void printSteps() {
        Map<String, StepWork> works = new HashMap<>();
        worked.work().steps().forEach(w -> works.put(w.step(), w));
        Map<String, Money> nets = nets();
        for (Step step : composed.composition().plan().steps()) {
            String title = session.text("compose.step", step.id(), title(step), sentences.zones(step.zones()));
            List<String> lines = Wrap.lines(title, Console.WIDTH);
            session.console().out().println(session.console().paint(Ink.HEAD, lines.get(0)));
            lines.stream().skip(1).forEach(line -> session.console().out().println(INDENT + line));
            String net = Optional.ofNullable(nets.get(step.id()))
                    .map(n -> session.text("compose.net", numbers.money(n)))
                    .orElse("");
            String minutes = numbers.duration(minutes(works.get(step.id())));
            session.console()
                    .out()
                    .println(INDENT
                            + session.text(
                                    "compose.figures",
                                    session.text("priority." + Answers.word(step.priority())),
                                    minutes,
                                    net));
            printWhy(sentences.why(step));
        }
        session.console().out().println();
    }

    private BigDecimal minutes(StepWork work) {
        return work == null
                ? BigDecimal.ZERO
                : work.attendedMinutes()
                        .mean()
                        .add(work.setUpMinutes())
                        .multiply(BigDecimal.valueOf(worked.job().vehicles()));
    }

    private void printWhy(List<String> why) {
        int shown = why.size() > REASONS_SHOWN + 1 ? REASONS_SHOWN : why.size();
        for (String sentence : why.subList(0, shown)) {
            List<String> lines = Wrap.lines(sentence, Console.WIDTH - INDENT.length() - 2);
            session.console().out().println(INDENT + lines.get(0));
            lines.stream().skip(1).forEach(line -> session.console().out().println(INDENT + "  " + line));
        }
        if (shown < why.size()) {
            session.console().out().println(INDENT + session.text("compose.more", why.size() - shown));
        }
    }

    private Map<String, Money> nets() {
        Map<String, Money> nets = new HashMap<>();
        if (worked.offer() instanceof Quote quote) {
            for (Position position : quote.positions()) {
                position.step().ifPresent(step -> nets.merge(step, position.net(), Money::plus));
            }
        }
        return nets;
    }

    private String title(Step step) {
        Stage stage = site.library().stageById().get(step.stage());
        return stage == null ? step.stage() : stage.title();
    }

    private void printMissed() {
        for (AskedGoal goal : composed.missed()) {
            List<Unmet> unmet = composed.unmet(goal);
            boolean must = goal.priority() == Step.Priority.MUST;
            String grade = session.console().paint(must ? Ink.STOP : Ink.WARN, session.text("compose.missed"));
            if (unmet.isEmpty() && goal.wishes().isEmpty()) {
                line(session.text("compose.missed.whole", grade, goal.title(), priority(goal), sentences.nowhere()));
            }
            for (Unmet one : unmet) {
                line(session.text("compose.missed.whole", grade, goal.title(), priority(goal), sentences.of(one)));
            }
        }
        if (!composed.missed().isEmpty()) {
            session.console().out().println();
        }
    }

    private String priority(AskedGoal goal) {
        return session.text("priority." + Answers.word(goal.priority()));
    }

    private void line(String text) {
        List<String> lines = Wrap.lines(text, Console.WIDTH);
        session.console().out().println(lines.get(0));
        lines.stream().skip(1).forEach(l -> session.console().out().println(INDENT + l));
    }

    private void printVerdict() {
        Composition plan = composed.composition();
        String verdict = plan.composed()
                ? session.console().paint(Ink.GOOD, session.text("prove.holds"))
                : session.console().paint(Ink.STOP, session.text("prove.stopped"));
        line(session.text(
                "compose.verdict",
                before.title(),
                composed.goals().size(),
                plan.plan().steps().size(),
                numbers.duration(worked.minutes()),
                verdict,
                findings.summary(worked.proof().findings())));
        if (worked.offer() instanceof Quote quote) {
            line(session.text(
                    "compose.price",
                    numbers.money(quote.price().gross()),
                    quote.cap().map(this::fit).orElse("")));
            if (quote.cap().filter(cap -> !cap.fits()).isPresent()) {
                line(session.text("compose.over"));
            }
        } else if (plan.composed()) {
            line(session.text(
                    "compose.no-price", ((Refusal) worked.offer()).stops().size()));
        }
        end().ifPresent(end -> line(session.text("compose.end", when(end), wanted(end))));
        line(proved());
    }

    private String fit(CapFit fit) {
        return session.text(
                fit.fits() ? "mend.cap.fits" : "mend.cap.over", numbers.money(fit.fits() ? fit.spare() : fit.over()));
    }

    private String proved() {
        Composition plan = composed.composition();
        if (!plan.composed()) {
            return session.text("compose.none");
        }
        String cost = money(plan.cost());
        return plan.provedCheapest()
                ? session.text("compose.proved", cost)
                : session.text("compose.not-proved", cost, money(plan.least().min(plan.cost())));
    }

    private String money(BigDecimal exact) {
        return numbers.money(Money.of(site.shop().rates().currency(), exact, RoundingMode.HALF_UP));
    }

    /** When the last step ends on the simple clock, one step after the other, day and night. */
    private Optional<LocalDateTime> end() {
        return worked.proof().clock().stream()
                .map(Proof.Slot::end)
                .max(BigDecimal::compareTo)
                .map(minutes -> worked.setting()
                        .start()
                        .plusMinutes(minutes.setScale(0, RoundingMode.CEILING).longValue()));
    }

    private String wanted(LocalDateTime end) {
        return before.wanted()
                .map(wanted -> session.text(end.isAfter(wanted) ? "compose.late" : "compose.in-time", when(wanted)))
                .orElse("");
    }

    private String when(LocalDateTime time) {
        return numbers.moment(time);
    }

    /** What was written, or how to have it written. */
    void printNext(boolean apply, boolean can, String shownJob) {
        session.console().out().println();
        if (apply && can) {
            line(session.text(
                    "compose.written",
                    shownJob,
                    before.plan().steps().size(),
                    composed.composition().plan().steps().size()));
        } else if (apply) {
            line(session.text("compose.not-written", shownJob));
        } else if (can) {
            line(session.text("compose.next", session.command(), shownJob));
        }
    }

    ObjectNode json() {
        Composition plan = composed.composition();
        ObjectNode answer = Answers.object();
        answer.put("job", before.id());
        answer.put("composed", plan.composed());
        answer.put("grantsAllMusts", composed.grantsAllMusts());
        answer.put("provedCheapest", plan.provedCheapest());
        answer.put("directCost", Answers.figure(plan.cost()));
        answer.put("leastCost", Answers.figure(plan.least().min(plan.cost())));
        answer.put("minutes", Answers.figure(worked.minutes()));
        if (worked.offer() instanceof Quote quote) {
            answer.put("gross", quote.price().gross().getAmount());
        }
        end().ifPresent(end -> answer.put("ends", end.toString()));
        steps(answer.putArray("steps"));
        goals(answer.putArray("goals"));
        answer.set("findings", findings.json(worked.proof().findings()));
        return answer;
    }

    private void steps(ArrayNode all) {
        Map<String, StepWork> works = new HashMap<>();
        worked.work().steps().forEach(w -> works.put(w.step(), w));
        Map<String, Money> nets = nets();
        for (Step step : composed.composition().plan().steps()) {
            ObjectNode one = all.addObject();
            one.put("id", step.id());
            one.put("stage", step.stage());
            ArrayNode zones = one.putArray("zones");
            step.zones().forEach(zones::add);
            one.put("priority", Answers.word(step.priority()));
            one.put("minutes", Answers.figure(minutes(works.get(step.id()))));
            if (nets.containsKey(step.id())) {
                one.put("net", nets.get(step.id()).getAmount());
            }
            ArrayNode why = one.putArray("why");
            sentences.why(step).forEach(why::add);
        }
    }

    private void goals(ArrayNode all) {
        for (AskedGoal goal : composed.goals()) {
            ObjectNode one = all.addObject();
            one.put("id", goal.id());
            one.put("title", goal.title());
            one.put("priority", Answers.word(goal.priority()));
            one.put("granted", composed.grants(goal));
            ArrayNode missing = one.putArray("missing");
            composed.unmet(goal).stream().map(sentences::of).forEach(missing::add);
            if (goal.wishes().isEmpty()) {
                missing.add(sentences.nowhere());
            }
        }
    }
}
