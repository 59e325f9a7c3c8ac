package baywright.cli;

import baywright.library.Stage;
import baywright.plan.Step;
import baywright.safety.SafetyReport;
import baywright.schedule.Help;
import baywright.schedule.ShopChance;
import baywright.schedule.ShopTimetable;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.schedule.ShopTimetable.JobEnd;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.workspace.Job;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A timetable for people: a table for each day, when each job is ready, what holds it up and what would help. */
final class TimetablePrinter {

    private static final String INDENT = "  ";
    private static final int MINUTES_OF_DAY = 24 * 60;

    private final Session session;
    private final Site site;
    private final Map<String, Job> jobs = new HashMap<>();
    private final Map<String, String> names = new HashMap<>();
    private final Numbers numbers;
    private final boolean improved;

    TimetablePrinter(Session session, Site site, List<Job> jobs, boolean improved) {
        this.session = session;
        this.site = site;
        this.improved = improved;
        numbers = new Numbers(site.shop().locale());
        jobs.forEach(j -> this.jobs.put(j.id(), j));
        site.shop().people().forEach(p -> names.put("person " + p.id(), p.name()));
        site.shop().bays().forEach(b -> names.put("bay " + b.id(), b.title()));
    }

    void none(Job job, boolean holds, List<String> circle) {
        if (session.json()) {
            ObjectNode answer = Answers.object();
            answer.put("timed", false);
            answer.put("job", job.id());
            answer.put("planHolds", holds);
            ArrayNode steps = answer.putArray("circle");
            circle.forEach(steps::add);
            Answers.print(session, answer);
            return;
        }
        session.say("timetable.none", job.title());
        if (!holds) {
            session.say("timetable.none.plan", session.command());
        } else if (circle.isEmpty()) {
            session.say("timetable.none.help");
        } else {
            session.say("timetable.circle", String.join(", ", circle));
        }
    }

    /** A job whose steps bring more in a day than people or a bay may be given, with the ways out that were tried. */
    void overLimits(Job job, SafetyReport safety) {
        RemedyPrinter ways = new RemedyPrinter(session, safety);
        if (session.json()) {
            ObjectNode answer = Answers.object();
            answer.put("timed", false);
            answer.put("job", job.id());
            answer.put("overLimits", true);
            answer.set("waysOut", ways.json());
            Answers.print(session, answer);
            return;
        }
        String shown = session.shown(site.workspace().root().resolve("jobs").resolve(job.id()));
        String text = session.text("timetable.over-limits", job.title());
        Wrap.lines(text, Console.WIDTH).forEach(session.console().out()::println);
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
            session.console().out().println(session.console().paint(Ink.HEAD, named(day)));
            Table table = new Table(
                    "",
                    session.text("timetable.time"),
                    session.text("timetable.step"),
                    "~" + session.text("timetable.what"),
                    session.text("timetable.people"),
                    session.text("timetable.bay"));
            entries.forEach(
                    e -> table.add(e.critical() ? "*" : "", time(e), e.step(), what(e), people(e), bay(e.bay())));
            table.print(session.console(), INDENT);
        });
        session.console().out().println();
        session.say("timetable.legend");
        timetable.ends().forEach(this::end);
        chances.ifPresent(this::chances);
        chain(timetable);
        proof(timetable);
        if (!timetable.keepsPromises()) {
            onADay(onADay, timetable.lateMinutes());
            helps(helps);
        }
    }

    private String named(LocalDate day) {
        return day.getDayOfWeek()
                        .getDisplayName(TextStyle.FULL, session.console().locale()) + ", " + numbers.day(day);
    }

    private static String clock(LocalTime time) {
        return time.toString().substring(0, 5);
    }

    private String time(Entry entry) {
        String from = clock(entry.from().toLocalTime());
        String to = clock(entry.to().toLocalTime());
        boolean sameDay = entry.from().toLocalDate().equals(entry.to().toLocalDate());
        return sameDay
                ? from + "-" + to
                : from + "-" + to + " "
                        + entry.to()
                                .getDayOfWeek()
                                .getDisplayName(
                                        TextStyle.SHORT, session.console().locale());
    }

    private String what(Entry entry) {
        Job job = jobs.get(entry.job());
        String stage = job.plan().steps().stream()
                .filter(s -> s.id().equals(entry.step()))
                .map(Step::stage)
                .findFirst()
                .orElse("");
        Stage known = site.library().stageById().get(stage);
        StringBuilder text = new StringBuilder(jobs.size() > 1 ? job.id() + ": " : "");
        text.append(known == null ? stage : known.title());
        if (job.vehicles() > 1) {
            text.append(", ").append(session.text("timetable.vehicle", entry.vehicle()));
        }
        if (entry.doing() != Doing.WORK) {
            text.append(", ").append(session.text("timetable." + Answers.word(entry.doing())));
        }
        if (!entry.waitsFor().isEmpty()) {
            text.append("; ")
                    .append(session.text(
                            "timetable.waits."
                                    + entry.waitsFor()
                                            .substring(0, entry.waitsFor().indexOf(' ')),
                            resource(entry.waitsFor())));
        }
        entry.movedFrom()
                .ifPresent(at -> text.append("; ")
                        .append(session.text(
                                "timetable.moved", numbers.day(at.toLocalDate()), clock(at.toLocalTime()))));
        return text.toString();
    }

    private String resource(String id) {
        return names.getOrDefault(id, id.substring(id.indexOf(' ') + 1));
    }

    private String people(Entry entry) {
        return entry.people().stream().map(p -> resource("person " + p)).collect(Collectors.joining(", "));
    }

    private String bay(String id) {
        return id.isEmpty() ? "" : resource("bay " + id);
    }

    private String moment(LocalDateTime at) {
        return named(at.toLocalDate()) + ", " + clock(at.toLocalTime());
    }

    private String length(long minutes) {
        long days = minutes / MINUTES_OF_DAY;
        return session.text("timetable.days", days, numbers.duration(BigDecimal.valueOf(minutes % MINUTES_OF_DAY)));
    }

    private void end(JobEnd end) {
        String title = jobs.get(end.job()).title();
        String ready = moment(end.end());
        if (end.wanted().isEmpty()) {
            session.say("timetable.end.open", title, ready);
        } else if (end.lateMinutes() == 0) {
            long spare = Duration.between(end.end(), end.wanted().get()).toMinutes();
            session.say("timetable.end.in-time", title, ready, length(spare));
        } else {
            session.say(
                    "timetable.end.late",
                    title,
                    ready,
                    session.console().paint(Ink.STOP, length(end.lateMinutes())),
                    moment(end.wanted().get()));
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

    private void chain(ShopTimetable timetable) {
        List<Entry> critical =
                timetable.entries().stream().filter(Entry::critical).toList();
        session.say("timetable.chain", critical.size());
        Map<String, Long> waits = critical.stream()
                .map(Entry::waitsFor)
                .filter(w -> !w.isEmpty())
                .collect(Collectors.groupingBy(w -> w, TreeMap::new, Collectors.counting()));
        waits.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .ifPresent(most -> session.say("timetable.tight", resource(most.getKey()), most.getValue()));
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

    private void onADay(Optional<Help> least, long late) {
        if (least.isEmpty()) {
            session.say("timetable.day.none");
            return;
        }
        Help help = least.get();
        String day = named(help.day().orElseThrow());
        String more = session.text(
                "timetable.day." + Answers.word(help.kind()),
                day,
                help.kind() == Help.Kind.BAY ? bay(help.what()) : "");
        if (help.late() == 0) {
            session.say("timetable.day.in-time", more);
        } else {
            session.say("timetable.day.late", more, length(help.late()), length(late));
        }
        help.ends()
                .forEach(end -> session.console()
                        .out()
                        .println(INDENT
                                + session.text(
                                        "timetable.day.ready",
                                        jobs.get(end.job()).title(),
                                        moment(end.end()))));
    }

    private void helps(List<Help> helps) {
        if (helps.isEmpty()) {
            session.say("timetable.help.none");
            return;
        }
        session.say("timetable.help");
        for (Help help : helps) {
            String then = help.late() == 0
                    ? session.text("timetable.help.in-time")
                    : session.text("timetable.help.late", length(help.late()));
            String text = help.kind() == Help.Kind.PERSON
                    ? session.text("timetable.help.person", length(help.gained()), then)
                    : session.text("timetable.help.bay", bay(help.what()), length(help.gained()), then);
            session.console().out().println(INDENT + text);
        }
    }
}
