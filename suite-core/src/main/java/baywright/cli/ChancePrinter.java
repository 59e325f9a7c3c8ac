package baywright.cli;

import baywright.schedule.ShopChance;
import baywright.schedule.ShopChance.JobChance;
import baywright.site.Numbers;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;

/** What may become of a timetable, on the terminal and in JSON. */
final class ChancePrinter {

    static final double[] SHARES = {0.5, 0.8, 0.95};

    private static final int MOST_STEPS = 6;
    private static final int MOST_WAITS = 4;

    /** A correlation of ranks that chance alone brings now and then: three standard errors of 4,096 runs. */
    private static final double LEAST_CORRELATION = 0.05;

    /** Seldom enough to be left out on the terminal. */
    private static final double SELDOM = 0.0005;

    private final Session session;
    private final Numbers numbers;

    ChancePrinter(Session session, Numbers numbers) {
        this.session = session;
        this.numbers = numbers;
    }

    // ---- on the terminal

    /** The steps that go most with the end. */
    Table steps(JobChance chance, String job, int vehicles) {
        Table table = new Table(
                session.text("chance.role-step"),
                ">" + session.text("chance.role-hangs"),
                ">" + session.text("chance.role-goes"));
        chance.roles().stream()
                .filter(role -> role.correlation() >= LEAST_CORRELATION)
                .sorted(Comparator.comparingDouble(ShopChance.Role::correlation).reversed())
                .limit(MOST_STEPS)
                .forEach(role -> table.add(
                        named(role, job, vehicles),
                        percent(role.criticality(), 0),
                        numbers.fixed(BigDecimal.valueOf(role.correlation()), 2)));
        return table;
    }

    private String named(ShopChance.Role role, String job, int vehicles) {
        String step = vehicles == 1 && role.job().equals(job)
                ? role.step()
                : role.step() + ", " + session.text("timetable.vehicle", role.vehicle());
        return role.job().equals(job) ? step : role.job() + ": " + step;
    }

    /** How often waits are too long. */
    void missed(JobChance chance) {
        List<ShopChance.Missed> often =
                chance.missed().stream().filter(m -> m.chance() >= SELDOM).toList();
        often.stream()
                .limit(MOST_WAITS)
                .map(m -> session.text(
                        "chance.missed",
                        m.from(),
                        m.to(),
                        m.why().isEmpty() ? "" : " (" + m.why() + ")",
                        numbers.duration(BigDecimal.valueOf(m.most())),
                        percent(m.chance(), 1)))
                .flatMap(text -> Wrap.lines(text, Console.WIDTH).stream())
                .forEach(session.console().out()::println);
        if (often.size() > MOST_WAITS) {
            session.say("chance.missed-more", often.size() - MOST_WAITS);
        }
    }

    /** The row of a job: when it is planned, when it is ready in so many runs, and how often in time. */
    void row(Table table, String title, JobChance chance) {
        table.add(
                title,
                moment(chance.planned()),
                moment(chance.readyBy(SHARES[0])),
                moment(chance.readyBy(SHARES[1])),
                moment(chance.readyBy(SHARES[2])),
                chance.inTime().isPresent() ? percent(chance.inTime().getAsDouble(), 0) : "");
    }

    /** Short, for four of them stand side by side. */
    private String moment(LocalDateTime at) {
        return at.format(
                DateTimeFormatter.ofPattern("EEE d MMM HH:mm", session.console().locale()));
    }

    private String percent(double share, int decimals) {
        return numbers.fixed(BigDecimal.valueOf(100 * share), decimals) + " %";
    }

    // ---- in JSON

    static ObjectNode json(JobChance chance) {
        ObjectNode answer = Answers.object();
        answer.put("job", chance.job());
        answer.put("planned", chance.planned().toString());
        for (double share : SHARES) {
            answer.put("p" + Math.round(share * 100), chance.readyBy(share).toString());
        }
        chance.wanted().ifPresent(wanted -> answer.put("wanted", wanted.toString()));
        chance.inTime().ifPresent(inTime -> answer.put("inTimeChance", figure(inTime)));
        chance.textbook().ifPresent(textbook -> answer.put("textbook", figure(textbook)));
        answer.set("steps", stepsJson(chance));
        ArrayNode causes = answer.putArray("causes");
        chance.causes().forEach(cause -> {
            ObjectNode one = causes.addObject();
            if (cause.step().isEmpty()) {
                one.put("fact", cause.fact());
            } else {
                one.put("step", cause.step());
                one.put("vehicle", cause.vehicle());
            }
            one.put("ofFinish", figure(cause.share()));
        });
        answer.set("missed", missedJson(chance));
        return answer;
    }

    static ArrayNode stepsJson(JobChance chance) {
        ArrayNode steps = Answers.array();
        chance.roles().forEach(role -> {
            ObjectNode one = steps.addObject();
            one.put("job", role.job());
            one.put("vehicle", role.vehicle());
            one.put("step", role.step());
            one.put("criticality", figure(role.criticality()));
            one.put("rankCorrelation", figure(role.correlation()));
        });
        return steps;
    }

    static ArrayNode missedJson(JobChance chance) {
        ArrayNode missed = Answers.array();
        chance.missed().forEach(m -> {
            ObjectNode one = missed.addObject();
            one.put("vehicle", m.vehicle());
            one.put("from", m.from());
            one.put("to", m.to());
            one.put("why", m.why());
            one.put("mostMinutes", m.most());
            one.put("chance", figure(m.chance()));
        });
        return missed;
    }

    private static BigDecimal figure(double value) {
        return Answers.figure(BigDecimal.valueOf(value));
    }
}
