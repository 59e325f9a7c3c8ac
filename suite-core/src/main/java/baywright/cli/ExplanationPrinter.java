package baywright.cli;

import baywright.plan.AskedGoal;
import baywright.plan.Explanation.Account;
import baywright.plan.Explanation.Change;
import baywright.plan.Explanation.Link;
import baywright.plan.Explanation.Moment;
import baywright.plan.Explanation.Strip;
import baywright.plan.Explanation.Where;
import baywright.plan.ExplanationText;
import baywright.plan.FilmBudget;
import baywright.plan.FilmBudget.ZoneBudget;
import baywright.plan.Finding;
import baywright.plan.FindingPlaces;
import baywright.plan.FindingText;
import baywright.plan.GoalEnd;
import baywright.plan.GoalTies;
import baywright.plan.Plan;
import baywright.plan.Reason;
import baywright.plan.Setting;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.Without;
import baywright.script.Place;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shows why steps are there, and what happens to a zone. */
final class ExplanationPrinter {

    private static final String INDENT = "   ";

    private final Session session;
    private final Setting setting;
    private final Plan plan;
    private final ExplanationText sentences;

    private final GoalTies ties;

    ExplanationPrinter(Session session, Setting setting, Plan plan, GoalTies ties) {
        this.session = session;
        this.setting = setting;
        this.plan = plan;
        this.ties = ties;
        this.sentences = new ExplanationText(setting, plan, session.console().locale());
    }

    // ---- steps

    void steps(OpenedJob opened, List<Account> accounts) {
        if (session.json()) {
            ObjectNode answer = answer(opened);
            ArrayNode all = answer.putArray("steps");
            accounts.forEach(account -> all.add(json(account)));
            Answers.print(session, answer);
            return;
        }
        for (int i = 0; i < accounts.size(); i++) {
            if (i > 0) {
                session.console().out().println();
            }
            print(accounts.get(i));
        }
    }

    private void print(Account account) {
        Step step = step(account);
        Without without = Without.of(setting, plan, step.id(), ties);
        Findings findings = new Findings(setting, new Plan(withoutStep(step)));
        head(session.text("why.step", sentences.step(step.id()), Answers.word(step.priority())));
        List<String> because = new ArrayList<>(
                account.carries().stream().map(sentences::carries).toList());
        without.brings().stream()
                .filter(f -> f.reason() instanceof Reason.RuleSpeaks)
                .forEach(f -> because.add(session.text("why.rule", findings.of(f))));
        list(
                "why.goals",
                ties.of(step.id(), forbidden(without)).stream()
                        .map(sentences::tie)
                        .toList());
        list("why.carries", because);
        list("why.lasts", account.lasts().stream().map(sentences::where).toList());
        if (because.isEmpty() && account.lasts().isEmpty()) {
            say("why.idle");
        }
        list("why.serves", account.serves().stream().map(sentences::step).toList());
        list("why.relies", account.reliesOn().stream().map(sentences::reliesOn).toList());
        list("why.makes", account.makes().stream().map(sentences::where).toList());
        list("why.ends", account.ends().stream().map(sentences::where).toList());
        if (without.brings().isEmpty() && without.loses().isEmpty()) {
            say("why.missed-by-none");
        }
        list("why.without", without.brings().stream().map(findings::graded).toList());
        list("why.loses", without.loses().stream().map(sentences::where).toList());
        list(
                "why.goals-lost",
                without.goals().stream()
                        .flatMap(loss -> sentences.loss(loss).stream())
                        .toList());
        Findings present = new Findings(setting, plan);
        list("why.mends", without.mends().stream().map(present::graded).toList());
    }

    /** Steps that a rule forbids without the step. */
    private static List<String> forbidden(Without without) {
        return without.brings().stream()
                .filter(f -> f.severity() == Severity.STOP && f.reason() instanceof Reason.RuleSpeaks)
                .flatMap(f -> f.step().stream())
                .toList();
    }

    private Step step(Account account) {
        return plan.steps().stream()
                .filter(s -> s.id().equals(account.step()))
                .findFirst()
                .orElseThrow();
    }

    private List<Step> withoutStep(Step step) {
        return plan.steps().stream().filter(s -> !s.id().equals(step.id())).toList();
    }

    /** Words the findings of one plan with the lines that they go back to. */
    private final class Findings {
        private final FindingText texts;
        private final FindingPlaces places;

        Findings(Setting setting, Plan of) {
            texts = session.sentences(setting, of);
            places = new FindingPlaces(setting, of);
        }

        String of(Finding finding) {
            String at = places.of(finding)
                    .map(p -> session.text("why.at", ExplanationText.line(p)))
                    .orElse("");
            return texts.of(finding) + at;
        }

        String graded(Finding finding) {
            return session.text("finding." + Answers.word(finding.severity())) + ": " + of(finding);
        }

        ObjectNode json(Finding finding) {
            ObjectNode one = Answers.object();
            one.put("code", finding.code());
            one.put("severity", Answers.word(finding.severity()));
            finding.step().ifPresentOrElse(step -> one.put("step", step), () -> one.putNull("step"));
            texts(one.putArray("zones"), finding.zones());
            one.put("sentence", texts.of(finding));
            at(one, "at", places.of(finding));
            return one;
        }
    }

    private void head(String text) {
        Console console = session.console();
        console.out().println(console.paint(Ink.HEAD, text));
    }

    private void say(String key) {
        session.console().out().println(INDENT + session.text(key));
    }

    private void list(String title, List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        say(title);
        for (String line : lines) {
            List<String> wrapped = Wrap.lines(line, Console.WIDTH - 3 * INDENT.length());
            session.console().out().println(INDENT + INDENT + "-  " + wrapped.get(0));
            wrapped.stream().skip(1).forEach(more -> session.console().out().println(INDENT.repeat(3) + more));
        }
    }

    private ObjectNode json(Account account) {
        Without without = Without.of(setting, plan, account.step(), ties);
        Findings then = new Findings(setting, new Plan(withoutStep(step(account))));
        Findings now = new Findings(setting, plan);
        ObjectNode one = Answers.object();
        one.put("step", account.step());
        one.put("priority", Answers.word(step(account).priority()));
        ArrayNode goals = one.putArray("goals");
        for (GoalTies.Tie tie : ties.of(account.step(), forbidden(without))) {
            ObjectNode goal = goal(goals.addObject(), tie.goal());
            wheres(goal.putArray("wants"), tie.wants());
            texts(goal.putArray("through"), tie.through());
        }
        links(one.putArray("reliesOn"), account.reliesOn());
        links(one.putArray("carries"), account.carries());
        texts(one.putArray("serves"), account.serves());
        wheres(one.putArray("makes"), account.makes());
        wheres(one.putArray("ends"), account.ends());
        wheres(one.putArray("lasts"), account.lasts());
        ObjectNode missing = one.putObject("without");
        ArrayNode brings = missing.putArray("brings");
        without.brings().forEach(f -> brings.add(then.json(f)));
        ArrayNode mends = missing.putArray("mends");
        without.mends().forEach(f -> mends.add(now.json(f)));
        wheres(missing.putArray("loses"), without.loses());
        wheres(missing.putArray("gains"), without.gains());
        ArrayNode lost = missing.putArray("goals");
        for (Without.GoalLoss loss : without.goals()) {
            ObjectNode goal = goal(lost.addObject(), loss.goal());
            wheres(goal.putArray("loses"), loss.loses());
            texts(goal.putArray("stopped"), loss.stopped());
        }
        return one;
    }

    private static ObjectNode goal(ObjectNode into, AskedGoal goal) {
        into.put("goal", goal.id());
        into.put("title", goal.title());
        into.put("priority", Answers.word(goal.priority()));
        at(into, "at", goal.place());
        return into;
    }

    private static void links(ArrayNode into, List<Link> links) {
        for (Link link : links) {
            ObjectNode one = into.addObject();
            one.put("step", link.step());
            one.put("state", link.state());
            one.put("kind", Answers.word(link.kind()));
            one.put("gone", link.gone());
            one.put("spared", link.spared());
            one.put("giver", Answers.word(link.giver()));
            one.put("by", link.by());
            texts(one.putArray("zones"), link.zones());
            one.put("why", link.why());
            one.put("at", ExplanationText.line(link.place()));
            at(one, "givenAt", link.giving());
        }
    }

    private static void at(ObjectNode into, String name, Optional<Place> place) {
        place.ifPresent(p -> into.put(name, ExplanationText.line(p)));
    }

    private static void wheres(ArrayNode into, List<Where> wheres) {
        for (Where where : wheres) {
            ObjectNode one = into.addObject();
            one.put("state", where.state());
            texts(one.putArray("zones"), where.zones());
            at(one, "at", where.place());
        }
    }

    private static void states(ArrayNode into, List<Where> wheres) {
        wheres.forEach(where -> into.add(where.state()));
    }

    private static void texts(ArrayNode into, List<String> texts) {
        texts.forEach(into::add);
    }

    // ---- a zone

    void zone(OpenedJob opened, Strip strip, FilmBudget budget, List<Finding> there) {
        Optional<ZoneBudget> film = budget.zones().stream()
                .filter(z -> z.film().zone().equals(strip.zone()))
                .findFirst();
        Findings findings = new Findings(setting, plan);
        List<GoalEnd> goals = ties.ends().stream()
                .flatMap(end -> end.on(strip.zone()).stream())
                .toList();
        if (session.json()) {
            ObjectNode answer = answer(opened);
            answer.put("zone", strip.zone());
            texts(answer.putArray("found"), strip.found());
            ArrayNode moments = answer.putArray("moments");
            strip.moments().forEach(moment -> moments.add(json(moment)));
            ArrayNode all = answer.putArray("findings");
            there.forEach(f -> all.add(findings.json(f)));
            film.ifPresent(z -> answer.put("filmVerdict", Answers.word(z.verdict())));
            ArrayNode ends = answer.putArray("goals");
            for (GoalEnd end : goals) {
                ObjectNode one = goal(ends.addObject(), end.goal());
                one.put("holds", end.met());
                states(one.putArray("states"), end.holds());
                states(one.putArray("missing"), end.lacks());
            }
            Answers.print(session, answer);
            return;
        }
        head(session.text("why.zone", strip.zone(), opened.job().title()));
        String found = strip.found().isEmpty() ? session.text("why.found.nothing") : String.join(", ", strip.found());
        list("why.found", List.of(found));
        strip.moments().forEach(this::print);
        film.filter(z -> z.film().lowest().isPresent()).ifPresent(this::film);
        if (there.isEmpty()) {
            say("why.no-finding");
        }
        list("why.findings", there.stream().map(findings::graded).toList());
        list(
                "why.goals-hold",
                goals.stream().filter(GoalEnd::met).map(sentences::end).toList());
        list(
                "why.goals-miss",
                goals.stream().filter(end -> !end.met()).map(sentences::end).toList());
    }

    private void print(Moment moment) {
        session.console().out().println(INDENT + sentences.who(moment));
        List<String> lines = moment.changes().isEmpty()
                ? List.of(sentences.nothing())
                : moment.changes().stream()
                        .map(change -> sentences.change(moment, change))
                        .toList();
        for (String line : lines) {
            List<String> wrapped = Wrap.lines(line, Console.WIDTH - 3 * INDENT.length());
            wrapped.forEach(more -> session.console().out().println(INDENT + INDENT + more));
        }
    }

    private void film(ZoneBudget zone) {
        session.console()
                .out()
                .println(INDENT
                        + session.text(
                                "why.film",
                                zone.film().count(),
                                number(zone.film().lowest().orElseThrow()),
                                number(zone.film().mean().orElseThrow()),
                                number(zone.planned().likely()),
                                number(zone.planned().most())));
    }

    private String number(BigDecimal figure) {
        NumberFormat format = NumberFormat.getNumberInstance(session.console().locale());
        format.setMaximumFractionDigits(1);
        return format.format(figure.setScale(1, RoundingMode.HALF_UP));
    }

    private static ObjectNode json(Moment moment) {
        ObjectNode one = Answers.object();
        one.put("step", moment.step());
        one.put("way", Answers.word(moment.way()));
        ArrayNode changes = one.putArray("changes");
        for (Change change : moment.changes()) {
            ObjectNode each = changes.addObject();
            each.put("state", change.state());
            each.put("comes", change.comes());
            each.put("by", change.by());
            at(each, "at", change.place());
        }
        return one;
    }

    private static ObjectNode answer(OpenedJob opened) {
        ObjectNode answer = Answers.object();
        answer.put("job", opened.job().id());
        answer.set("warnings", ProblemPrinter.json(opened.warnings()));
        return answer;
    }
}
