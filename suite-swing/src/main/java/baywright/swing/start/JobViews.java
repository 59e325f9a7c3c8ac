package baywright.swing.start;

import baywright.library.Stage;
import baywright.money.CapFit;
import baywright.money.Quote;
import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Proof;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.plan.ZoneChoice;
import baywright.plan.ZoneNames;
import baywright.site.Numbers;
import baywright.site.WorkedJob;
import baywright.swing.start.JobView.Figure;
import baywright.swing.start.JobView.FindingView;
import baywright.swing.start.JobView.StepView;
import baywright.workspace.Job;
import baywright.workspace.Shop;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts what the core says of a site's jobs into the reader's words and the shop's way of writing numbers. */
final class JobViews {

    /** So many zones are named; of more, the rest is counted. */
    private static final int NAMED_ZONES = 2;

    private final Locale locale;
    private final Numbers numbers;
    private final DateTimeFormatter start;

    JobViews(Shop shop, Locale locale) {
        this.locale = locale;
        this.numbers = new Numbers(shop.locale());
        this.start = DateTimeFormatter.ofPattern("EEE HH:mm", locale);
    }

    /** What is shown of a job that could not be worked out. */
    static JobView trouble(Job job, String why) {
        return new JobView(job.id(), job.title(), about(job), why, false, List.of(), List.of(), List.of());
    }

    /** Title and vehicle of a job that is not worked out yet. */
    static JobView waiting(Job job) {
        return new JobView(
                job.id(), job.title(), about(job), Words.of("job.waiting"), true, List.of(), List.of(), List.of());
    }

    JobView of(WorkedJob worked) {
        return new JobView(
                worked.job().id(),
                worked.job().title(),
                about(worked.job()),
                "",
                false,
                figures(worked),
                steps(worked),
                findings(worked));
    }

    private static String about(Job job) {
        return Stream.of(job.vehicle().colour(), job.vehicle().description(), job.customer())
                .filter(text -> !text.isBlank())
                .collect(Collectors.joining(" · "));
    }

    private List<Figure> figures(WorkedJob worked) {
        List<Figure> figures = new ArrayList<>();
        figures.add(figure("figure.hands-on", numbers.duration(worked.minutes())));
        if (worked.offer() instanceof Quote quote) {
            figures.add(figure("figure.net", numbers.money(quote.price().net())));
            figures.add(new Figure(
                    quote.terms().tax().name() + " "
                            + numbers.number(quote.terms().tax().percent(), 3) + " %",
                    numbers.money(quote.price().tax())));
            figures.add(figure("figure.price", numbers.money(quote.price().gross())));
            figures.add(figure("figure.high", numbers.money(quote.range().high().gross())));
            quote.cap().ifPresent(fit -> figures.add(cap(fit)));
        }
        return figures;
    }

    private Figure cap(CapFit fit) {
        return fit.fits()
                ? figure("figure.cap.left", numbers.money(fit.spare()))
                : figure("figure.cap.over", numbers.money(fit.over()));
    }

    private static Figure figure(String key, String amount) {
        return new Figure(Words.of(key), amount);
    }

    private List<StepView> steps(WorkedJob worked) {
        Map<String, StepWork> works = worked.work().steps().stream()
                .collect(Collectors.toMap(StepWork::step, Function.identity(), (first, again) -> first));
        ZoneNames names = new ZoneNames(worked.setting().shape(), locale);
        List<StepView> views = new ArrayList<>();
        for (int i = 0; i < worked.job().plan().steps().size(); i++) {
            Step step = worked.job().plan().steps().get(i);
            Proof.Slot slot = worked.proof().clock().get(i);
            LocalDateTime at = worked.setting()
                    .start()
                    .plus(Duration.ofSeconds(
                            slot.start().multiply(BigDecimal.valueOf(60)).longValue()));
            Stage stage = worked.setting().library().stageById().get(step.stage());
            views.add(new StepView(
                    step.id(),
                    stage == null ? step.stage() : stage.title(),
                    capital(names.of(
                            ZoneChoice.resolve(step.zones(), worked.setting().shape()), NAMED_ZONES)),
                    start.format(at),
                    Optional.ofNullable(works.get(step.id()))
                            .map(work -> numbers.duration(
                                    work.attendedMinutes().mean().add(work.setUpMinutes())))
                            .orElse("")));
        }
        return views;
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private List<FindingView> findings(WorkedJob worked) {
        FindingText texts = new FindingText(worked.setting(), worked.job().plan(), locale);
        return worked.findings().stream()
                .sorted(Comparator.comparing(Finding::severity))
                .map(finding ->
                        new FindingView(finding.severity(), finding.step().orElse(""), capital(texts.of(finding))))
                .toList();
    }
}
