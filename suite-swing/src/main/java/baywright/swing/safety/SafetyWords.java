package baywright.swing.safety;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.safety.Agent;
import baywright.safety.DayDose;
import baywright.safety.DoseShare;
import baywright.safety.PersonDay;
import baywright.safety.Remedy;
import baywright.safety.SafetyCheck;
import baywright.safety.SafetyReport;
import baywright.safety.SafetySettings;
import baywright.site.WorkedJob;
import baywright.swing.api.Destination;
import baywright.swing.api.Readout;
import baywright.swing.parts.TrailLine;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Puts a worked job's exposures, ways out and findings into words. */
final class SafetyWords {

    private static final double MINUTES = 60;
    private static final double PERCENT = 100;

    private final WorkedJob worked;
    private final Readout readout;
    private final FindingText findings;

    SafetyWords(WorkedJob worked, Readout readout) {
        this.worked = worked;
        this.readout = readout;
        findings = new FindingText(worked.setting(), worked.job().plan(), readout.locale());
    }

    /** A finding's sentence. */
    String of(Finding finding) {
        return Words.capital(findings.of(finding));
    }

    /** A step by its stage's title and its id. */
    String step(String id) {
        return Words.of(
                "step",
                worked.job().plan().step(id).map(Step::stage).map(this::title).orElse(id),
                id);
    }

    private String title(String stage) {
        var known = worked.setting().library().stageById().get(stage);
        return known == null ? stage : known.title();
    }

    private String item(String id) {
        var known = worked.setting().library().itemById().get(id);
        return known == null ? id : known.title();
    }

    String number(double value, int decimals) {
        return readout.number(BigDecimal.valueOf(value), decimals);
    }

    String day(LocalDate day) {
        return readout.day(day);
    }

    private static String key(Enum<?> constant) {
        return constant.name();
    }

    // exposures

    /** Who and when. */
    String who(PersonDay day) {
        return Words.of(
                "who", readout.day(day.day()), day.name().isEmpty() ? Words.of("hand", day.hand()) : day.name());
    }

    /** The value with its unit. */
    String figure(DayDose dose) {
        return figure(dose.kind(), dose.value());
    }

    private String figure(DayDose.Kind kind, double value) {
        return Words.of("figure." + key(kind), number(value, kind == DayDose.Kind.VAPOUR ? 0 : 1));
    }

    /** What the value means beside those that it is judged by. */
    String verdict(DayDose dose) {
        return dose.reached()
                .map(b -> Words.of("reached." + b.grade()))
                .orElseGet(() -> Words.of("below." + dose.borders().get(0).grade()));
    }

    /** Where a value comes from: the sum, then each step with its machine, then what it is judged by. */
    List<TrailLine> trail(DayDose dose, PersonDay day) {
        List<TrailLine> lines = new ArrayList<>();
        SafetySettings settings = worked.safe().settings();
        lines.add(TrailLine.of(Words.of(
                "trail." + key(dose.kind()),
                figure(dose),
                number(settings.vibration().triggerShare() * PERCENT, 0))));
        Agent agent = dose.kind() == DayDose.Kind.VIBRATION ? Agent.VIBRATION : Agent.NOISE;
        for (PersonDay.Dose one : dose.from(day)) {
            boolean worn = dose.kind() == DayDose.Kind.NOISE_WORN;
            lines.add(TrailLine.of(
                    Words.of(
                            worn && one.protector() > 0 ? "trail.step.worn" : "trail.step",
                            step(one.step()),
                            figure(dose.kind(), one.level()),
                            readout.minutes(BigDecimal.valueOf(one.hours() * MINUTES)),
                            number(one.protector(), 0)),
                    Destination.step(one.step())));
            lines.add(SafetyCheck.levelLine(worked.safe(), one.step(), agent)
                    .map(place -> TrailLine.of(Words.of("trail.level.script"), place))
                    .orElseGet(() -> TrailLine.of(Words.of("trail.level.job"), Destination.step(one.step()))));
        }
        if (dose.kind() == DayDose.Kind.VAPOUR) {
            lines.addAll(solvents());
        }
        for (DayDose.Border border : dose.borders()) {
            lines.add(TrailLine.of(Words.of(
                    "trail.border." + key(dose.kind()),
                    Words.of("border." + border.grade()),
                    figure(dose.kind(), border.value()))));
        }
        return lines;
    }

    private List<TrailLine> solvents() {
        List<TrailLine> lines = new ArrayList<>();
        worked.work()
                .steps()
                .forEach(work -> work.uses().stream()
                        .filter(use -> worked.safe().settings().air().items().containsKey(use.item()))
                        .forEach(use -> lines.add(TrailLine.of(
                                Words.of(
                                        "trail.solvent",
                                        step(work.step()),
                                        item(use.item()),
                                        use.amount().toString()),
                                use.trail().place()))));
        return lines;
    }

    // ways out

    /** The words of a way's button. */
    String verb(Remedy remedy) {
        if (remedy instanceof Remedy.Share) {
            return Words.of("way.share");
        }
        return Words.of(remedy instanceof Remedy.Gentler ? "way.gentler" : "way.days");
    }

    /** What a way does. */
    String of(Remedy remedy) {
        if (remedy instanceof Remedy.Share share) {
            return Words.of("way.share.text", share.people(), names(share.steps()));
        }
        if (remedy instanceof Remedy.Move move) {
            return Words.of("way.move.text", step(move.step()), readout.moment(move.at()));
        }
        if (remedy instanceof Remedy.Split split) {
            List<String> days = split.pieces().stream()
                    .flatMap(piece -> piece.at().stream())
                    .map(at -> readout.day(at.toLocalDate()))
                    .toList();
            return Words.of("way.split.text", step(split.step()), split.pieces().size(), String.join(", ", days));
        }
        Remedy.Gentler gentler = (Remedy.Gentler) remedy;
        List<String> levels = new ArrayList<>();
        gentler.levels()
                .forEach((id, level) ->
                        levels.add(Words.of("way.level." + key(gentler.agent()), step(id), readout.number(level, 1))));
        return Words.of("way.gentler.text", String.join(", ", levels));
    }

    private String names(List<String> steps) {
        return String.join(", ", steps.stream().map(this::step).toList());
    }

    /** What a way would give: the worst day of each kind that changes, and what still stops. */
    String gives(SafetyReport after) {
        List<String> said = new ArrayList<>();
        for (Agent agent : Agent.values()) {
            Optional<DoseShare> before = worst(worked.safety(), agent);
            Optional<DoseShare> then = worst(after, agent);
            if (before.isPresent()
                    && then.isPresent()
                    && before.get().value() != then.get().value()) {
                said.add(Words.of(
                        "way.gives." + key(agent),
                        number(then.get().value(), 1),
                        number(before.get().value(), 1),
                        number(then.get().limit(), 1)));
            }
        }
        long stops = after.findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .count();
        said.add(Words.of("way.stops", stops));
        return String.join(" ", said);
    }

    private Optional<DoseShare> worst(SafetyReport report, Agent agent) {
        return report.days().stream()
                .flatMap(day -> DoseShare.of(day, worked.safe().settings()).stream())
                .filter(share -> share.agent() == agent)
                .max(Comparator.comparing(DoseShare::share));
    }
}
