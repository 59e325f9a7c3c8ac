package baywright.cli;

import baywright.plan.Finding;
import baywright.safety.HazardSheet;
import baywright.safety.PersonDay;
import baywright.safety.Remedy;
import baywright.safety.SafetyReport;
import baywright.schedule.ShopScheduler;
import baywright.site.JudgedJob;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.workspace.Job;
import baywright.workspace.JobFile;
import baywright.workspace.WorkspaceWriter;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code baywright plan safety JOB}: what may hurt people, and the hazard sheet; with {@code --apply} one of the ways out
 * written to the job.
 */
@Command(name = "safety", resourceBundle = CommandTree.HELP)
final class PlanSafetyCommand implements Callable<Integer> {

    private static final int LEAST_WIDTH = 8;
    private static final long IMPROVED = 3_000_000_000L;

    private final Session session;

    @Parameters(paramLabel = "JOB", arity = "1", descriptionKey = "job")
    private Path job;

    @Option(names = "--html", paramLabel = "OUT", descriptionKey = "html")
    private Optional<Path> html = Optional.empty();

    @Option(names = "--pdf", paramLabel = "OUT", descriptionKey = "pdf")
    private Optional<Path> pdf = Optional.empty();

    @Option(names = "--apply", paramLabel = "N", descriptionKey = "apply-way")
    private Optional<Integer> apply = Optional.empty();

    @Option(names = "--day", paramLabel = "DATE", descriptionKey = "safety-day")
    private Optional<LocalDate> day = Optional.empty();

    @Option(names = "--language", paramLabel = "CODE", descriptionKey = "safety-language")
    private Optional<String> language = Optional.empty();

    @Option(names = "--timetable", descriptionKey = "safety-timetable")
    private boolean timetable;

    PlanSafetyCommand(Session session) {
        this.session = session;
    }

    @Override
    public Integer call() {
        if (timetable && (day.isPresent() || apply.isPresent())) {
            throw session.badInput("safety.timetable-alone");
        }
        if (day.isPresent()) {
            if (apply.isPresent()) {
                throw session.badInput("safety.day-apply");
            }
            return new SafetyDay(session, job, day.get(), new SafetySheet(session, html, pdf, language)).show();
        }
        OpenedJob opened = OpenedJob.at(session, job);
        Optional<JudgedJob> found =
                timetable ? timed(opened) : Optional.of(opened.site().judge(opened.job()));
        if (found.isEmpty()) {
            throw session.badInput("safety.no-timetable", session.command(), session.shown(job));
        }
        JudgedJob judged = found.get();
        Optional<Remedy> chosen = apply.map(n -> chosen(judged.safety(), n));
        String way =
                apply.map(new RemedyPrinter(session, judged.safety())::sentence).orElse("");
        JudgedJob shown = chosen.map(remedy -> write(opened, remedy)).orElse(judged);
        FindingPrinter findings = new FindingPrinter(
                session, session.sentences(shown.setting(), shown.job().plan()));
        new SafetySheet(session, html, pdf, language)
                .write(
                        opened.site(),
                        locale -> HazardSheet.of(
                                opened.site().shop().name(),
                                SafetySheet.part(shown, SafetySheet.onPaper(opened.site(), shown, locale)),
                                locale));
        if (session.json()) {
            ObjectNode answer = json(shown, findings);
            apply.ifPresent(n -> answer.put("applied", n));
            Answers.print(session, answer);
        } else {
            if (chosen.isPresent()) {
                Wrap.lines(way, Console.WIDTH).forEach(session.console().out()::println);
                session.say("mend.written", session.shown(job));
                session.console().out().println();
            }
            print(shown, findings);
        }
        return shown.safety().holds() ? ExitStatus.FINE : ExitStatus.STOPPED;
    }

    /** By the timetable that 'plan timetable' shows. */
    private static Optional<JudgedJob> timed(OpenedJob opened) {
        Site site = opened.site();
        return ShopScheduler.timetable(
                        List.of(site.toTime(opened.job())),
                        site.shop().calendar(),
                        ShopScheduler.Effort.until(System.nanoTime() + IMPROVED))
                .map(t -> site.judge(opened.job(), t));
    }

    private Remedy chosen(SafetyReport safety, int number) {
        if (number < 1 || number > safety.remedies().size()) {
            throw session.badInput("safety.no-such", number, safety.remedies().size());
        }
        return safety.remedies().get(number - 1);
    }

    private static JudgedJob write(OpenedJob opened, Remedy remedy) {
        Site site = opened.site();
        Job before = opened.job();
        Remedy.Change change = remedy.applyTo(before.plan(), before.safety());
        try (WorkspaceWriter writer = WorkspaceWriter.open(site.workspace())) {
            JobFile saved = writer.save(opened.file(), before.withPlan(change.plan(), change.safety()));
            return site.judge(site.job(saved));
        }
    }

    private void print(JudgedJob worked, FindingPrinter printer) {
        SafetyReport safety = worked.safety();
        List<Finding> findings = safety.findings();
        printer.print(findings);
        days(safety);
        String share = session.text(
                timetable ? "safety.assumed.timetable" : "safety.assumed",
                worked.safe().settings().vibration().triggerShare());
        Wrap.lines(share, Console.WIDTH).forEach(session.console().out()::println);
        new RemedyPrinter(session, worked.safety()).print(session.shown(job));
        Console console = session.console();
        String verdict = safety.holds()
                ? console.paint(Ink.GOOD, session.text("safety.holds"))
                : console.paint(Ink.STOP, session.text("safety.stopped"));
        session.say("safety.verdict", worked.job().title(), verdict, printer.summary(findings));
        session.say("safety.advice");
    }

    private void days(SafetyReport safety) {
        Numbers numbers = new Numbers(session.console().locale());
        int width = safety.days().stream()
                .mapToInt(d -> d.name().length())
                .map(length -> Math.max(LEAST_WIDTH, length))
                .max()
                .orElse(LEAST_WIDTH);
        session.say("safety.exposure");
        session.console()
                .out()
                .println(String.format(
                        Locale.ROOT,
                        "  %-12s %-" + width + "s %16s %8s %16s %16s",
                        session.text("safety.day"),
                        session.text("safety.hand"),
                        session.text("safety.vibration"),
                        session.text("safety.points"),
                        session.text("safety.noise"),
                        session.text("safety.worn")));
        for (PersonDay day : safety.days()) {
            boolean noise = !day.noise().isEmpty();
            session.console()
                    .out()
                    .println(String.format(
                            Locale.ROOT,
                            "  %-12s %-" + width + "s %11s m/s² %8s %10s dB(A) %10s dB(A)",
                            day.day(),
                            day.name().isEmpty() ? session.text("safety.person", day.hand()) : day.name(),
                            figure(numbers, day.dailyVibration()),
                            figure(numbers, day.vibrationPoints()),
                            noise ? figure(numbers, day.dailyNoise()) : "-",
                            noise ? figure(numbers, day.protectedNoise()) : "-"));
        }
    }

    private static String figure(Numbers numbers, double value) {
        return numbers.fixed(BigDecimal.valueOf(value), 1);
    }

    private ObjectNode json(JudgedJob worked, FindingPrinter printer) {
        ObjectNode answer = Answers.object();
        answer.put("job", worked.job().id());
        answer.put("holds", worked.safety().holds());
        var days = answer.putArray("days");
        for (PersonDay day : worked.safety().days()) {
            ObjectNode one = days.addObject();
            one.put("day", day.day().toString());
            one.put("hand", day.hand());
            if (!day.name().isEmpty()) {
                one.put("person", day.name());
            }
            ExposureTable.putDoses(one, day);
        }
        answer.set("findings", printer.json(worked.safety().findings()));
        answer.set("waysOut", new RemedyPrinter(session, worked.safety()).json());
        answer.put("advice", session.text("safety.advice"));
        return answer;
    }
}
