package baywright.cli;

import baywright.chance.Outcome;
import baywright.chance.Sample;
import baywright.library.Item;
import baywright.library.Stage;
import baywright.money.Outlook;
import baywright.money.Quote;
import baywright.plan.Step;
import baywright.schedule.ShopChance.JobChance;
import baywright.site.FinishChance;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.site.WorkedJob;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.joda.money.Money;

/** An outlook on the terminal and in JSON. */
final class OutlookPrinter {

    private static final String INDENT = "  ";
    private static final double CONFIDENCE = 0.95;
    private static final double[] SHARES = {0.5, 0.8, 0.95};
    private static final int MOST_DRIVERS = 8;

    /** Shares of the spread below this are not worth a line. */
    private static final double LEAST_SHARE = 0.005;

    private final Session session;
    private final Site site;
    private final WorkedJob worked;
    private final Quote quote;
    private final Outlook outlook;
    private final Optional<JobChance> chance;
    private final Optional<FinishChance> finish;
    private final Numbers numbers;

    /** A cause of spread with its share of the variance of each figure. */
    private record Cause(Outcome.Kind kind, String name, double ofHours, double ofCost, OptionalDouble ofFinish) {
        double most() {
            return Math.max(Math.max(ofHours, ofCost), ofFinish.orElse(0));
        }
    }

    /**
     * What is printed.
     *
     * @param chance of the finish by the timetable; empty: the simple clock is shown
     */
    OutlookPrinter(
            Session session, Site site, WorkedJob worked, Quote quote, Outlook outlook, Optional<JobChance> chance) {
        this.session = session;
        this.site = site;
        this.worked = worked;
        this.quote = quote;
        this.outlook = outlook;
        this.chance = chance;
        finish = FinishChance.of(worked, outlook, chance);
        numbers = new Numbers(site.shop().locale());
    }

    // ---- on the terminal

    void print() {
        Console console = session.console();
        console.out()
                .println(console.paint(
                        Ink.HEAD,
                        session.text(
                                "chance.title",
                                worked.job().title(),
                                numbers.number(BigDecimal.valueOf(outlook.work().runs()), 0),
                                String.valueOf(outlook.work().seed()))));
        figures().print(console, INDENT);
        console.out().println();
        session.say(
                "chance.loss", percent(loss(), 1), numbers.money(quote.price().net()));
        printFinish();
        console.out().println();
        drivers().print(console, INDENT);
        console.out().println();
        chance.ifPresent(c -> {
            new ChancePrinter(session, numbers)
                    .steps(c, worked.job().id(), worked.job().vehicles())
                    .print(console, INDENT);
            console.out().println();
        });
        session.say("chance.note");
    }

    private Table figures() {
        boolean whole = chance.isPresent() || worked.job().vehicles() == 1;
        Table table = new Table(
                "",
                ">" + session.text("chance.hours"),
                ">" + session.text("chance.cost"),
                finish.isEmpty() ? "" : ">" + session.text(whole ? "chance.finish" : "chance.finish-of-one"));
        row(table, "chance.mean", Sample::mean, "");
        for (double share : SHARES) {
            row(
                    table,
                    "chance.p" + Math.round(share * 100),
                    sample -> sample.quantile(share),
                    finish.map(f -> moment(f.readyBy(share))).orElse(""));
        }
        return table;
    }

    private void row(Table table, String title, ToDoubleFunction<Sample> value, String moment) {
        table.add(
                session.text(title),
                numbers.duration(decimal(value.applyAsDouble(outlook.minutes()))),
                numbers.money(money(value.applyAsDouble(outlook.cost()))),
                moment);
    }

    private void printFinish() {
        if (finish.isEmpty()) {
            return;
        }
        FinishChance by = finish.get();
        if (by.inTime().isPresent()) {
            Sample.Band band = by.band().orElseThrow();
            session.say(
                    "chance.wanted",
                    moment(worked.job().wanted().orElseThrow()),
                    percent(by.inTime().getAsDouble(), 1),
                    percent(band.low(), 1),
                    percent(band.high(), 1));
            by.textbook().ifPresent(textbook -> session.say("chance.textbook", percent(textbook, 1)));
        }
        session.say(chance.isPresent() ? "chance.by-timetable" : "chance.by-clock");
        chance.ifPresent(c -> new ChancePrinter(session, numbers).missed(c));
    }

    private Table drivers() {
        boolean clock = finish.isPresent();
        Table table = new Table(
                "~" + session.text("chance.drives"),
                ">" + session.text("chance.of-hours"),
                ">" + session.text("chance.of-cost"),
                clock ? ">" + session.text("chance.of-finish") : "");
        causes().stream()
                .filter(cause -> cause.most() >= LEAST_SHARE)
                .limit(MOST_DRIVERS)
                .forEach(cause -> table.add(
                        name(cause),
                        percent(cause.ofHours(), 0),
                        percent(cause.ofCost(), 0),
                        cause.ofFinish().isPresent() ? percent(cause.ofFinish().getAsDouble(), 0) : ""));
        return table;
    }

    private String name(Cause cause) {
        return switch (cause.kind()) {
            case SHARED -> session.text("chance.shared", cause.name());
            case ACTIVITY -> session.text("chance.step", cause.name(), stage(cause.name()));
            case CHARGE ->
                Optional.ofNullable(site.library().itemById().get(cause.name()))
                        .map(Item::title)
                        .orElse(cause.name());
        };
    }

    private String stage(String step) {
        String id = worked.job().plan().steps().stream()
                .filter(s -> s.id().equals(step))
                .map(Step::stage)
                .findFirst()
                .orElse("");
        return Optional.ofNullable(site.library().stageById().get(id))
                .map(Stage::title)
                .orElse(id);
    }

    private List<Cause> causes() {
        Map<String, Double> ofFinish = new LinkedHashMap<>();
        finish.ifPresent(f -> f.drivers().forEach(d -> ofFinish.merge(d.kind() + d.name(), d.ofFinish(), Double::sum)));
        return outlook.work().drivers().stream()
                .map(driver -> {
                    Double same = ofFinish.get(driver.kind() + driver.name());
                    return new Cause(
                            driver.kind(),
                            driver.name(),
                            driver.ofFinish(),
                            driver.ofCost(),
                            same == null ? OptionalDouble.empty() : OptionalDouble.of(same));
                })
                .sorted((a, b) -> Double.compare(b.most(), a.most()))
                .toList();
    }

    /** The figures beside a quote; for the shop's eyes. */
    void addTo(Table table) {
        String runs = session.text(
                "chance.runs-and-seed",
                numbers.number(BigDecimal.valueOf(outlook.work().runs()), 0),
                String.valueOf(outlook.work().seed()));
        String undiscounted = outlook.lossUndiscounted(quote).isEmpty()
                ? runs
                : runs
                        + session.text(
                                "chance.undiscounted",
                                percent(outlook.lossUndiscounted(quote).getAsDouble(), 1));
        table.add(session.text("chance.figure-loss"), percent(loss(), 1), undiscounted);
        table.add(
                session.text("chance.figure-hours"),
                numbers.duration(decimal(outlook.minutes().quantile(SHARES[1]))),
                session.text(
                        "chance.figure-note",
                        numbers.duration(decimal(outlook.minutes().quantile(SHARES[0]))),
                        numbers.duration(decimal(outlook.minutes().quantile(SHARES[2])))));
        finish.filter(f -> f.inTime().isPresent())
                .ifPresent(f -> table.add(
                        session.text("chance.figure-in-time"),
                        percent(f.inTime().getAsDouble(), 1),
                        session.text("chance.figure-ready", moment(f.readyBy(SHARES[1])))));
        table.add(
                session.text("chance.figure-cost"),
                numbers.money(money(outlook.cost().quantile(SHARES[1]))),
                session.text(
                        "chance.figure-note",
                        numbers.money(money(outlook.cost().quantile(SHARES[0]))),
                        numbers.money(money(outlook.cost().quantile(SHARES[2])))));
    }

    // ---- in JSON

    ObjectNode json() {
        ObjectNode answer = figuresJson();
        answer.put("job", worked.job().id());
        answer.put("currency", quote.ledger().currency().getCode());
        answer.put("net", quote.price().net().getAmount());
        finish.ifPresent(f -> finishJson(answer, f));
        ArrayNode drivers = answer.putArray("drivers");
        causes().forEach(cause -> {
            ObjectNode one = drivers.addObject();
            one.put("kind", Answers.word(cause.kind()));
            one.put("name", cause.name());
            one.put("ofMinutes", figure(cause.ofHours()));
            one.put("ofCost", figure(cause.ofCost()));
            cause.ofFinish().ifPresent(share -> one.put("ofFinish", figure(share)));
        });
        return answer;
    }

    private void finishJson(ObjectNode answer, FinishChance by) {
        ObjectNode node = answer.putObject("finish");
        node.put("by", chance.isPresent() ? "timetable" : "clock");
        node.put("from", by.moment().apply(0.0).toString());
        quantiles(node, by.minutes());
        for (double share : SHARES) {
            ((ObjectNode) node.get("p" + Math.round(share * 100)))
                    .put("at", by.readyBy(share).toString());
        }
        if (by.inTime().isPresent()) {
            ObjectNode wanted = answer.putObject("wanted");
            wanted.put("by", worked.job().wanted().orElseThrow().toString());
            wanted.put("chance", figure(by.inTime().getAsDouble()));
            wanted.set("band", band(by.band().orElseThrow()));
            by.textbook().ifPresent(textbook -> wanted.put("textbook", figure(textbook)));
        }
        if (chance.isPresent()) {
            answer.set("steps", ChancePrinter.stepsJson(chance.get()));
            answer.set("missed", ChancePrinter.missedJson(chance.get()));
        } else {
            ArrayNode steps = answer.putArray("steps");
            outlook.clock().orElseThrow().roles().forEach(role -> {
                ObjectNode one = steps.addObject();
                one.put("step", role.activity());
                one.put("criticality", figure(role.criticality()));
                one.put("rankCorrelation", figure(role.correlation()));
            });
        }
    }

    /** Chance of a loss, hours and cost, and of being ready in time. */
    ObjectNode figuresJson() {
        ObjectNode answer = Answers.object();
        answer.put("runs", outlook.work().runs());
        answer.put("seed", outlook.work().seed());
        answer.put("lossChance", figure(loss()));
        finish.map(FinishChance::inTime)
                .filter(OptionalDouble::isPresent)
                .ifPresent(inTime -> answer.put("inTimeChance", figure(inTime.getAsDouble())));
        quantiles(answer.putObject("minutes"), outlook.minutes());
        quantiles(answer.putObject("cost"), outlook.cost());
        return answer;
    }

    private static void quantiles(ObjectNode into, Sample sample) {
        into.put("mean", figure(sample.mean()));
        into.put("deviation", figure(sample.deviation()));
        for (double share : SHARES) {
            ObjectNode one = into.putObject("p" + Math.round(share * 100));
            one.put("value", figure(sample.quantile(share)));
            one.set("band", band(sample.band(share, CONFIDENCE)));
        }
    }

    private static ArrayNode band(Sample.Band band) {
        return Answers.array().add(figure(band.low())).add(figure(band.high()));
    }

    private static BigDecimal figure(double value) {
        return Answers.figure(BigDecimal.valueOf(value));
    }

    // ---- values

    private double loss() {
        return outlook.lossAt(quote.price().net());
    }

    private String moment(LocalDateTime at) {
        return numbers.day(at.toLocalDate()) + " " + at.toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    }

    private Money money(double amount) {
        return Money.of(quote.ledger().currency(), decimal(amount), RoundingMode.HALF_UP);
    }

    private String percent(double share, int decimals) {
        return numbers.fixed(decimal(100 * share), decimals) + " %";
    }

    private static BigDecimal decimal(double value) {
        return BigDecimal.valueOf(value);
    }
}
