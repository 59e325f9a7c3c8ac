package baywright.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import baywright.safety.Mixture.Ingredient;
import baywright.safety.Mixture.Route;
import baywright.safety.Mixture.Rule;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MixtureTest {

    // UN ST/SG/AC.10/C.4/2008/23, annex 2, example 1
    @Test
    void oralExampleByBothRules() {
        List<Ingredient> parts = List.of(Ingredient.of(26, 2737), Ingredient.of(23, 4500), Ingredient.of(40, 400));
        Mixture un = Mixture.of(Route.ORAL, Rule.UN, parts);
        assertThat(un.estimate().orElseThrow()).isCloseTo(872.5, within(0.05));
        assertThat(un.category()).isEqualTo(4);
        Mixture eu = Mixture.of(Route.ORAL, Rule.EU, parts);
        assertThat(eu.estimate().orElseThrow()).isCloseTo(1000, within(1e-9));
        assertThat(eu.category()).isEqualTo(4);
    }

    // UN ST/SG/AC.10/C.4/2008/23, annex 2, example 2
    @Test
    void inhalationWithAnUnknownPart() {
        Mixture mixture = Mixture.of(
                Route.VAPOURS,
                Rule.UN,
                List.of(Ingredient.of(26, 11), Ingredient.of(23, 19), Ingredient.of(40, 4), Ingredient.unknown(11)));
        assertThat(mixture.estimate().orElseThrow()).isCloseTo(6.557, within(0.001));
        assertThat(mixture.category()).isEqualTo(3);
        assertThat(mixture.sentence())
                .hasValue("11 percent of the mixture consists of ingredients of unknown acute toxicity.");
    }

    // UN ST/SG/AC.10/C.4/2008/23, annex 2, example 3
    @Test
    void onlyWhatIsClassifiedCounts() {
        Mixture mixture = Mixture.of(
                Route.ORAL, Rule.UN, List.of(Ingredient.of(4, 1737), Ingredient.of(5, 5001), Ingredient.of(5, 5400)));
        assertThat(mixture.estimate().orElseThrow()).isCloseTo(43425, within(1e-6));
        assertThat(mixture.category()).isZero();
        assertThat(mixture.sentence()).isEmpty();
    }

    // annex I, table 3.1.2 (point estimates) and 3.1.1 (borders, from memory)
    @ParameterizedTest
    @CsvSource({
        "ORAL, 0.5, 5, 100, 500, 2000",
        "DERMAL, 5, 50, 300, 1100, 2000",
        "GASES, 10, 100, 700, 4500, 20000",
        "VAPOURS, 0.05, 0.5, 3, 11, 20",
        "DUST_AND_MIST, 0.005, 0.05, 0.5, 1.5, 5"
    })
    void pointEstimates(Route route, double one, double two, double three, double four, double last) {
        double[] points = {one, two, three, four};
        for (int category = 1; category <= 4; category++) {
            assertThat(route.pointEstimate(category)).isEqualTo(points[category - 1]);
            assertThat(route.category(points[category - 1] * 1.001)).isEqualTo(category);
        }
        assertThat(route.category(last)).isEqualTo(4);
        assertThat(route.category(last * 1.001)).isZero();
    }

    // annex I, table 3.1.1 (borders, from memory); the estimates are computed
    @ParameterizedTest
    @CsvSource({"20, 0, 2500, 0", "25, 0, 2000, 4", "30, 0, 1666.667, 4", "30, 12, 1466.667, 4", "30, 10, 1666.667, 4"})
    void bordersAreInclusive(double percent, double unknown, double estimate, int category) {
        Ingredient known = Ingredient.of(percent, Route.ORAL.pointEstimate(4));
        Mixture mixture = Mixture.of(
                Route.ORAL, Rule.EU, unknown == 0 ? List.of(known) : List.of(known, Ingredient.unknown(unknown)));
        assertThat(mixture.estimate().orElseThrow()).isCloseTo(estimate, within(0.001));
        assertThat(mixture.category()).isEqualTo(category);
    }

    @Test
    void nonsenseIsRefused() {
        assertThat(Mixture.of(Route.ORAL, Rule.EU, List.of()).estimate()).isEmpty();
        assertThatThrownBy(() -> Mixture.of(Route.ORAL, Rule.EU, List.of(Ingredient.of(60, 5), Ingredient.of(60, 5))))
                .hasMessageContaining("120");
        assertThatThrownBy(() -> Ingredient.of(0, 5)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> Ingredient.of(5, Double.NaN)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> Route.ORAL.pointEstimate(5)).hasMessageContaining("1 to 4");
    }
}
