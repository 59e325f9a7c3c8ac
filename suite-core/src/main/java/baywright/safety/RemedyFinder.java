package baywright.safety;

import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.plan.StepWork;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks for ways out of each exposure over its limit: share it among people, split it over days, change the machine. A way
 * is offered only when the changed plan proves and the exposure stops it no more; the others stops stay for their own ways.
 */
final class RemedyFinder {

    private static final int MOST_HANDS = 4;
    private static final int MOST_DAYS = 5;
    private static final double SAFE_SIDE = 0.999;

    private final SafetyCase all;
    private final SafetyReport report;

    RemedyFinder(SafetyCase all, SafetyReport report) {
        this.all = all;
        this.report = report;
    }

    List<Remedy> find() {
        List<Remedy> remedies = new ArrayList<>();
        Set<String> done = new HashSet<>();
        for (Finding finding : report.findings()) {
            if (finding.severity() == Severity.STOP
                    && finding.reason() instanceof SafetyReason.Dose dose
                    && done.add(dose.agent() + " " + dose.day())) {
                PersonDay day = report.days().stream()
                        .filter(d -> d.day().equals(dose.day()) && d.hand() == dose.hand())
                        .findFirst()
                        .orElseThrow();
                share(dose, day).ifPresent(remedies::add);
                otherDay(dose, day).ifPresent(remedies::add);
                gentler(dose, day).ifPresent(remedies::add);
            }
        }
        return remedies;
    }

    private Optional<Remedy> share(SafetyReason.Dose dose, PersonDay day) {
        List<String> steps = steps(dose, day);
        int there = all.people().isEmpty()
                ? MOST_HANDS
                : Math.min(MOST_HANDS, all.people().size());
        for (int people = 2; people <= there; people++) {
            Remedy share = new Remedy.Share(steps, people);
            if (helps(share, dose)) {
                return Optional.of(share);
            }
        }
        return Optional.empty();
    }

    private Optional<Remedy> otherDay(SafetyReason.Dose dose, PersonDay day) {
        List<String> steps = steps(dose, day);
        LocalDateTime next = nextMorning(dose.day(), 1);
        for (String step : steps.subList(1, steps.size())) {
            Remedy move = new Remedy.Move(step, next);
            if (helps(move, dose)) {
                return Optional.of(move);
            }
        }
        for (String id : steps) {
            Optional<StepWork> work = all.work(id);
            Optional<Step> step = all.step(id);
            // an amount that the step gives belongs to the whole of it and cannot be shared out by zones
            if (work.isPresent() && step.isPresent() && step.get().drivers().isEmpty()) {
                int most = Math.min(MOST_DAYS, work.get().zones().size());
                for (int parts = 2; parts <= most; parts++) {
                    Remedy split = split(id, work.get().zones(), parts, dose.day());
                    if (helps(split, dose)) {
                        return Optional.of(split);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Remedy split(String id, List<String> zones, int parts, LocalDate first) {
        Set<String> taken = new HashSet<>();
        all.plan().steps().forEach(s -> taken.add(s.id()));
        List<Remedy.Split.Piece> pieces = new ArrayList<>();
        int from = 0;
        for (int part = 0; part < parts; part++) {
            int to = from + (zones.size() - from) / (parts - part);
            String name = id;
            for (int n = part + 1; part > 0 && !taken.add(name); n++) {
                name = id + "-" + n;
            }
            Optional<LocalDateTime> at = part == 0 ? Optional.empty() : Optional.of(nextMorning(first, part));
            pieces.add(new Remedy.Split.Piece(name, zones.subList(from, to), at));
            from = to;
        }
        return new Remedy.Split(id, pieces);
    }

    private Optional<Remedy> gentler(SafetyReason.Dose dose, PersonDay day) {
        Map<String, BigDecimal> levels = new LinkedHashMap<>();
        boolean vibration = dose.agent() == Agent.VIBRATION;
        double border = dose.border().doubleValue();
        double factor = vibration ? border / day.dailyVibration() * SAFE_SIDE : 0;
        double less = vibration ? 0 : day.protectedNoise() - border + 1 - SAFE_SIDE;
        for (PersonDay.Dose one : day.doses(dose.agent())) {
            double level = vibration ? one.level() * factor : one.level() - less;
            levels.merge(one.step(), BigDecimal.valueOf(level).setScale(1, RoundingMode.FLOOR), BigDecimal::min);
        }
        Remedy gentler = new Remedy.Gentler(dose.agent(), levels);
        return helps(gentler, dose) ? Optional.of(gentler) : Optional.empty();
    }

    private boolean helps(Remedy remedy, SafetyReason.Dose dose) {
        SafetyCase changed = all.with(remedy.applyTo(all.plan(), all.job()));
        if (!changed.proof().holds() && all.proof().holds()) {
            return false;
        }
        List<Finding> before = report.findings();
        List<Finding> after = SafetyCheck.withoutRemedies(changed).findings();
        return stops(after, dose.agent(), dose.day()) == 0 && stops(after) < stops(before);
    }

    private static long stops(List<Finding> findings) {
        return findings.stream().filter(f -> f.severity() == Severity.STOP).count();
    }

    private static long stops(List<Finding> findings, Agent agent, LocalDate day) {
        return findings.stream()
                .filter(f -> f.severity() == Severity.STOP
                        && f.reason() instanceof SafetyReason.Dose d
                        && d.agent() == agent
                        && d.day().equals(day))
                .count();
    }

    private static List<String> steps(SafetyReason.Dose dose, PersonDay day) {
        return day.doses(dose.agent()).stream()
                .map(PersonDay.Dose::step)
                .distinct()
                .toList();
    }

    private LocalDateTime nextMorning(LocalDate day, int days) {
        return day.plusDays(days).atTime(all.setting().start().toLocalTime());
    }
}
