package baywright.money;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.StageTerms;
import baywright.library.StageTerms.Effect;
import baywright.library.StageTerms.Reach;
import baywright.plan.PlanWork;
import baywright.plan.Setting;
import baywright.plan.StepWork;
import baywright.plan.Trail;
import baywright.quantity.ThreePoint;
import baywright.script.Place;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import baywright.vehicle.ZoneSurvey;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ConfidenceTest {

    private static final Place PLACE = new Place("stage.groovy", 1, 1);
    private static final StepWork WASH = step("", "bonnet", "0", "0", "0");
    private static final StepWork CLAY = step("clayed", "bonnet", "0", "0", "0.5");
    private static final StepWork TRIAL = step("spot-proven", "bonnet", "1", "2", "5");
    private static final StepWork POLISH = step("polished", "bonnet", "1", "2", "3");
    private static final StepWork LAMPS = step("coated", "headlamp-left", "10", "20", "50");

    private static StepWork step(String sets, String zone, String least, String likely, String most) {
        StageTerms.Origin origin = StageTerms.Origin.at(PLACE);
        List<Effect> effects =
                sets.isEmpty() ? List.of() : List.of(new Effect(sets, true, Optional.empty(), Reach.ZONE, "", origin));
        StageTerms terms = new StageTerms(
                List.of(),
                List.of(),
                effects,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                StageTerms.Hazards.NONE,
                StageTerms.Crew.ONE,
                StageTerms.Where.ANY,
                StageTerms.Climate.ANY,
                List.of(),
                List.of(),
                List.of(),
                Set.of());
        Trail trail = new Trail(
                PLACE, "", BigDecimal.ONE, Trail.Source.USE, BigDecimal.ONE, List.of(), List.of(), List.of(zone));
        return new StepWork(
                "s",
                "stage",
                "family",
                List.of(zone),
                List.of(new StepWork.Part(List.of(zone), terms)),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(new StepWork.Removal(zone, ThreePoint.of(least, likely, most), trail)),
                StageTerms.Crew.ONE);
    }

    private static Confidence found(Survey survey, StepWork... steps) {
        Shape shape = new Shape(
                "saloon",
                "Saloon",
                BigDecimal.ONE,
                List.of(zone("bonnet", "paint"), zone("roof", "paint"), zone("headlamp-left", "lamp")));
        Setting setting = new Setting(Works.library(), shape, survey, List.of(), LocalDateTime.of(2026, 12, 7, 8, 0));
        return Confidence.found(setting, new PlanWork(List.of(steps), List.of()));
    }

    private static Zone zone(String id, String surface) {
        return new Zone(id, id, surface, "", Map.of(), List.of());
    }

    private static Survey paint(String zone, String paint) {
        ZoneSurvey found = new ZoneSurvey(Map.of("paint", paint), List.of(), Map.of(), List.of(), false, List.of());
        return new Survey(Map.of("paint", "clear-over-base"), List.of(), Map.of(zone, found));
    }

    @Test
    void polishWithoutATrialIsUncertain() {
        assertThat(found(Survey.NOTHING, WASH, POLISH)).isEqualTo(Confidence.NO_TRIAL);
    }

    @Test
    void aTrialInThePlanOrFoundAtSurveyIsEnough() {
        assertThat(found(Survey.NOTHING, TRIAL, POLISH)).isEqualTo(Confidence.TRIAL_DONE);
        assertThat(found(new Survey(Map.of(), List.of("spot-proven"), Map.of()), POLISH))
                .isEqualTo(Confidence.TRIAL_DONE);
    }

    @Test
    void whatTakesNoPaintOffNeedsNoTrial() {
        assertThat(found(Survey.NOTHING, WASH, CLAY, LAMPS)).isEqualTo(Confidence.TRIAL_DONE);
    }

    @Test
    void singleStageOrUnknownPaintIsRiskyWhereItIsPolishedOnly() {
        assertThat(found(paint("bonnet", "single-stage"), TRIAL, POLISH)).isEqualTo(Confidence.RISKY);
        assertThat(found(paint("bonnet", "unknown"), TRIAL, POLISH)).isEqualTo(Confidence.RISKY);
        assertThat(found(paint("roof", "single-stage"), TRIAL, POLISH)).isEqualTo(Confidence.TRIAL_DONE);
        assertThat(found(paint("bonnet", "single-stage"), WASH, CLAY)).isEqualTo(Confidence.TRIAL_DONE);
        assertThat(found(new Survey(Map.of("paint", "unknown"), List.of(), Map.of()), TRIAL, POLISH))
                .isEqualTo(Confidence.RISKY);
    }
}
