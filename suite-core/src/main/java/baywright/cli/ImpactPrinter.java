package baywright.cli;

import baywright.library.Goal;
import baywright.library.Item;
import baywright.library.Library;
import baywright.library.Rule;
import baywright.library.Stage;
import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.share.Impact;
import baywright.share.ImpactCause;
import baywright.share.ImpactChange;
import baywright.share.ImpactEffect;
import baywright.share.ImpactFigures;
import baywright.share.ImpactOfJob;
import baywright.site.Numbers;
import baywright.site.Site;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Tells what another library would make of a shop's jobs. */
final class ImpactPrinter {

    private static final String INDENT = "  ";

    private final Session session;
    private final Site site;
    private final Site then;
    private final List<Library> libraries;
    private final Numbers numbers;

    ImpactPrinter(Session session, Site site, Library other) {
        this.session = session;
        this.site = site;
        then = site.withLibrary(other, job -> false);
        libraries = List.of(other, site.library());
        numbers = new Numbers(site.shop().locale());
    }

    void print(Impact impact) {
        if (session.json()) {
            Answers.print(session, json(impact));
            return;
        }
        if (impact.changes().isEmpty()) {
            session.say("impact.no-change");
            return;
        }
        changes(impact);
        jobs(impact);
        impact.jobs().forEach(this::stops);
        say(session.text(
                "impact.end",
                impact.jobs().size(),
                impact.same(),
                impact.untouched(),
                impact.stopping().size(),
                impact.freed().size()));
        List<String> papers = impact.jobs().stream()
                .flatMap(job ->
                        job.paper().stream().map(name -> name + " (" + job.job().id() + ")"))
                .toList();
        if (!papers.isEmpty()) {
            say(session.text("impact.papers", papers.size(), String.join(", ", papers)));
        }
    }

    private void say(String sentence) {
        Wrap.lines(sentence, Console.WIDTH).forEach(session.console().out()::println);
    }

    private void changes(Impact impact) {
        Map<ImpactChange, Integer> moved = new HashMap<>();
        impact.movers().forEach(entry -> moved.put(entry.getKey(), entry.getValue()));
        session.say("impact.changes", impact.changes().size());
        Table table = new Table("", "~", "");
        impact.changes()
                .forEach(change -> table.add(
                        session.text("impact.how." + Answers.word(change.how())),
                        named(change),
                        session.text("impact.moves", moved.getOrDefault(change, 0))));
        table.print(session.console(), INDENT);
        session.console().out().println();
    }

    private void jobs(Impact impact) {
        if (impact.jobs().isEmpty()) {
            return;
        }
        Table table = new Table(
                session.text("impact.job"),
                session.text("impact.proves"),
                ">" + session.text("impact.minutes"),
                ">"
                        + session.text(
                                "impact.price", site.shop().rates().currency().getCode()),
                "~" + session.text("impact.why"));
        impact.jobs().forEach(job -> rows(table, job));
        table.print(session.console(), INDENT);
        session.console().out().println();
        say(session.text("impact.legend"));
    }

    /** A line for the job as it is and as it would be, and one for each cause. */
    private void rows(Table table, ImpactOfJob job) {
        table.add(
                job.job().id(),
                session.text("impact.now", holds(job.before())),
                minutes(job.before().attended()),
                price(job.before()),
                "");
        table.add(
                "",
                session.text("impact.then", holds(job.after())),
                minutes(job.after().attended()),
                price(job.after()),
                job.paper().map(name -> session.text("impact.paper", name)).orElse(""));
        job.causes()
                .forEach(cause -> table.add(
                        "",
                        findings(cause),
                        signed(cause.effect().attended(), 1),
                        cause.effect().price().map(p -> signed(p, 2)).orElse("–"),
                        named(cause.change())));
        job.rest()
                .ifPresent(rest -> table.add(
                        "",
                        "",
                        signed(rest.attended(), 1),
                        rest.price().map(p -> signed(p, 2)).orElse("–"),
                        session.text("impact.together")));
    }

    private String holds(ImpactFigures figures) {
        return figures.holds() ? session.text("prove.holds") : session.text("impact.stops");
    }

    private String findings(ImpactCause cause) {
        return cause.come().isEmpty() && cause.gone().isEmpty()
                ? ""
                : session.text(
                        "impact.findings", cause.come().size(), cause.gone().size());
    }

    private String minutes(BigDecimal minutes) {
        return numbers.fixed(minutes, 1);
    }

    private String price(ImpactFigures figures) {
        return figures.price().map(price -> numbers.fixed(price, 2)).orElse("–");
    }

    private String signed(BigDecimal by, int decimals) {
        BigDecimal rounded = by.setScale(decimals, RoundingMode.HALF_UP);
        return (rounded.signum() > 0 ? "+" : "") + numbers.fixed(rounded, decimals);
    }

    /** What newly stops a job, in words. */
    private void stops(ImpactOfJob job) {
        List<Finding> stops =
                job.come().stream().filter(f -> f.severity() == Severity.STOP).toList();
        if (!stops.isEmpty()) {
            session.say("impact.new-stops", job.job().title(), job.job().id());
            printer(job, then).print(stops);
        }
    }

    private FindingPrinter printer(ImpactOfJob job, Site at) {
        return new FindingPrinter(
                session, session.sentences(at.setting(job.job()), job.job().plan()));
    }

    private String named(ImpactChange change) {
        String kind = session.text("impact.kind." + Answers.word(change.kind()));
        return kind + " '" + change.id() + "'"
                + title(change).map(t -> " (" + t + ")").orElse("");
    }

    private Optional<String> title(ImpactChange change) {
        return switch (change.kind()) {
            case STAGE -> first(change, Library::stages, Stage::id, Stage::title);
            case RULE -> first(change, Library::rules, Rule::id, Rule::title);
            case ITEM -> first(change, Library::items, Item::id, Item::title);
            case GOAL -> first(change, Library::goals, Goal::id, Goal::title);
            default -> Optional.empty();
        };
    }

    private <T> Optional<String> first(
            ImpactChange change, Function<Library, List<T>> of, Function<T, String> id, Function<T, String> title) {
        return libraries.stream()
                .flatMap(library -> of.apply(library).stream())
                .filter(one -> id.apply(one).equals(change.id()))
                .map(title)
                .findFirst();
    }

    ObjectNode json(Impact impact) {
        ObjectNode answer = Answers.object();
        ArrayNode changes = answer.putArray("changes");
        impact.changes().forEach(change -> put(changes.addObject(), change));
        ArrayNode jobs = answer.putArray("jobs");
        for (ImpactOfJob job : impact.jobs()) {
            ObjectNode one = jobs.addObject();
            one.put("job", job.job().id());
            one.put("title", job.job().title());
            put(one.putObject("now"), job.before());
            put(one.putObject("then"), job.after());
            one.set("come", printer(job, then).json(job.come()));
            one.set("gone", printer(job, site).json(job.gone()));
            ArrayNode causes = one.putArray("causes");
            for (ImpactCause cause : job.causes()) {
                ObjectNode each = causes.addObject();
                put(each, cause.change());
                put(each, cause.effect());
                each.put("come", cause.come().size());
                each.put("gone", cause.gone().size());
            }
            job.rest().ifPresent(rest -> put(one.putObject("together"), rest));
            job.paper().ifPresent(name -> one.put("quote", name));
        }
        answer.put("same", impact.same());
        answer.put("untouched", impact.untouched());
        answer.put("stopping", impact.stopping().size());
        answer.put("freed", impact.freed().size());
        return answer;
    }

    private static void put(ObjectNode to, ImpactChange change) {
        to.put("kind", Answers.word(change.kind()));
        to.put("id", change.id());
        to.put("how", Answers.word(change.how()));
    }

    private static void put(ObjectNode to, ImpactFigures figures) {
        to.put("holds", figures.holds());
        to.put("attendedMinutes", Answers.figure(figures.attended()));
        to.put("wholeMinutes", Answers.figure(figures.whole()));
        putOrNull(to, "cost", figures.cost().map(Answers::figure));
        putOrNull(to, "price", figures.price());
    }

    private static void put(ObjectNode to, ImpactEffect effect) {
        to.put("attendedMinutes", Answers.figure(effect.attended()));
        to.put("wholeMinutes", Answers.figure(effect.whole()));
        putOrNull(to, "cost", effect.cost().map(Answers::figure));
        putOrNull(to, "price", effect.price());
    }

    private static void putOrNull(ObjectNode to, String name, Optional<BigDecimal> amount) {
        amount.ifPresentOrElse(value -> to.put(name, value), () -> to.putNull(name));
    }
}
