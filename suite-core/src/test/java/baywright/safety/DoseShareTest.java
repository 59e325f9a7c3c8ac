package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.safety.PersonDay.Dose;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class DoseShareTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 12, 7);

    private static PersonDay vibrating(double level, double hours) {
        return new PersonDay(MONDAY, 1, "", List.of(new Dose("s1", level, hours, 0)), List.of(), 0);
    }

    private static PersonDay loud(double level, double hours, double protector) {
        return new PersonDay(MONDAY, 2, "", List.of(), List.of(new Dose("s2", level, hours, protector)), 0);
    }

    private static double share(PersonDay day) {
        return DoseShare.worst(List.of(day), SafetySettings.USUAL).orElseThrow().share();
    }

    /** HSE, L140 (Hand-arm vibration): the action value is 100 exposure points, the limit value 400. */
    @Test
    void vibrationCountsAsExposurePointsDo() {
        assertThat(share(vibrating(2.5, 8))).isCloseTo(100.0 / 400, within(1e-9));
        assertThat(share(vibrating(5, 8))).isCloseTo(1, within(1e-9));
        assertThat(share(vibrating(5, 4))).isCloseTo(0.5, within(1e-9));
    }

    /** ISO 9612: equal energy, so that half the time is half the dose; the limit of 87 dB(A) is Directive 2003/10/EC, art. 3. */
    @Test
    void noiseCountsByEnergyUnderTheProtector() {
        assertThat(share(loud(87, 8, 0))).isCloseTo(1, within(1e-9));
        assertThat(share(loud(87, 4, 0))).isCloseTo(0.5, within(1e-9));
        assertThat(share(loud(97, 8, 20))).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void theWorstOfAllDaysAndAgentsIsNamed() {
        DoseShare worst = DoseShare.worst(List.of(vibrating(2.5, 2), loud(85, 8, 0)), SafetySettings.USUAL)
                .orElseThrow();

        assertThat(worst.agent()).isEqualTo(Agent.NOISE);
        assertThat(worst.hand()).isEqualTo(2);
        assertThat(worst.limit()).isEqualTo(87);
    }

    @Test
    void whoTakesInNothingHasNoShare() {
        assertThat(DoseShare.worst(
                        List.of(new PersonDay(MONDAY, 1, "", List.of(), List.of(), 0)), SafetySettings.USUAL))
                .isEmpty();
    }
}
