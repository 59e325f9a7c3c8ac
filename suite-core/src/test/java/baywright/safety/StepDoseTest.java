package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StepDoseTest {

    private static final LocalDateTime EIGHT = Cases.MONDAY;

    /** A stage of so many minutes with the trigger pulled all the time and ears covered. */
    private static Cases machine(double minutes, String vibration, String noise) {
        String time = BigDecimal.valueOf(minutes).toPlainString() + ".min";
        SafetySettings usual = SafetySettings.USUAL;
        return new Cases()
                .stage(
                        "grind",
                        "time { attended " + time + ", " + time + ", " + time + " }",
                        "hazards {",
                        "    risk 'vibration', " + vibration + ".ms2",
                        "    risk 'noise', " + noise + ".dB",
                        "}")
                .settings(new SafetySettings(
                        new SafetySettings.VibrationRule(2.5, 5, Comparison.EXCEEDS, 1),
                        usual.noise(),
                        new SafetySettings.DayRule(SafetySettings.Reckoning.LIKELY, 600),
                        usual.air(),
                        usual.climate()))
                .step("grind", "bonnet");
    }

    private static StepDose dose(Cases cases) {
        return StepDose.of(cases.build()).get("s1");
    }

    /**
     * Of the day's limit of 5 m/s², which is 400 points (UK HSE, L140: points are 2 a² t, 100 of them 2.5 m/s² for 8 h).
     */
    @ParameterizedTest
    @CsvSource({"480, 2.5, 100", "480, 5, 400", "60, 10, 200", "180, 7, 294"})
    void vibrationIsAShareOfTheLimitByPoints(double minutes, String level, double points) {
        assertThat(dose(machine(minutes, level, "40")).person().get("vibration"))
                .isCloseTo(points / 400, within(1e-6));
    }

    /** Equal energy: 87 dB(A) for eight hours fill the day (Directive 2003/10/EC, art. 3), 3 dB more in half the time. */
    @ParameterizedTest
    @CsvSource({"480, 87, 1", "480, 77, 0.1", "240, 90.0103, 1", "60, 96.0309, 1"})
    void noiseIsAShareOfTheLimitByEnergy(double minutes, String level, double share) {
        assertThat(dose(machine(minutes, "1", level)).person().get("noise")).isCloseTo(share, within(1e-5));
    }

    @Test
    void whoTakeTurnsShareADose() {
        JobSafety turns = new JobSafety(
                List.of(), List.of(), Map.of("s1", new JobSafety.StepSafety(2, Optional.empty(), Optional.empty())));
        StepDose alone = dose(machine(480, "5", "87"));
        StepDose shared = dose(machine(480, "5", "87").job(turns));
        assertThat(shared.people()).isEqualTo(2);
        assertThat(shared.person().get("vibration")).isCloseTo(alone.person().get("vibration") / 2, within(1e-9));
        assertThat(shared.person().get("noise")).isCloseTo(alone.person().get("noise") / 2, within(1e-9));
    }

    /** The shares add up to no more than 1 just where the rule stops nothing; at the limit itself too. */
    @ParameterizedTest
    @CsvSource({"479, true", "480, true", "481, false"})
    void aFullDayIsJustAllowed(double minutes, boolean allowed) {
        Cases cases = machine(minutes, "5", "40");
        assertThat(dose(cases).person().get("vibration") <= 1).isEqualTo(allowed);
        assertThat(cases.check().findings().stream()
                        .noneMatch(f ->
                                f.code().equals(SafetyCodes.VIBRATION) && f.severity() == baywright.plan.Severity.STOP))
                .isEqualTo(allowed);
    }

    // ---- by a timetable

    private static List<PersonDay> timed(Cases cases, Spell... spells) {
        return SafetyCheck.exposures(cases.build().timed(List.of(spells)));
    }

    private static Spell spell(int day, double share, String... people) {
        LocalDateTime from = EIGHT.plusDays(day);
        return new Spell("s1", from, from.plusHours(1), share, List.of(people), "lit");
    }

    @Test
    void eachNamedPersonHasTheirOwnDays() {
        Cases cases = machine(480, "5", "87");
        List<PersonDay> days = timed(cases, spell(0, 0.5, "p1"), spell(0, 0.25, "p3"), spell(1, 0.25, "p1"));
        assertThat(days).extracting(PersonDay::name).containsExactly("One", "Three", "One");
        assertThat(days)
                .extracting(PersonDay::vibrationPoints)
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : 1, Double.class)
                .containsExactly(200.0, 100.0, 100.0);
        assertThat(SafetyCheck.of(cases.build().timed(List.of(spell(0, 0.5, "p1"), spell(0, 0.5, "p2"))))
                        .holds())
                .isTrue();
    }

    @Test
    void severalJobsOfOnePersonAddUp() {
        List<PersonDay> jobs = new ArrayList<>(timed(machine(480, "5", "87"), spell(0, 0.5, "p2")));
        jobs.addAll(timed(machine(480, "5", "87"), spell(0, 0.25, "p2"), spell(0, 0.25, "p1")));
        assertThat(PersonDay.together(jobs)).extracting(PersonDay::name).containsExactly("One", "Two");
        assertThat(PersonDay.together(jobs).get(1).vibrationPoints()).isCloseTo(300, within(1e-6));
    }
}
