package baywright.plan;

import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.plan.FilmComparison.Answer;
import baywright.plan.FilmComparison.Removed;
import baywright.vehicle.Reading;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmComparisonTest {

    private static final Stages STAGES = new Stages().stage(terms("compound").removes("2", "3", "5"));
    private static final String BEFORE = "110 112 111 109 113";

    private static List<Reading> readings(String films) {
        return Arrays.stream(films.split(" ", -1))
                .map(f -> new Reading(new BigDecimal(f), "after.csv:2"))
                .toList();
    }

    private static List<Removed> compared(Map<String, List<Reading>> after) {
        ZoneSurvey found = ZoneSurvey.NOTHING.withReadings(readings(BEFORE));
        Setting setting = STAGES.setting(new Survey(Map.of(), List.of(), Map.of("bonnet", found)));
        FilmBudget budget = FilmBudget.of(setting, plan(step("s1", "compound", "bonnet")));
        return FilmComparison.of(budget, after).zones();
    }

    /**
     * Means 111 and 108, both variances 2.5 of five: u = √(0.5 + 0.5) = 1 with 8 degrees of freedom, t = 2.306 (GUM, JCGM
     * 100:2008, table G.2, from memory).
     */
    @Test
    void aDifferenceHasItsUncertainty() {
        Removed bonnet =
                compared(Map.of("bonnet", readings("107 109 108 106 110"))).get(0);

        assertThat(bonnet.difference()).isCloseTo(3, within(1e-9));
        assertThat(bonnet.uncertainty().orElseThrow()).isCloseTo(2.306, within(0.001));
        assertThat(bonnet.answer()).isEqualTo(Answer.AS_PLANNED);
    }

    @ParameterizedTest
    @CsvSource({
        "109 111 110 108 112, NOT_SEEN",
        "110 112 111 109 113, NOT_SEEN",
        "112.7 114.7 113.7 111.7 115.7, THICKER",
        "102 104 103 101 105, MORE_THAN_PLANNED",
        "104 106 105 103 107, AS_PLANNED",
        "110.6 110.6 110.6 110.6 110.6, NOT_SEEN",
        "108, TOO_FEW"
    })
    void answers(String after, Answer answer) {
        assertThat(compared(Map.of("bonnet", readings(after))).get(0).answer()).isEqualTo(answer);
    }

    @Test
    void lessThanPlannedIsToldFromNothingAtAll() {
        ZoneSurvey even = ZoneSurvey.NOTHING.withReadings(readings("111 111 111 111 111"));
        Setting setting = STAGES.setting(new Survey(Map.of(), List.of(), Map.of("bonnet", even)));
        FilmBudget budget = FilmBudget.of(setting, plan(step("s1", "compound", "bonnet")));

        assertThat(FilmComparison.of(budget, Map.of("bonnet", readings("110 110 110")))
                        .zones()
                        .get(0)
                        .answer())
                .isEqualTo(Answer.LESS_THAN_PLANNED);
    }

    @Test
    void zonesReadOnlyOnceAreLeftOut() {
        assertThat(compared(Map.of("wing-left", readings("100 101")))).isEmpty();
    }
}
