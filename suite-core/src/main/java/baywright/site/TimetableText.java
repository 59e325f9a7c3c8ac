package baywright.site;

import baywright.library.Stage;
import baywright.plan.Step;
import baywright.schedule.Help;
import baywright.schedule.ShopTimetable.Doing;
import baywright.schedule.ShopTimetable.Entry;
import baywright.schedule.ShopTimetable.JobEnd;
import baywright.workspace.Job;
import java.math.BigDecimal;
import java.text.MessageFormat;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Words a timetable for people: what goes on, when jobs are ready, what holds them up and what would help. */
public final class TimetableText {

    private static final int MINUTES_OF_DAY = 24 * 60;

    private final Site site;
    private final Numbers numbers;
    private final Locale locale;
    private final ResourceBundle texts;
    private final Map<String, Job> jobs = new HashMap<>();
    private final Map<String, String> names = new HashMap<>();

    /**
     * For the timetable of some jobs.
     *
     * @param numbers writes days and lengths
     * @param locale  of the sentences; a language without texts of its own gets the English ones
     */
    public TimetableText(Site site, List<Job> jobs, Numbers numbers, Locale locale) {
        this.site = site;
        this.numbers = numbers;
        this.locale = locale;
        texts = ResourceBundle.getBundle(
                "baywright.site.timetable",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        jobs.forEach(j -> this.jobs.put(j.id(), j));
        site.shop().people().forEach(p -> names.put("person " + p.id(), p.name()));
        site.shop().bays().forEach(b -> names.put("bay " + b.id(), b.title()));
    }

    private String say(String key, Object... values) {
        return new MessageFormat(texts.getString(key), locale).format(values);
    }

    // ---- times

    /** {@code Monday, 7 December 2026}. */
    public String day(LocalDate day) {
        return day.getDayOfWeek().getDisplayName(TextStyle.FULL, locale) + ", " + numbers.day(day);
    }

    /** {@code 08:30}. */
    public static String clock(LocalTime time) {
        return time.toString().substring(0, 5);
    }

    /** {@code Monday, 7 December 2026, 08:30}. */
    public String moment(LocalDateTime at) {
        return day(at.toLocalDate()) + ", " + clock(at.toLocalTime());
    }

    /** {@code 08:30-09:15}, with the day of its end where that is another. */
    public String time(Entry entry) {
        String times =
                clock(entry.from().toLocalTime()) + "-" + clock(entry.to().toLocalTime());
        return entry.from().toLocalDate().equals(entry.to().toLocalDate())
                ? times
                : times + " " + entry.to().getDayOfWeek().getDisplayName(TextStyle.SHORT, locale);
    }

    /** {@code 1 day 2 h 05 min}. */
    public String length(long minutes) {
        long days = minutes / MINUTES_OF_DAY;
        return say("days", days, numbers.duration(BigDecimal.valueOf(minutes % MINUTES_OF_DAY)));
    }

    // ---- what goes on

    /** Title of the stage of an entry's step. */
    public String stage(Entry entry) {
        String stage = jobs.get(entry.job()).plan().steps().stream()
                .filter(s -> s.id().equals(entry.step()))
                .map(Step::stage)
                .findFirst()
                .orElse("");
        Stage known = site.library().stageById().get(stage);
        return known == null ? stage : known.title();
    }

    /** What goes on, for which vehicle, what it waited for and where its fixed start is missed. */
    public String what(Entry entry) {
        StringBuilder text = new StringBuilder(stage(entry));
        if (jobs.get(entry.job()).vehicles() > 1) {
            text.append(", ").append(say("vehicle", entry.vehicle()));
        }
        if (entry.doing() != Doing.WORK) {
            text.append(", ").append(say(entry.doing() == Doing.STANDING ? "standing" : "setting-up"));
        }
        if (!entry.waitsFor().isEmpty()) {
            String kind = entry.waitsFor().substring(0, entry.waitsFor().indexOf(' '));
            text.append("; ").append(say("waits." + kind, resource(entry.waitsFor())));
        }
        entry.movedFrom()
                .ifPresent(at ->
                        text.append("; ").append(say("moved", numbers.day(at.toLocalDate()), clock(at.toLocalTime()))));
        return text.toString();
    }

    /** Name of what an entry waits for, such as {@code bay wash}. */
    public String resource(String id) {
        return names.getOrDefault(id, id.substring(id.indexOf(' ') + 1));
    }

    /** Names of who does it. */
    public String people(Entry entry) {
        return entry.people().stream().map(p -> resource("person " + p)).collect(Collectors.joining(", "));
    }

    /** Title of a bay; nothing for no bay. */
    public String bay(String id) {
        return id.isEmpty() ? "" : resource("bay " + id);
    }

    // ---- when it is ready, and why

    /**
     * When a job is ready against when it is wanted.
     *
     * @param late marks how late it is
     */
    public String end(JobEnd end, UnaryOperator<String> late) {
        String title = jobs.get(end.job()).title();
        String ready = moment(end.end());
        if (end.wanted().isEmpty()) {
            return say("end.open", title, ready);
        }
        if (end.lateMinutes() == 0) {
            long spare = Duration.between(end.end(), end.wanted().get()).toMinutes();
            return say("end.in-time", title, ready, length(spare));
        }
        return say(
                "end.late",
                title,
                ready,
                late.apply(length(end.lateMinutes())),
                moment(end.wanted().get()));
    }

    /** On how much the end hangs, and what that most often waits for; nothing where no entry is critical. */
    public List<String> chain(Collection<Entry> entries) {
        List<Entry> critical = entries.stream().filter(Entry::critical).toList();
        List<String> sentences = new ArrayList<>();
        if (!critical.isEmpty()) {
            sentences.add(say("chain", critical.size()));
        }
        tight(critical).ifPresent(most -> sentences.add(say("tight", resource(most.getKey()), most.getValue())));
        return sentences;
    }

    private static Optional<Map.Entry<String, Long>> tight(List<Entry> critical) {
        Map<String, Long> waits = critical.stream()
                .map(Entry::waitsFor)
                .filter(w -> !w.isEmpty())
                .collect(Collectors.groupingBy(w -> w, TreeMap::new, Collectors.counting()));
        return waits.entrySet().stream().max(Map.Entry.comparingByValue());
    }

    // ---- what would help

    /**
     * The least help on one day, and when each job is ready then.
     *
     * @param late minutes that all jobs are late without it
     */
    public List<String> onADay(Optional<Help> least, long late) {
        if (least.isEmpty()) {
            return List.of(say("day.none"));
        }
        Help help = least.get();
        String more = more(help);
        List<String> sentences = new ArrayList<>();
        sentences.add(
                help.late() == 0 ? say("day.in-time", more) : say("day.late", more, length(help.late()), length(late)));
        help.ends()
                .forEach(end ->
                        sentences.add(say("day.ready", jobs.get(end.job()).title(), moment(end.end()))));
        return sentences;
    }

    private String more(Help help) {
        String day = day(help.day().orElseThrow());
        return switch (help.kind()) {
            case HOUR -> say("day.hour", day);
            case BAY -> say("day.bay", day, bay(help.what()));
            case PERSON -> say("day.person", day);
        };
    }

    /** What would help every day, after a sentence that says so. */
    public List<String> helps(List<Help> helps) {
        if (helps.isEmpty()) {
            return List.of(say("help.none"));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(say("help"));
        for (Help help : helps) {
            String then = help.late() == 0 ? say("help.in-time") : say("help.late", length(help.late()));
            sentences.add(
                    help.kind() == Help.Kind.PERSON
                            ? say("help.person", length(help.gained()), then)
                            : say("help.bay", bay(help.what()), length(help.gained()), then));
        }
        return sentences;
    }

    // ---- why there is none

    /** That there is no timetable, and what is known of the reason apart from a plan that does not hold. */
    public List<String> none(NoTimetable none) {
        if (none.overLimits()) {
            return List.of(say("over-limits", none.job().title()));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(say("none", none.job().title()));
        if (none.planHolds()) {
            sentences.add(none.circle().isEmpty() ? say("none.help") : say("circle", String.join(", ", none.circle())));
        }
        return sentences;
    }
}
