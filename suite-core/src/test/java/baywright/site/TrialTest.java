package baywright.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.DemoSite;
import baywright.library.Stage;
import baywright.money.LineKind;
import baywright.plan.Codes;
import baywright.plan.Finding;
import baywright.safety.Pictogram;
import baywright.script.Place;
import baywright.script.Value;
import baywright.site.Trial.On;
import baywright.vehicle.Shape;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stage on the bench, with sums done by hand from script, shape, price list and rates of the demo. */
class TrialTest {

    private static final Place FIELD = Place.ofFile("trial");

    @TempDir
    private static Path folder;

    private static Site site;

    @BeforeAll
    static void open() throws IOException {
        DemoSite.copy("millrace-works", folder);
        site = Site.open(folder, Clock.systemUTC(), DemoSite.SCRIPTS);
    }

    private static Shape saloon() {
        return site.workspace().shapes().stream()
                .filter(s -> s.id().equals("saloon"))
                .findFirst()
                .orElseThrow();
    }

    private static Trial iron(On on) {
        return Trial.of(site.library(), "iron-removal", on, site.shop());
    }

    private static On bonnet(Map<String, Value> with, Map<String, String> facts) {
        return new On(saloon(), List.of("bonnet"), with, facts, Map.of());
    }

    /**
     * The bonnet has 1.5 m². Hands-on 0.4, 0.6 and 1.0 min for each: 0.60, 0.90, 1.50 min. Remover 75 ml for each: 112.5 ml, of a
     * pack of 5 l for 47.50: 1.06875.
     */
    @Test
    void figuresAreThoseOfScriptShapeAndPriceList() {
        Trial trial = iron(bonnet(Map.of(), Map.of()));
        var step = trial.step().orElseThrow();
        assertThat(step.attendedMinutes().least()).isEqualByComparingTo("0.60");
        assertThat(step.attendedMinutes().likely()).isEqualByComparingTo("0.90");
        assertThat(step.attendedMinutes().most()).isEqualByComparingTo("1.50");
        assertThat(step.leastStanding()).isEqualByComparingTo("3");
        assertThat(step.mostStanding().orElseThrow()).isEqualByComparingTo("7");
        assertThat(step.items().get("iron-remover").inBase()).isEqualByComparingTo("112.5");
        assertThat(trial.ledger().total(LineKind.MATERIAL_COST)).isEqualByComparingTo("1.06875");
        assertThat(trial.faults()).isEmpty();
    }

    /** Labour: mean (0.60 + 4 × 0.90 + 1.50) / 6 = 0.95 min at 52 an hour = 0.82333; material 1.06875 and a quarter = 1.33594. */
    @Test
    void thePriceIsThatOfTheStepAlone() {
        assertThat(iron(bonnet(Map.of(), Map.of())).net())
                .isBetween(new BigDecimal("2.15926"), new BigDecimal("2.15928"));
    }

    /** Two passes double hands-on time and remover; heavy soiling takes half as long again and no more remover. */
    @Test
    void inputsAndFactsAreTaken() {
        var step = iron(bonnet(Map.of("passes", Value.of(BigDecimal.valueOf(2), FIELD)), Map.of("soiling", "heavy")))
                .step()
                .orElseThrow();
        assertThat(step.attendedMinutes().likely()).isEqualByComparingTo("2.7");
        assertThat(step.items().get("iron-remover").inBase()).isEqualByComparingTo("225");
    }

    @Test
    void everyFigureKnowsItsLine() {
        var step = iron(bonnet(Map.of(), Map.of())).step().orElseThrow();
        assertThat(step.attended().get(0).trail().place()).hasToString("decontamination/iron-removal.groovy:23:9");
        assertThat(step.uses().get(0).trail().place()).hasToString("decontamination/iron-removal.groovy:27:14");
    }

    @Test
    void withoutZonesItTakesAllThatTheStageWorksOn() {
        Trial trial = iron(On.whole(saloon()));
        assertThat(trial.step().orElseThrow().zones()).contains("bonnet", "windscreen", "wheel-front-left");
        assertThat(trial.step().orElseThrow().zones()).doesNotContain("cabin-front", "trim");
    }

    @Test
    void whatBecomesOfTheZonesIsTold() {
        assertThat(iron(bonnet(Map.of(), Map.of())).changes())
                .allMatch(c -> c.zones().equals(List.of("bonnet")))
                .anyMatch(c -> c.effect().sets() && c.effect().state().equals("iron-clear"))
                .anyMatch(c -> !c.effect().sets() && c.effect().state().equals("waxed"));
    }

    /** H302 and H317 both bring the exclamation mark alone (Regulation (EC) No 1272/2008, annex I, tables 3.1.3 and 3.4.5). */
    @Test
    void dangersComeWithTheirPictograms() {
        Trial trial = iron(bonnet(Map.of(), Map.of()));
        assertThat(trial.dangers()).hasSize(1);
        assertThat(trial.dangers().get(0).label().pictograms()).containsExactly(Pictogram.GHS07);
        assertThat(trial.risks()).extracting(r -> r.kind()).containsExactly("slip", "harmful-air");
        assertThat(trial.protection()).contains("goggles", "long chemical gloves");
    }

    @Test
    void anInputOutOfBoundsIsAFaultAndNoFigure() {
        Trial trial = iron(bonnet(Map.of("passes", Value.of(BigDecimal.valueOf(9), FIELD)), Map.of()));
        assertThat(trial.faults()).extracting(Finding::code).contains(Codes.BAD_INPUT);
    }

    @Test
    void whatTheStageNeedsBeforehandIsNoFault() {
        Stage stage = site.library().stageById().get("iron-removal");
        assertThat(stage.usualTerms().needs()).isNotEmpty();
        assertThat(iron(On.whole(saloon())).faults()).isEmpty();
    }

    @Test
    void everyShippedStageCanBeTried() {
        for (Stage stage : site.library().stages()) {
            Trial trial = Trial.of(site.library(), stage.id(), On.whole(saloon()), site.shop());
            assertThat(trial.cost().signum()).isNotNegative();
            assertThat(trial.faults().isEmpty() || trial.step().isEmpty())
                    .as(stage.id() + " " + trial.faults())
                    .isTrue();
        }
    }

    @Test
    void anUnknownStageIsRefused() {
        assertThatThrownBy(() -> Trial.of(site.library(), "nothing", On.whole(saloon()), site.shop()))
                .hasMessage("no stage is called 'nothing'");
    }

    @Test
    void drivenAmountsAreTaken() {
        Trial trial = Trial.of(
                site.library(),
                "chip-touch-in",
                new On(saloon(), List.of("bonnet"), Map.of(), Map.of(), Map.of("chip", BigDecimal.valueOf(10))),
                site.shop());
        Trial twice = Trial.of(
                site.library(),
                "chip-touch-in",
                new On(saloon(), List.of("bonnet"), Map.of(), Map.of(), Map.of("chip", BigDecimal.valueOf(20))),
                site.shop());
        assertThat(trial.step().orElseThrow().attendedMinutes().likely()).isPositive();
        assertThat(twice.step().orElseThrow().attendedMinutes().likely())
                .isGreaterThan(trial.step().orElseThrow().attendedMinutes().likely());
    }
}
