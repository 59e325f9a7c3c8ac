package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.plan.Finding;
import baywright.plan.Severity;
import baywright.safety.PersonDay.Dose;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DayDoseTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 12, 7);

    private static PersonDay day(double vibration, double noise, double protector) {
        return new PersonDay(
                MONDAY,
                1,
                "",
                List.of(new Dose("s1", vibration, 8, 0)),
                List.of(new Dose("s1", noise, 8, protector)),
                0);
    }

    /** Directive 2002/44/EC, art. 3(1): 2.5 and 5 m/s². A value counts when it is exceeded. */
    @ParameterizedTest
    @CsvSource({"2.5,''", "2.6,action", "5,action", "5.1,limit"})
    void vibrationReachesTheValuesOfTheDirective(double level, String grade) {
        DayDose dose = DayDose.of(day(level, 70, 0), SafetySettings.USUAL).get(0);
        assertThat(dose.value()).isCloseTo(level, within(1e-9));
        assertThat(dose.reached().map(DayDose.Border::grade).orElse("")).isEqualTo(grade);
    }

    /** Directive 2003/10/EC, art. 3: 80 and 85 dB(A) without the protector, 87 dB(A) with it. */
    @ParameterizedTest
    @CsvSource({"80,15,'',''", "81,15,lower,''", "90,15,upper,''", "90,0,upper,limit", "103,15,upper,limit"})
    void actionValuesOfNoiseCountAtTheOpenEarAndTheLimitUnderTheProtector(
            double level, double protector, String open, String worn) {
        List<DayDose> doses = DayDose.of(day(1, level, protector), SafetySettings.USUAL);
        assertThat(doses.get(1).reached().map(DayDose.Border::grade).orElse("")).isEqualTo(open);
        assertThat(doses.get(2).reached().map(DayDose.Border::grade).orElse("")).isEqualTo(worn);
    }

    /** Law: what reaches a limit here stops there, and what reaches an action value is told there. */
    @Test
    void theCheckSaysTheSame() {
        DoubleStream.iterate(0.5, level -> level < 7, level -> level + 0.25)
                .mapToObj(level -> day(level, 78 + 4 * level, 15))
                .forEach(day -> {
                    List<Finding> found = DoseRule.check(SafetySettings.USUAL, List.of(day));
                    List<DayDose> doses = DayDose.of(day, SafetySettings.USUAL);
                    assertThat(doses.stream().flatMap(d -> d.reached().stream()).anyMatch(DayDose.Border::isLimit))
                            .isEqualTo(found.stream().anyMatch(f -> f.severity() == Severity.STOP));
                    assertThat(doses.stream()
                                    .flatMap(d -> d.reached().stream())
                                    .map(DayDose.Border::severity)
                                    .min(Comparator.naturalOrder()))
                            .isEqualTo(found.stream().map(Finding::severity).min(Comparator.naturalOrder()));
                    assertThat(doses.get(0).reached().isPresent())
                            .isEqualTo(found.stream().anyMatch(f -> f.code().equals(SafetyCodes.VIBRATION)));
                });
    }

    @Test
    void vapourHasItsLimitAndADayWithoutAnythingNothing() {
        PersonDay airy = new PersonDay(MONDAY, 1, "", List.of(), List.of(), 120);
        assertThat(DayDose.of(airy, SafetySettings.USUAL)).singleElement().satisfies(d -> {
            assertThat(d.reached().orElseThrow().isLimit()).isTrue();
            assertThat(d.from(airy)).isEmpty();
        });
        assertThat(DayDose.of(new PersonDay(MONDAY, 1, "", List.of(), List.of(), 0), SafetySettings.USUAL))
                .isEmpty();
    }

    @Test
    void signalWordsSpeakTheLanguageOfTheStatements() {
        assertThat(Signal.DANGER.word(Locale.GERMANY)).isEqualTo("Gefahr");
        assertThat(Signal.WARNING.word(Locale.FRANCE)).isEqualTo("Attention");
        assertThat(Signal.WARNING.word(Locale.forLanguageTag("fi"))).isEqualTo("Warning");
        assertThat(Signal.NONE.word(Locale.UK)).isEmpty();
    }
}
