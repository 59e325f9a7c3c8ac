package baywright.cli;

import baywright.library.Stage;
import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Step;
import baywright.site.FittedJob;
import baywright.site.FittedJob.Fate;
import baywright.site.FittedJob.Fit;
import baywright.site.Numbers;
import baywright.site.Site;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.joda.money.Money;

/** Shows what stays of a plan under a cap, in text or JSON. */
final class FitPrinter {

    private static final String INDENT = "  ";

    private final Session session;
    private final Site site;
    private final FittedJob fitted;
    private final Numbers numbers;
    private final FindingText sentences;

    FitPrinter(Session session, Site site, FittedJob fitted) {
        this.session = session;
        this.site = site;
        this.fitted = fitted;
        numbers = new Numbers(site.shop().locale());
        sentences = session.sentences(site.setting(fitted.job()), fitted.job().plan());
    }

    void print() {
        session.say(
                "fit.title",
                fitted.job().title(),
                numbers.money(fitted.cap()),
                session.text(fitted.firmOnly() ? "fit.held.price" : "fit.held.most"));
        if (fitted.fits().isEmpty()) {
            printCannot();
        } else {
            printFates();
            printFits();
        }
        line(session.text(fitted.proved() ? "fit.proved" : "fit.not-proved"));
    }

    void printNext(Optional<Integer> applied, String job) {
        if (applied.isPresent()) {
            line(session.text("fit.written", applied.get(), job));
        } else if (fitted.fits().stream().anyMatch(fit -> !fit.out().isEmpty())) {
            line(session.text("fit.next", session.command(), job));
        }
    }

    private void printCannot() {
        line(session.console().paint(Ink.STOP, cannot()));
        fitted.stops().forEach(stop -> line(INDENT + sentences.of(stop)));
    }

    private String cannot() {
        String least = fitted.smallest().map(numbers::money).orElse("");
        if (fitted.proved()) {
            return least.isEmpty() ? session.text("fit.never") : session.text("fit.cannot", least);
        }
        return least.isEmpty() ? session.text("fit.none-found") : session.text("fit.none-found-below", least);
    }

    private void printFates() {
        int must = fitted.job().plan().steps().size() - fitted.fates().size();
        line(session.text("fit.must", must, fitted.fates().size()));
        if (fitted.fates().isEmpty()) {
            return;
        }
        Table table = new Table(
                session.text("fit.step"),
                session.text("fit.wanted"),
                ">" + session.text("fit.worth"),
                "~" + session.text("fit.fate"));
        for (Fate fate : fitted.fates()) {
            table.add(
                    name(fate.step()),
                    session.text("priority." + Answers.word(fate.step().priority())),
                    numbers.fixed(fate.worth(), 2),
                    fate(fate));
        }
        table.print(session.console(), INDENT);
    }

    private String fate(Fate fate) {
        if (fate.stays()) {
            return fate.stops().isEmpty() ? session.text("fit.stays") : session.text("fit.needed", stopped(fate));
        }
        String why = fate.asked()
                .map(asked -> session.text("fit.dear", numbers.coins(asked)))
                .orElseGet(
                        () -> session.text("fit.lost", sentences.of(fate.stops().get(0))));
        String way = fate.having()
                .map(number -> session.text("fit.having", number))
                .orElseGet(() -> session.text(fitted.proved() ? "fit.not-having" : "fit.not-found-having"));
        return why + way;
    }

    /** The steps that would be stopped; the sentence where no step is. */
    private String stopped(Fate fate) {
        Set<String> ids = new TreeSet<>();
        fate.stops().forEach(stop -> stop.step().ifPresent(ids::add));
        List<Step> steps = fitted.job().plan().steps().stream()
                .filter(step -> ids.contains(step.id()))
                .toList();
        return steps.isEmpty() ? sentences.of(fate.stops().get(0)) : names(steps);
    }

    private void printFits() {
        Table table = new Table(
                ">#",
                "~" + session.text("fit.way"),
                ">" + session.text("figure.price"),
                ">" + session.text("quote.with-contingency"),
                ">" + session.text("fit.left"));
        int number = 0;
        for (Fit fit : fitted.fits()) {
            table.add(
                    String.valueOf(++number),
                    way(fit),
                    numbers.coins(fit.quote().price().gross()),
                    numbers.coins(fit.quote().range().high().gross()),
                    numbers.coins(fitted.left(fit)));
        }
        table.print(session.console(), INDENT);
    }

    private String way(Fit fit) {
        Fit best = fitted.fits().get(0);
        if (fit.out().equals(best.out())) {
            return fit.out().isEmpty()
                    ? session.text("fit.all")
                    : session.text(fitted.proved() ? "fit.best" : "fit.best-found", names(fit.out()));
        }
        List<Step> back = fitted.keptBesides(fit);
        List<Step> gone = fitted.goneBesides(fit);
        return gone.isEmpty()
                ? session.text("fit.with", names(back))
                : session.text("fit.instead", names(back), names(gone));
    }

    private String names(List<Step> steps) {
        return String.join(", ", steps.stream().map(this::name).toList());
    }

    private String name(Step step) {
        Stage stage = site.library().stageById().get(step.stage());
        return session.text("fit.name", step.id(), stage == null ? step.stage() : stage.title());
    }

    private void line(String text) {
        List<String> lines = Wrap.lines(text, Console.WIDTH);
        lines.forEach(line -> session.console().out().println(line));
    }

    ObjectNode json() {
        ObjectNode all = Answers.object();
        all.put("job", fitted.job().id());
        all.put("cap", fitted.cap().getAmount());
        all.put("heldToCap", fitted.firmOnly() ? "price" : "with-contingency");
        all.put("fits", !fitted.fits().isEmpty());
        all.put("proved", fitted.proved());
        fitted.smallest().ifPresent(least -> all.put("smallestCap", least.getAmount()));
        ArrayNode stops = all.putArray("stops");
        fitted.stops().forEach(stop -> stops.add(json(stop)));
        ArrayNode ways = all.putArray("ways");
        for (Fit fit : fitted.fits()) {
            ObjectNode way = ways.addObject();
            ids(way.putArray("steps"), fit.worked().job().plan().steps());
            ids(way.putArray("out"), fit.out());
            way.put("gross", fit.quote().price().gross().getAmount());
            way.put("high", fit.quote().range().high().gross().getAmount());
            way.put("left", fitted.left(fit).getAmount());
        }
        ArrayNode steps = all.putArray("steps");
        fitted.fates().forEach(fate -> steps.add(json(fate)));
        return all;
    }

    private static ObjectNode json(Fate fate) {
        ObjectNode one = Answers.object();
        one.put("step", fate.step().id());
        one.put("priority", Answers.word(fate.step().priority()));
        one.put("stays", fate.stays());
        one.put("worth", Answers.figure(fate.worth()));
        ArrayNode stops = one.putArray("stops");
        fate.stops().forEach(stop -> stops.add(json(stop)));
        BigDecimal asked = fate.asked().map(Money::getAmount).orElse(null);
        if (asked != null) {
            one.put("priceWithIt", asked);
        }
        fate.having().ifPresent(number -> one.put("way", number));
        return one;
    }

    private static ObjectNode json(Finding stop) {
        ObjectNode one = Answers.object();
        one.put("code", stop.code());
        stop.step().ifPresent(step -> one.put("step", step));
        return one;
    }

    private static void ids(ArrayNode array, List<Step> steps) {
        steps.forEach(step -> array.add(step.id()));
    }
}
