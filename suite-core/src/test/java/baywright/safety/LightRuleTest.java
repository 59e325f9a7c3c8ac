package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.plan.Finding;
import baywright.plan.Severity;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LightRuleTest {

    // EN 12464-1, vehicle construction and repair (a summary of the DIN edition); 300 lx from memory
    @ParameterizedTest
    @CsvSource({
        "tape-up, masking, 500",
        "machine-sand, sanding, 750",
        "polish, correction, 750",
        "chip-touch-in, repair, 1000",
        "defect-survey, arrival, 1000",
        "finish-check, correction, 1000",
        "final-inspection, outgoing, 1000",
        "handover, outgoing, 300"
    })
    void workWantsLight(String stage, String family, double lux) {
        assertThat(SafetySettings.USUAL.light().wanted(stage, family)).isEqualTo(lux);
    }

    // computed; a foot is 0.3048 m (international agreement of 1959)
    @Test
    void aFootCandleInLux() {
        assertThat(SafetySettings.LightRule.FOOT_CANDLE).isCloseTo(10.764, within(5e-4));
    }

    private static List<Finding> dim(double measured) {
        SafetySettings usual = SafetySettings.USUAL;
        SafetySettings settings = new SafetySettings(
                usual.vibration(),
                usual.noise(),
                usual.day(),
                usual.air(),
                usual.climate(),
                usual.apart(),
                usual.light().measured(Map.of("lit", measured)));
        return new Cases()
                .step("finish-check", "bonnet").settings(settings).check().findings().stream()
                        .filter(f -> f.code().equals(SafetyCodes.LIGHT))
                        .toList();
    }

    @Test
    void aBayThatIsDarkerThanItsWorkWantsIsWarnedOf() {
        assertThat(dim(999)).extracting(Finding::severity).containsExactly(Severity.WARN);
        assertThat(dim(1000)).isEmpty();
    }
}
