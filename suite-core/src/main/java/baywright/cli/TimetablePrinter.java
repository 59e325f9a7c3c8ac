package baywright.cli;

import baywright.safety.SafetyReport;
import baywright.schedule.Help;
import baywright.schedule.ShopChance;
import baywright.schedule.ShopTimetable;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.site.NoTimetable;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.site.TimetableText;
import baywright.workspace.Job;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A timetable for people: a table for each day, when each job is ready, what holds it up and what would help. */
final class TimetablePrinter {

    private static final String INDENT = "  ";

    private final Session session;
    private final Site site;
    private final Map<String, Job> jobs = new HashMap<>();
    private final Numbers numbers;
    private final TimetableText texts;
    private final boolean improved;

    TimetablePrinter(Session session, Site site, List<Job> jobs, boolean improved) {
        this.session = session;
        this.site = site;
        this.improved = improved;
        numbers = new Numbers(site.shop().locale());
        texts = new TimetableText(site, jobs, numbers, session.console().locale());
        jobs.forEach(j -> this.jobs.put(j.id(), j));
    }

    /** A job without a timetable, and why. */
    void none(NoTimetable none) {
        if (none.overLimits()) {
            overLimits(none);
        } else if (session.json()) {
            ObjectNode answer = Answers.object();
            answer.put("timed", false);
            answer.put("job", none.job().id());
            answer.put("planHolds", none.planHolds());
            ArrayNode steps = answer.putArray("circle");
            none.circle().forEach(steps::add);
            Answers.print(session, answer);
        } else {
            texts.none(none).forEach(session.console().out()::println);
            if (!none.planHolds()) {
                session.say("timetable.none.plan", session.command());
            }
        }
    }

    /** A job whose steps bring more in a day than people or a bay may be given, with the ways out that were tried. */
    private void overLimits(NoTimetable none) {
        SafetyReport safety = site.judge(none.job()).safety();
        RemedyPrinter ways = new RemedyPrinter(session, safety);
        if (session.json()) {
            ObjectNode answer = Answers.object();
            answer.put("timed", false);
            answer.put("job", none.job().id());
            answer.put("overLimits", true);
            answer.set("waysOut", ways.json());
            Answers.print(session, answer);
            return;
        }
        String shown = session.shown(
                site.workspace().root().resolve("jobs").resolve(none.job().id()));
        texts.none(none).stream()
                .flatMap(text -> Wrap.lines(text, Console.WIDTH).stream())
                .forEach(session.console().out()::println);
        ways.print(shown);
        if (safety.remedies().isEmpty()) {
            session.say("timetable.over-limits.read-on", session.command(), shown);
        }
    }

    void print(ShopTimetable timetable, List<Help> helps, Optional<Help> onADay, Optional<ShopChance> chances) {
        Map<LocalDate, List<Entry>> days = timetable.entries().stream()
                .filter(e -> e.doing() != Doing.STANDING || e.critical())
                .collect(Collectors.groupingBy(e -> e.from().toLocalDate(), TreeMap::new, Collectors.toList()));
        days.forEach((day, entries) -> {
            session.console().out().println(session.console().paint(Ink.HEAD, texts.day(day)));
            Table table = new Table(
                    "",
                    session.text("timetable.time"),
                    session.text("timetable.step"),
                    "~" + session.text("timetable.what"),
                    session.text("timetable.people"),
                    session.text("timetable.bay"));
            entries.forEach(e -> table.add(
                    e.critical() ? "*" : "", texts.time(e), e.step(), what(e), texts.people(e), texts.bay(e.bay())));
            table.print(session.console(), INDENT);
        });
        session.console().out().println();
        session.say("timetable.legend");
        timetable
                .ends()
                .forEach(end -> session.console()
                        .out()
                        .println(texts.end(end, late -> session.console().paint(Ink.STOP, late))));
        chances.ifPresent(this::chances);
        texts.chain(timetable.entries()).forEach(session.console().out()::println);
        proof(timetable);
        if (!timetable.keepsPromises()) {
            indented(texts.onADay(onADay, timetable.lateMinutes()));
            indented(texts.helps(helps));
        }
    }

    private String what(Entry entry) {
        return (jobs.size() > 1 ? entry.job() + ": " : "") + texts.what(entry);
    }

    /** What follows a sentence belongs to it. */
    private void indented(List<String> sentences) {
        for (int i = 0; i < sentences.size(); i++) {
            session.console().out().println((i == 0 ? "" : INDENT) + sentences.get(i));
        }
    }

    private void chances(ShopChance chances) {
        ChancePrinter printer = new ChancePrinter(session, numbers);
        session.console().out().println();
        session.say(
                "timetable.chance",
                numbers.number(BigDecimal.valueOf(chances.runs()), 0),
                String.valueOf(chances.seed()));
        Table table = new Table(
                "~" + session.text("timetable.chance.job"),
                ">" + session.text("timetable.chance.planned"),
                ">" + session.text("timetable.chance.p50"),
                ">" + session.text("timetable.chance.p80"),
                ">" + session.text("timetable.chance.p95"),
                ">" + session.text("timetable.chance.in-time"));
        chances.jobs().forEach(job -> printer.row(table, jobs.get(job.job()).title(), job));
        table.print(session.console(), INDENT);
        chances.jobs().forEach(job -> {
            session.console().out().println();
            Job of = jobs.get(job.job());
            if (chances.jobs().size() > 1) {
                session.console().out().println(of.title());
            }
            printer.steps(job, job.job(), of.vehicles()).print(session.console(), INDENT);
            printer.missed(job);
        });
        session.say("chance.roles-note");
        session.console().out().println();
    }

    private void proof(ShopTimetable timetable) {
        if (timetable.proved()) {
            session.say("timetable.proved");
        } else if (improved) {
            session.say("timetable.gap", numbers.fixed(BigDecimal.valueOf(100 * timetable.gap()), 1));
        } else {
            session.say("timetable.at-once");
        }
    }
}
