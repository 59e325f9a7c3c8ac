package baywright.safety;

import baywright.plan.Finding;
import baywright.plan.Reason;
import baywright.plan.Severity;
import baywright.plan.StepWork;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Cautions that stop a plan until a named person answers for them, and then stay on it as a note. */
final class CautionRule {

    private static final Set<String> ISOCYANATES = Set.of("EUH204", "H334");

    private final SafetyCase all;
    private final Hazards hazards;

    CautionRule(SafetyCase all) {
        this.all = all;
        hazards = new Hazards(all);
    }

    /** One finding for each caution, at the first step that brings it. */
    List<Finding> check() {
        List<Finding> findings = new ArrayList<>();
        for (Caution caution : Caution.values()) {
            first(caution).filter(w -> !saidBy(caution, w)).ifPresent(w -> findings.add(finding(caution, w)));
        }
        return findings;
    }

    /** Each caution that the plan brings, also one that a rule of the library speaks of already. */
    List<Cautioned> cautions() {
        List<Cautioned> cautions = new ArrayList<>();
        for (Caution caution : Caution.values()) {
            first(caution)
                    .ifPresent(w -> cautions.add(
                            new Cautioned(caution, w.step(), all.job().acknowledged(caution.id()))));
        }
        return cautions;
    }

    private Optional<StepWork> first(Caution caution) {
        return all.work().steps().stream().filter(w -> concerns(caution, w)).findFirst();
    }

    private Finding finding(Caution caution, StepWork work) {
        Optional<JobSafety.Acknowledgement> by = all.job().acknowledged(caution.id());
        SafetyReason reason = by.isPresent()
                ? new SafetyReason.Acknowledged(caution, by.get().by(), by.get().at())
                : new SafetyReason.NotAcknowledged(caution);
        return new Finding(
                by.isPresent() ? SafetyCodes.ACKNOWLEDGED : SafetyCodes.ACKNOWLEDGE,
                by.isPresent() ? Severity.NOTE : Severity.STOP,
                Optional.of(work.step()),
                List.of(),
                reason);
    }

    /** A rule of the library that asks for the same signature stops the step already. */
    private boolean saidBy(Caution caution, StepWork work) {
        return caution.rule().isPresent()
                && all.job().acknowledged(caution.id()).isEmpty()
                && all.proof().findings().stream()
                        .filter(f -> f.step().equals(Optional.of(work.step())))
                        .anyMatch(f -> f.severity() == Severity.STOP
                                && f.reason() instanceof Reason.RuleSpeaks r
                                && r.rule().equals(caution.rule().get()));
    }

    boolean concerns(Caution caution, StepWork work) {
        return switch (caution) {
            case AIRBAG -> Hazards.hasRisk(work, "airbag");
            case HIGH_VOLTAGE -> Hazards.hasRisk(work, "electricity") && highVoltage(work);
            case HYDROFLUORIC ->
                hazards.items(work).stream().anyMatch(i -> i.groups().contains("hydrofluoric"));
            case JACKS -> Hazards.hasRisk(work, "lifting");
            case OLD_LININGS -> Hazards.hasRisk(work, "dust") && work.family().equals("wheels");
            case OLD_PAINT -> grinds(work, "single-stage");
            case TWO_PACK ->
                hazards.items(work).stream().anyMatch(i -> i.hazards().stream().anyMatch(ISOCYANATES::contains));
            case UNKNOWN_DUST -> grinds(work, "unknown");
        };
    }

    private boolean grinds(StepWork work, String paint) {
        return Hazards.hasRisk(work, "dust")
                && work.removals().stream()
                        .anyMatch(r -> all.fact(r.zone(), "paint").equals(paint));
    }

    /** Where the vehicle's own high voltage lies; a lamp on a lead is nothing new on such a vehicle. */
    private boolean highVoltage(StepWork work) {
        return work.zones().stream()
                .filter(z -> all.fact(z, "drive").equals("high-voltage"))
                .flatMap(z -> all.setting().shape().zone(z).stream())
                .anyMatch(z -> z.surface().equals("engine-bay"));
    }
}
