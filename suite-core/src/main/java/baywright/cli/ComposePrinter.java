package baywright.cli;

import baywright.library.Stage;
import baywright.money.Position;
import baywright.money.Quote;
import baywright.money.Refusal;
import baywright.plan.AskedGoal;
import baywright.plan.ComposeText;
import baywright.plan.Composition;
import baywright.plan.GoalComposition;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.plan.Unmet;
import baywright.site.FittedGoals;
import baywright.site.FittedGoals.LeftOut;
import baywright.site.FittedGoals.Priced;
import baywright.site.Numbers;
import baywright.site.PlanLimits;
import baywright.site.Site;
import baywright.site.WorkedJob;
import baywright.workspace.Job;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
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
    private final FittedGoals fitted;
    private final PlanLimits limits;
    private final Lateness lateness;
    private final GoalComposition composed;
    private final WorkedJob worked;
    private final ComposeText sentences;
    private final FindingPrinter findings;
    private final Numbers numbers;

    /** @param limits what the job, or whoever asks, wants to be kept, whether the plan was held to it or not */
    ComposePrinter(Session session, Site site, Job before, FittedGoals fitted, PlanLimits limits, Lateness lateness) {
        this.lateness = lateness;
        this.session = session;
        this.site = site;
        this.before = before;
        this.fitted = fitted;
        this.limits = limits;
        composed = fitted.shown().composed().composed();
        worked = fitted.shown().composed().worked();
        sentences = new ComposeText(composed, session.console().locale());
        findings = new FindingPrinter(
                session, session.sentences(worked.setting(), worked.job().plan()));
        numbers = new Numbers(site.shop().locale());
    }

    void print() {
        printSteps();
        printMissed();
        printLeftOut();
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

    private void printLeftOut() {
        for (LeftOut out : fitted.out()) {
            String grade = session.console().paint(Ink.WARN, session.text("compose.left-out"));
            line(session.text(
                    "compose.missed.whole", grade, out.goal().title(), priority(out.goal()), against(out.with())));
        }
        if (!fitted.out().isEmpty()) {
            line(session.text(
                    fitted.certain()
                            ? "compose.choice.certain"
                            : fitted.proved() ? "compose.choice.proved" : "compose.choice.not-proved",
                    session.text(limitsKept())));
            session.console().out().println();
        }
    }

    private String limitsKept() {
        boolean date = limits.wanted().isPresent() && !fitted.isLate();
        return limits.cap().isEmpty() ? "compose.keeps.date" : date ? "compose.keeps.both" : "compose.keeps.cap";
    }

    /** Why a plan does not do. */
    private String against(Priced plan) {
        if (!plan.isOffered()) {
            return session.text("compose.with.stopped");
        }
        List<String> against = new ArrayList<>();
        Money asked = plan.asked().orElseThrow();
        cap().filter(asked::isGreaterThan)
                .ifPresent(cap ->
                        against.add(session.text("compose.with.over", held(asked), numbers.money(asked.minus(cap)))));
        plan.ready()
                .filter(this::isLate)
                .ifPresent(ready -> against.add(session.text("compose.with.late", numbers.moment(ready))));
        return against.isEmpty() ? session.text("compose.with.instead", held(asked)) : String.join("; ", against);
    }

    /** An amount that is held to the cap, with what is in it. */
    private String held(Money asked) {
        return session.text(limits.firmOnly() ? "compose.held.price" : "compose.held.most", numbers.money(asked));
    }

    private boolean isLate(LocalDateTime ready) {
        return limits.wanted().filter(ready::isAfter).isPresent();
    }

    private Optional<Money> cap() {
        return limits.cap().map(c -> Money.of(site.shop().currency(), c, RoundingMode.HALF_UP));
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
        printPrice(plan);
        fitted.shown()
                .ready()
                .ifPresentOrElse(
                        ready -> line(session.text("compose.ready", numbers.moment(ready), wanted(ready))),
                        () -> noTimetable(plan));
        if (fitted.isLate() && composed.goals().stream().anyMatch(goal -> goal.priority() != Step.Priority.MUST)) {
            fitted.least()
                    .ready()
                    .ifPresent(ready -> line(INDENT + session.text("compose.not-sooner", numbers.moment(ready))));
        }
        lateness.sentences().forEach(sentence -> line(INDENT + sentence));
        line(proved());
    }

    private void printPrice(Composition plan) {
        if (worked.offer() instanceof Quote quote) {
            Money asked = fitted.shown().asked().orElseThrow();
            line(session.text(
                    "compose.price",
                    numbers.money(quote.price().gross()),
                    limits.firmOnly()
                            ? ""
                            : session.text(
                                    "compose.price.most",
                                    numbers.money(quote.range().high().gross())),
                    cap().map(cap -> fit(asked, cap)).orElse("")));
            cap().filter(asked::isGreaterThan).ifPresent(cap -> line(over(asked, cap)));
        } else if (plan.composed()) {
            line(session.text(
                    "compose.no-price", ((Refusal) worked.offer()).stops().size()));
        }
    }

    private String fit(Money asked, Money cap) {
        boolean fits = !asked.isGreaterThan(cap);
        return session.text(
                fits ? "mend.cap.fits" : "mend.cap.over", numbers.money(fits ? cap.minus(asked) : asked.minus(cap)));
    }

    private String over(Money asked, Money cap) {
        return fitted.best().isEmpty()
                ? session.console()
                        .paint(
                                Ink.STOP,
                                session.text(
                                        fitted.certain() ? "compose.cannot.certain" : "compose.cannot",
                                        held(asked),
                                        numbers.money(asked.minus(cap))))
                : session.text("compose.over");
    }

    private void noTimetable(Composition plan) {
        if (plan.composed() && worked.offer() instanceof Quote) {
            line(session.text("compose.no-timetable"));
        }
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

    private String wanted(LocalDateTime ready) {
        return limits.wanted()
                .map(wanted -> session.text(isLate(ready) ? "compose.late" : "compose.in-time", numbers.moment(wanted)))
                .orElse("");
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
            answer.put("high", quote.range().high().gross().getAmount());
        }
        fitted.shown().ready().ifPresent(ready -> answer.put("ready", ready.toString()));
        answer.put("keepsLimits", fitted.best().isPresent());
        answer.put("choiceProved", fitted.proved());
        answer.put("choiceCertain", fitted.certain());
        ArrayNode late = answer.putArray("lateness");
        lateness.sentences().forEach(late::add);
        leftOut(answer.putArray("leftOut"));
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

    private void leftOut(ArrayNode all) {
        for (LeftOut out : fitted.out()) {
            ObjectNode one = all.addObject();
            one.put("id", out.goal().id());
            one.put("title", out.goal().title());
            one.put("priority", Answers.word(out.goal().priority()));
            out.with().asked().ifPresent(asked -> one.put("priceWithIt", asked.getAmount()));
            out.with().ready().ifPresent(ready -> one.put("readyWithIt", ready.toString()));
            one.put("why", against(out.with()));
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
