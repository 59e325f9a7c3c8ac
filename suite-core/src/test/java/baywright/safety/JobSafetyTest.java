package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JobSafetyTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 12, 7);
    private static final JobSafety.StepSafety SHARED = new JobSafety.StepSafety(2, Optional.empty(), Optional.empty());
    private static final JobSafety SOME = JobSafety.NONE.with("s1", SHARED);

    private static JobSafety.Acknowledgement answer(String caution, String by) {
        return new JobSafety.Acknowledgement(caution, by, LocalDateTime.of(2026, 12, 7, 8, 0));
    }

    private static JobSafety.DayClimate air(LocalDate day, int celsius) {
        return new JobSafety.DayClimate(day, BigDecimal.valueOf(celsius), BigDecimal.valueOf(60), Optional.empty());
    }

    @Test
    void anAnswerTakesThePlaceOfAnEarlierOneForTheSameCaution() {
        JobSafety answered = SOME.acknowledged(answer("jacks", "A. Fenwright"))
                .acknowledged(answer("airbag", "A. Fenwright"))
                .acknowledged(answer("jacks", "Maren Thistlewick"));
        assertThat(answered.acknowledgements())
                .containsExactly(answer("airbag", "A. Fenwright"), answer("jacks", "Maren Thistlewick"));
        assertThat(answered.steps()).isEqualTo(Map.of("s1", SHARED));
        assertThat(answered.withoutAnswer("jacks").withoutAnswer("airbag")).isEqualTo(SOME);
    }

    @Test
    void aDayHasOneClimateAndDaysStayInOrder() {
        JobSafety typed =
                SOME.with(air(MONDAY.plusDays(1), 12)).with(air(MONDAY, 14)).with(air(MONDAY.plusDays(1), 16));
        assertThat(typed.climate()).containsExactly(air(MONDAY, 14), air(MONDAY.plusDays(1), 16));
        assertThat(typed.withoutClimate(MONDAY).withoutClimate(MONDAY.plusDays(1)))
                .isEqualTo(SOME);
    }
}
