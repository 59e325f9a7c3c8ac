package baywright.plan;

import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.plan.FilmBudget.Verdict;
import baywright.plan.FilmBudget.ZoneBudget;
import baywright.quantity.ThreePoint;
import baywright.vehicle.FilmBand;
import baywright.vehicle.Reading;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmBudgetTest {

    /** What the trade takes off a zone, µm: from memory, no source. */
    private static final Stages STAGES = new Stages()
            .fact("paint", "clear-over-base", "clear-over-base", "single-stage", "matt")
            .fact("repaint", "unknown", "unknown", "none", "proven")
            .stage(terms("trial").removes("1", "2", "5"))
            .stage(terms("spot-sand").removes("3", "6", "10"))
            .stage(terms("machine-sand").removes("4", "7", "12"))
            .stage(terms("refine-sand").removes("1", "2", "3"))
            .stage(terms("compound").removes("2", "3", "5"))
            .stage(terms("one-step").removes("1", "2", "3"))
            .stage(terms("polish").removes("0.5", "1", "2"))
            .stage(terms("finish").removes("0.2", "0.5", "1"))
            .stage(terms("clay").removes("0", "0", "0.5"))
            .stage(terms("wash"));

    /** Five readings on the bonnet that rise from the lowest by a micrometre. */
    private static Survey bonnet(String lowest, Map<String, String> facts) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 4; i >= 0; i--) {
            readings.add(new Reading(new BigDecimal(lowest).add(BigDecimal.valueOf(i)), "readings.csv:" + (6 - i)));
        }
        return new Survey(
                Map.of(),
                List.of(),
                Map.of("bonnet", new ZoneSurvey(facts, List.of(), Map.of(), readings, false, List.of())));
    }

    private static Plan bonnetSteps(String stages) {
        String[] names = stages.split(" ", -1);
        Step[] steps = new Step[names.length];
        for (int i = 0; i < names.length; i++) {
            steps[i] = step("s" + (i + 1), names[i], "bonnet");
        }
        return plan(steps);
    }

    private static ZoneBudget budget(String lowest, Map<String, String> facts, String stages) {
        return FilmBudget.of(STAGES.setting(bonnet(lowest, facts)), bonnetSteps(stages))
                .zone("bonnet")
                .orElseThrow();
    }

    /** The trade's worked cases and four more from its notes: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "110, clear-over-base, unknown, 38.5, 9.6, compound polish finish, 4.5, 8, CLEAR",
        "90, clear-over-base, unknown, 31.5, 7.9, compound polish finish, 4.5, 8, WARNS",
        "75, clear-over-base, unknown, 26.3, 6.6, one-step finish, 2.5, 4, WARNS",
        "110, clear-over-base, unknown, 38.5, 9.6, machine-sand refine-sand compound polish, 13, 22, FORBIDS",
        "260, clear-over-base, proven, 50.0, 12.5, spot-sand compound polish, 10, 17, WARNS",
        "78, clear-over-base, unknown, 27.3, 6.8, compound polish finish, 4.5, 8, WARNS",
        "105, clear-over-base, unknown, 36.8, 9.2, machine-sand refine-sand compound polish, 13, 22, FORBIDS",
        "108, clear-over-base, unknown, 37.8, 9.5, trial compound one-step, 7, 13, WARNS",
        "86, single-stage, unknown, 34.4, 8.6, trial one-step finish, 4.5, 9, WARNS"
    })
    void workedCases(
            String lowest,
            String paint,
            String repaint,
            String topcoat,
            String budget,
            String stages,
            String likely,
            String most,
            Verdict verdict) {
        ZoneBudget bonnet = budget(lowest, Map.of("paint", paint, "repaint", repaint), stages);

        assertThat(rounded(bonnet.film().topcoat().orElseThrow())).isEqualTo(topcoat);
        assertThat(rounded(bonnet.film().budget().orElseThrow())).isEqualTo(budget);
        assertThat(bonnet.planned().likely()).isEqualByComparingTo(likely);
        assertThat(bonnet.planned().most()).isEqualByComparingTo(most);
        assertThat(bonnet.verdict()).isEqualTo(verdict);
    }

    private static String rounded(BigDecimal figure) {
        return figure.setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    /** The thin case warns by its band alone: its budget would hold. */
    @Test
    void aThinPanelWarnsByItsBandAlone() {
        ZoneBudget bonnet = budget("75", Map.of(), "one-step finish");

        assertThat(bonnet.film().band()).isEqualTo(FilmBand.CARE);
        assertThat(bonnet.planned().most()).isLessThan(bonnet.film().budget().orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({"finish, FORBIDS", "clay, CLEAR", "wash, CLEAR"})
    void onlyWhatIsAbrasiveIsForbiddenOnTheThinnest(String stage, Verdict verdict) {
        assertThat(budget("58", Map.of(), stage).verdict()).isEqualTo(verdict);
    }

    @Test
    void mattPaintHasNothingToGive() {
        assertThat(budget("120", Map.of("paint", "matt"), "finish").verdict()).isEqualTo(Verdict.FORBIDS);
    }

    @Test
    void aPanelThatNobodyReadWarns() {
        ZoneBudget wing = FilmBudget.of(STAGES.setting(), plan(step("s1", "finish", "wing-left")))
                .zone("wing-left")
                .orElseThrow();

        assertThat(wing.verdict()).isEqualTo(Verdict.WARNS);
        assertThat(wing.anywhere()).isEmpty();
        assertThat(wing.chanceBelow(BigDecimal.valueOf(60))).isEmpty();
    }

    /**
     * Lowest 62 µm less the mean of the polish, (0.5 + 4·1 + 2)/6 = 1.0833, deviation (2 - 0.5)/6 = 0.25; the gauge's
     * (1 + 0.62)/√3 = 0.9353; z = (60 - 60.9167)/√(0.9353² + 0.25²) = -0.9469, chance 0.1718.
     */
    @Test
    void theThinnestPlaceDecidesTheChance() {
        ZoneBudget bonnet = budget("62", Map.of(), "polish");

        assertThat(bonnet.thinnest().orElseThrow().mean()).isCloseTo(60.9167, within(0.0001));
        assertThat(bonnet.chanceBelow(BigDecimal.valueOf(60)).orElseThrow()).isCloseTo(0.1718, within(0.0005));
    }

    @Test
    void theOrderOfStepsDoesNotMatter() {
        List<String> stages = Arrays.asList("trial compound polish finish clay one-step".split(" ", -1));
        ZoneBudget forwards = budget("100", Map.of(), String.join(" ", stages));
        Collections.reverse(stages);
        ZoneBudget backwards = budget("100", Map.of(), String.join(" ", stages));

        assertThat(backwards.anywhere()).isEqualTo(forwards.anywhere());
        assertThat(backwards.thinnest()).isEqualTo(forwards.thinnest());
        assertThat(backwards.planned().likely())
                .isEqualByComparingTo(forwards.planned().likely());
        assertThat(backwards.verdict()).isEqualTo(forwards.verdict());
    }

    @Test
    void everyRemovalKnowsItsStepAndItsLine() {
        ZoneBudget bonnet = budget("110", Map.of(), "compound polish");

        assertThat(bonnet.taken()).extracting(FilmBudget.Taken::step).containsExactly("s1", "s2");
        assertThat(bonnet.taken().get(0).removal().trail().place().file()).isEqualTo("compound.groovy");
        assertThat(bonnet.film().statistics().orElseThrow().lowest().source()).isEqualTo("readings.csv:6");
    }

    @Test
    void sumsByZoneAreThoseOfTheBudget() {
        Setting setting = STAGES.setting(bonnet("110", Map.of()));
        Plan plan = plan(step("s1", "compound", "bonnet", "wing-left"), step("s2", "polish", "bonnet"));

        Map<String, ThreePoint> sums =
                FilmBudget.planned(PlanWork.of(setting, plan).steps());

        assertThat(sums).containsOnlyKeys("bonnet", "wing-left");
        assertThat(sums.get("bonnet"))
                .isEqualTo(FilmBudget.of(setting, plan)
                        .zone("bonnet")
                        .orElseThrow()
                        .planned());
    }

    @Test
    void panesHaveNoBudget() {
        assertThat(FilmBudget.of(STAGES.setting(), plan()).zones())
                .extracting(z -> z.film().zone())
                .containsExactly("bonnet", "wing-left", "wing-right", "boot-lid");
    }

    @Test
    void theTightestZoneIsTheOneMostLikelyToEndBelowTheFloor() {
        FilmBudget film = FilmBudget.of(
                STAGES.setting(bonnet("62", Map.of())),
                plan(step("s1", "polish", "bonnet"), step("s2", "compound", "wing-left")));

        assertThat(film.tightest().orElseThrow().film().zone()).isEqualTo("bonnet");
    }

    @Test
    void aPlanThatTakesNothingOffHasNoTightestZone() {
        assertThat(FilmBudget.of(STAGES.setting(bonnet("62", Map.of())), plan(step("s1", "wash", "bonnet")))
                        .tightest())
                .isEmpty();
    }
}
