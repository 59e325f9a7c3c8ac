package baywright.cli;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import baywright.safety.HazardSheet;
import baywright.site.JudgedJob;
import baywright.site.Numbers;
import baywright.site.Site;
import baywright.workspace.JobFile;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** What may hurt people on one day of the shop, over all its jobs. */
final class SafetyDay {

    private final Session session;
    private final LocalDate day;
    private final SafetySheet paper;
    private final Site site;
    private final List<JudgedJob> jobs = new ArrayList<>();

    /**
     * Opens the shop.
     *
     * @param given a workspace, or the folder of one of its jobs
     */
    SafetyDay(Session session, Path given, LocalDate day, SafetySheet paper) {
        this.session = session;
        this.day = day;
        this.paper = paper;
        Path workspace = Files.exists(given.resolve("shop.json"))
                ? given
                : JobPath.of(session, given).workspace();
        site = Site.open(workspace, session.clock(), session.cache());
        for (JobFile file : site.workspace().jobs()) {
            if (file.job().isEmpty()) {
                new ProblemPrinter(session).print(session.console().err(), workspace, Site.problemsOf(file));
                continue;
            }
            JudgedJob judged = site.judge(file.job().get());
            if (HazardSheet.isWorked(judged.safe(), day)) {
                jobs.add(judged);
            }
        }
    }

    int show() {
        Locale reader = session.console().locale();
        HazardSheet sheet =
                sheet(reader, job -> new FindingText(job.setting(), job.job().plan(), reader));
        paper.write(site, locale -> sheet(locale, job -> SafetySheet.onPaper(site, job, locale)));
        if (session.json()) {
            Answers.print(session, json(sheet));
        } else {
            print(sheet);
        }
        boolean stopped = sheet.told().stream().anyMatch(t -> t.finding().severity() == Severity.STOP);
        return stopped ? ExitStatus.STOPPED : ExitStatus.FINE;
    }

    private HazardSheet sheet(Locale locale, Function<JudgedJob, FindingText> sentences) {
        List<HazardSheet.Part> parts = jobs.stream()
                .map(job -> SafetySheet.part(job, sentences.apply(job)))
                .toList();
        return HazardSheet.ofDay(site.shop().name(), day, parts, locale);
    }

    private void print(HazardSheet sheet) {
        if (jobs.isEmpty()) {
            session.say("safety.day.none", day.toString());
            return;
        }
        for (JudgedJob judged : jobs) {
            session.console()
                    .out()
                    .println(session.console().paint(Ink.HEAD, judged.job().title()));
            List<Finding> findings = sheet.told().stream()
                    .filter(t -> t.job().equals(judged.job().title()))
                    .map(HazardSheet.Told::finding)
                    .toList();
            new FindingPrinter(
                            session,
                            session.sentences(judged.setting(), judged.job().plan()))
                    .print(findings);
        }
        Numbers numbers = new Numbers(session.console().locale());
        Table table = new Table(
                session.text("demo.job"),
                session.text("safety.hand"),
                ">" + session.text("safety.vibration"),
                ">" + session.text("safety.points"),
                ">" + session.text("safety.noise"));
        for (HazardSheet.Exposed one : sheet.exposed()) {
            boolean all = one.job().isEmpty();
            boolean noise = !one.day().noise().isEmpty();
            table.add(
                    all ? session.text("safety.day.one-person") : one.job(),
                    all ? "" : session.text("safety.person", one.day().hand()),
                    numbers.fixed(BigDecimal.valueOf(one.day().dailyVibration()), 1) + " m/s²",
                    numbers.fixed(BigDecimal.valueOf(one.day().vibrationPoints()), 0),
                    noise ? numbers.fixed(BigDecimal.valueOf(one.day().dailyNoise()), 1) + " dB(A)" : "–");
        }
        table.print(session.console(), "");
        session.say("safety.advice");
    }

    private ObjectNode json(HazardSheet sheet) {
        ObjectNode answer = Answers.object();
        answer.put("day", day.toString());
        ArrayNode all = answer.putArray("jobs");
        jobs.forEach(j -> all.add(j.job().id()));
        ArrayNode tasks = answer.putArray("tasks");
        for (HazardSheet.BayDay bay : sheet.bayDays()) {
            for (HazardSheet.Task task : bay.tasks()) {
                ObjectNode one = tasks.addObject();
                one.put("bay", bay.bay());
                one.put("job", task.job());
                one.put("step", task.step());
                one.put("title", task.title());
                one.put("people", task.people());
                one.put("minutes", task.minutes());
            }
        }
        ArrayNode findings = answer.putArray("findings");
        for (HazardSheet.Told told : sheet.told()) {
            ObjectNode one = findings.addObject();
            one.put("code", told.finding().code());
            one.put("severity", Answers.word(told.finding().severity()));
            one.put("job", told.job());
            one.put("sentence", told.sentence());
        }
        answer.put("advice", session.text("safety.advice"));
        return answer;
    }
}
