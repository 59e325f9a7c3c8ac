package baywright.safety;

import baywright.library.StageTerms;
import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.plan.StepWork;
import baywright.quantity.Quantity;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Typed air and surface of a day against a stage's bounds and the dew point. A day that nobody typed is not judged. */
final class ClimateRule {

    private record Judged(String step, LocalDate day) {}

    private final SafetyCase all;
    private final List<Finding> findings = new ArrayList<>();

    ClimateRule(SafetyCase all) {
        this.all = all;
    }

    List<Finding> check(List<DayBook.Stint> stints) {
        Set<Judged> judged = new LinkedHashSet<>();
        for (DayBook.Stint stint : stints) {
            Optional<JobSafety.DayClimate> air = all.job().climateOf(stint.day());
            if (air.isPresent() && judged.add(new Judged(stint.work().step(), stint.day()))) {
                Hazards.terms(stint.work()).stream()
                        .map(StageTerms::climate)
                        .distinct()
                        .forEach(c -> judge(stint.work(), c, air.get()));
            }
        }
        return findings;
    }

    private void judge(StepWork work, StageTerms.Climate wanted, JobSafety.DayClimate air) {
        SafetySettings.ClimateRule rule = all.settings().climate();
        double surface = air.surface().orElse(air.temperature()).doubleValue();
        double humidity = air.humidity().doubleValue();
        bound(work, air.day(), "temperature", surface, wanted.coldest(), 1, rule.temperature());
        bound(work, air.day(), "temperature", surface, wanted.warmest(), -1, rule.temperature());
        bound(work, air.day(), "humidity", humidity, wanted.driest(), 1, rule.humidity());
        bound(work, air.day(), "humidity", humidity, wanted.dampest(), -1, rule.humidity());
        // a stage that minds humidity is one whose film a dew would spoil
        if (wanted.dampest().isPresent()) {
            double needed = DewPoint.of(air.temperature().doubleValue(), humidity) + rule.dewPoint();
            if (surface < needed) {
                add(
                        SafetyCodes.DEW_POINT,
                        Severity.WARN,
                        work,
                        new SafetyReason.Damp(air.day(), DoseRule.rounded(surface, 1), DoseRule.rounded(needed, 1)));
            }
        }
    }

    /** {@code side} 1: not below the bound, -1: not above it. */
    private void bound(
            StepWork work, LocalDate day, String what, double met, Optional<Quantity> bound, int side, double margin) {
        if (bound.isEmpty()) {
            return;
        }
        double room = side * (met - bound.get().inBase().doubleValue());
        if (room < margin) {
            boolean near = room >= 0;
            add(
                    SafetyCodes.CLIMATE,
                    near ? Severity.WARN : Severity.STOP,
                    work,
                    new SafetyReason.OutOfBounds(
                            day,
                            what,
                            near,
                            DoseRule.rounded(met, 1).stripTrailingZeros(),
                            bound.get().inBase().stripTrailingZeros()));
        }
    }

    private void add(String code, Severity severity, StepWork work, SafetyReason reason) {
        findings.add(new Finding(code, severity, Optional.of(work.step()), List.of(), reason));
    }
}
