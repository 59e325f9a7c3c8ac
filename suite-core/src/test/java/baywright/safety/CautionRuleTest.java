package baywright.safety;

import static baywright.safety.Cases.MONDAY;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.Severity;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Dangers that stop a plan until a named person answers for them. */
class CautionRuleTest {

    private static final List<Worker> TRAINED = List.of(new Worker("p1", "One", List.of(Worker.TWO_PACK)), two());

    private static Worker two() {
        return new Worker("p2", "Two", List.of());
    }

    /** A plan that brings one danger and nothing else that stops. */
    private static Cases plan(Caution caution) {
        Cases all = new Cases().people(TRAINED.toArray(Worker[]::new));
        String[] grind = {"film { removes 1.um, 2.um, 3.um }", "hazards { risk 'dust' }"};
        return switch (caution) {
            case AIRBAG -> all.stage("steam", "hazards { risk 'airbag' }").step("steam", "bonnet");
            case HIGH_VOLTAGE -> all.step("engine-bay-clean", "engine-bay").facts(Map.of("drive", "high-voltage"));
            case HYDROFLUORIC ->
                all.item("strong-acid", List.of("H314"), "acid", "hydrofluoric")
                        .stage("etch", "uses { item 'strong-acid', 25.ml }")
                        .step("etch", "bonnet");
            case JACKS -> all.stage("jack", "hazards { risk 'lifting' }").step("jack", "bonnet");
            case OLD_LININGS -> all.stage("brush", "hazards { risk 'dust' }").step("brush", "surface:wheel");
            case OLD_PAINT -> all.stage("grind", grind).step("grind", "bonnet").facts(Map.of("paint", "single-stage"));
            case TWO_PACK ->
                all.item("two-pack-lacquer", List.of("H226", "EUH204"))
                        .stage("spray", "uses { item 'two-pack-lacquer', 25.ml }")
                        .step("spray", "bonnet");
            case UNKNOWN_DUST ->
                all.stage("grind", grind).step("grind", "bonnet").facts(Map.of("paint", "unknown"));
        };
    }

    private static List<Caution> open(SafetyReport report) {
        return report.findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .map(f -> f.reason() instanceof SafetyReason.NotAcknowledged n ? n.caution() : null)
                .toList();
    }

    @ParameterizedTest
    @EnumSource(Caution.class)
    void aDangerStopsUntilANamedPersonAnswersAndThenStaysAsANote(Caution caution) {
        SafetyReport before = plan(caution).check();
        assertThat(open(before)).contains(caution);
        JobSafety answered = new JobSafety(
                open(before).stream()
                        .map(c -> new JobSafety.Acknowledgement(c.id(), "Maren Thistlewick", MONDAY))
                        .toList(),
                List.of(),
                Map.of());
        SafetyCase after = plan(caution).job(answered).build();
        SafetyReport report = SafetyCheck.of(after);
        assertThat(open(report)).isEmpty();
        FindingText text = new FindingText(after.setting(), after.plan(), Locale.UK);
        assertThat(report.findings())
                .filteredOn(f -> f.code().equals(SafetyCodes.ACKNOWLEDGED))
                .allSatisfy(f -> assertThat(f.severity()).isEqualTo(Severity.NOTE))
                .extracting(text::of)
                .anySatisfy(s -> assertThat(s)
                        .contains("Maren Thistlewick answers for " + caution.title() + " since 2026-12-07 08:00"));
        HazardSheet.Part part = new HazardSheet.Part("Job", after, report, text);
        assertThat(HazardSheet.of("Shop", part, Locale.UK).told())
                .extracting(t -> t.finding().code())
                .contains(SafetyCodes.ACKNOWLEDGED);
    }

    @ParameterizedTest
    @EnumSource(Caution.class)
    void answersForAllOtherDangersSilenceNothing(Caution caution) {
        JobSafety answered = new JobSafety(
                Stream.of(Caution.values())
                        .filter(other -> other != caution)
                        .map(other -> new JobSafety.Acknowledgement(other.id(), "Maren Thistlewick", MONDAY))
                        .toList(),
                List.of(),
                Map.of());
        assertThat(open(plan(caution).job(answered).check())).contains(caution);
    }

    @ParameterizedTest
    @EnumSource(Caution.class)
    void whatMustBeAnsweredForIsListedWithWhoDoes(Caution caution) {
        JobSafety.Acknowledgement answer = new JobSafety.Acknowledgement(caution.id(), "Maren Thistlewick", MONDAY);
        SafetyCase open = plan(caution).build();
        assertThat(SafetyCheck.cautions(open)).contains(new Cautioned(caution, "s1", Optional.empty()));
        SafetyCase signed =
                plan(caution).job(JobSafety.NONE.acknowledged(answer)).build();
        assertThat(SafetyCheck.cautions(signed)).contains(new Cautioned(caution, "s1", Optional.of(answer)));
    }

    /** The library's rule asks for the same signature as the caution: while it stops the step the caution is silent. */
    @Test
    void highVoltageIsSpokenOfOnce() {
        Cases ruled = plan(Caution.HIGH_VOLTAGE).words("""
                fact 'trained-signed', kind: 'yes-no', usual: false, means: 'signed'
                rule('high-voltage-engine-bay') {
                    title 'Signature'
                    reason 'shock'
                    at stages: ['engine-bay-clean']
                    forbids { surveyed('drive') == 'high-voltage' && !surveyed('trained-signed') }
                }
                """);
        SafetyCase unsigned = ruled.build();
        assertThat(unsigned.proof().findings()).extracting(Finding::code).contains("rule-forbids");
        assertThat(open(SafetyCheck.of(unsigned))).doesNotContain(Caution.HIGH_VOLTAGE);
        assertThat(SafetyCheck.cautions(unsigned))
                .extracting(Cautioned::caution)
                .contains(Caution.HIGH_VOLTAGE);
        SafetyCase signed = ruled.facts(Map.of("drive", "high-voltage", "trained-signed", "true"))
                .build();
        assertThat(signed.proof().findings()).extracting(Finding::code).doesNotContain("rule-forbids");
        assertThat(open(SafetyCheck.of(signed))).contains(Caution.HIGH_VOLTAGE);
    }
}
