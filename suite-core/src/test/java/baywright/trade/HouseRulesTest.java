package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.Bay;
import baywright.plan.Codes;
import baywright.plan.Finding;
import baywright.plan.FindingText;
import baywright.plan.HouseRules;
import baywright.plan.Plan;
import baywright.plan.Prover;
import baywright.plan.Setting;
import baywright.plan.Severity;
import baywright.plan.Step;
import baywright.vehicle.FilmLimits;
import baywright.vehicle.Survey;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A shop softens rules of the library, and says why. */
class HouseRulesTest {

    private static final Plan GLAZE = new Plan(List.of(
            new Step("s1", "glaze", List.of("bonnet"), Map.of(), Step.Priority.MUST, Optional.empty(), Map.of())));

    private static Setting setting(HouseRules house) {
        Bay hall = new Bay("hall", "Hall", List.of("lit"), List.of("cool", "shade", "lit", "ventilated"));
        Survey survey = new Survey(Map.of("paint", "wrap"), List.of("booked-in", "dry", "polished"), Map.of());
        return new Setting(
                Shipped.library().library(),
                Shipped.shape("saloon"),
                survey,
                List.of(hall),
                LocalDateTime.of(2026, 12, 7, 8, 0),
                FilmLimits.USUAL,
                house);
    }

    private static List<Finding> told(HouseRules house) {
        return Prover.prove(setting(house), GLAZE).findings();
    }

    @Test
    void aRuleForbidsUntilItIsSoftened() {
        assertThat(told(HouseRules.USUAL)).extracting(Finding::severity).containsExactly(Severity.STOP);
        HouseRules soft = new HouseRules(Map.of("no-abrasive-on-matt", "our glaze has no cut"), Map.of());
        assertThat(told(soft)).extracting(Finding::severity).containsExactly(Severity.WARN);
        assertThat(told(soft)).extracting(Finding::code).containsExactly(Codes.RULE_WARNS);
        HouseRules off = new HouseRules(Map.of(), Map.of("no-abrasive-on-matt", "our glaze has no cut"));
        assertThat(told(off)).extracting(Finding::severity).containsExactly(Severity.NOTE);
    }

    @Test
    void theReasonOfTheShopStandsInTheSentence() {
        HouseRules soft = new HouseRules(Map.of("no-abrasive-on-matt", "our glaze has no cut"), Map.of());
        Setting setting = setting(soft);
        assertThat(new FindingText(setting, GLAZE, Locale.UK).of(told(soft).get(0)))
                .startsWith("glaze (s1) on bonnet: No abrasive, glaze or wax on matt or wrapped zones")
                .contains("surveyed paint wrap")
                .endsWith("softened by the shop: our glaze has no cut");
    }

    @Test
    void softeningWhatIsNotThereIsTold() {
        HouseRules soft = new HouseRules(Map.of("no-abrasive-on-mat", "our glaze has no cut"), Map.of());
        assertThat(told(soft)).extracting(Finding::code).containsExactly(Codes.RULE_GONE, Codes.RULE_FORBIDS);
    }
}
