package baywright.cli;

import baywright.chance.Outcome;
import baywright.chance.Sample;
import baywright.library.Item;
import baywright.library.Stage;
import baywright.money.Outlook;
import baywright.money.Quote;
import baywright.plan.Step;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.site.WorkedJob;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
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
    private final Numbers numbers;

    /** A cause of spread with its share of the variance of each figure. */
    private record Cause(Outcome.Kind kind, String name, double ofHours, double ofCost, OptionalDouble ofFinish) {
        double most() {
            return Math.max(Math.max(ofHours, ofCost), ofFinish.orElse(0));
        }
    }

    OutlookPrinter(Session session, Site site, WorkedJob worked, Quote quote, Outlook outlook) {
        this.session = session;
        this.site = site;
        this.worked = worked;
        this.quote = quote;
        this.outlook = outlook;
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
        printWanted();
        console.out().println();
        drivers().print(console, INDENT);
        console.out().println();
        session.say("chance.note");
    }

    private Table figures() {
        Optional<Sample> finish = outlook.clock().map(Outcome::finish);
        boolean one = worked.job().vehicles() == 1;
        Table table = new Table(
                "",
                ">" + session.text("chance.hours"),
                ">" + session.text("chance.cost"),
                finish.isEmpty() ? "" : ">" + session.text(one ? "chance.finish" : "chance.finish-of-one"));
        row(table, "chance.mean", Sample::mean, finish);
        for (double share : SHARES) {
            row(table, "chance.p" + Math.round(share * 100), sample -> sample.quantile(share), finish);
        }
        return table;
    }

    private void row(Table table, String title, ToDoubleFunction<Sample> value, Optional<Sample> finish) {
        table.add(
                session.text(title),
                numbers.duration(decimal(value.applyAsDouble(outlook.minutes()))),
                numbers.money(money(value.applyAsDouble(outlook.cost()))),
                finish.map(sample -> moment(value.applyAsDouble(sample))).orElse(""));
    }

    private void printWanted() {
        minutesToWanted()
                .ifPresent(minutes -> outlook.clock().ifPresent(clock -> {
                    Sample.Band band = clock.finish().withinBand(minutes, CONFIDENCE);
                    session.say(
                            "chance.wanted",
                            moment(worked.job().wanted().orElseThrow()),
                            percent(clock.finish().within(minutes), 1),
                            percent(band.low(), 1),
                            percent(band.high(), 1));
                    outlook.textbook()
                            .ifPresent(pert -> session.say("chance.textbook", percent(pert.within(minutes), 1)));
                }));
    }

    private Table drivers() {
        boolean clock = outlook.clock().isPresent();
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
        Map<String, Outcome.Driver> finish = new LinkedHashMap<>();
        outlook.clock().ifPresent(clock -> clock.drivers().forEach(d -> finish.put(d.kind() + d.name(), d)));
        return outlook.work().drivers().stream()
                .map(driver -> {
                    Outcome.Driver same = finish.get(driver.kind() + driver.name());
                    return new Cause(
                            driver.kind(),
                            driver.name(),
                            driver.ofFinish(),
                            driver.ofCost(),
                            same == null ? OptionalDouble.empty() : OptionalDouble.of(same.ofFinish()));
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
        table.add(session.text("chance.figure-loss"), percent(loss(), 1), runs);
        table.add(
                session.text("chance.figure-hours"),
                numbers.duration(decimal(outlook.minutes().quantile(SHARES[1]))),
                session.text(
                        "chance.figure-note",
                        numbers.duration(decimal(outlook.minutes().quantile(SHARES[0]))),
                        numbers.duration(decimal(outlook.minutes().quantile(SHARES[2])))));
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
        outlook.clock().ifPresent(clock -> {
            ObjectNode finish = answer.putObject("finish");
            finish.put("from", worked.setting().start().toString());
            quantiles(finish, clock.finish());
            minutesToWanted().ifPresent(minutes -> {
                ObjectNode wanted = answer.putObject("wanted");
                wanted.put("by", worked.job().wanted().orElseThrow().toString());
                wanted.put("chance", figure(clock.finish().within(minutes)));
                wanted.set("band", band(clock.finish().withinBand(minutes, CONFIDENCE)));
                outlook.textbook().ifPresent(pert -> wanted.put("textbook", figure(pert.within(minutes))));
            });
            ArrayNode steps = answer.putArray("steps");
            clock.roles().forEach(role -> {
                ObjectNode one = steps.addObject();
                one.put("step", role.activity());
                one.put("criticality", figure(role.criticality()));
                one.put("rankCorrelation", figure(role.correlation()));
            });
        });
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

    /** Chance of a loss, hours and cost. */
    ObjectNode figuresJson() {
        ObjectNode answer = Answers.object();
        answer.put("runs", outlook.work().runs());
        answer.put("seed", outlook.work().seed());
        answer.put("lossChance", figure(loss()));
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

    /** Empty for several vehicles: the simple clock is that of one. */
    private Optional<Double> minutesToWanted() {
        return worked.job()
                .wanted()
                .filter(wanted -> worked.job().vehicles() == 1)
                .map(wanted ->
                        Duration.between(worked.setting().start(), wanted).toSeconds() / 60.0);
    }

    private String moment(double minutes) {
        return moment(worked.setting().start().plusMinutes(Math.round(minutes)));
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
