package baywright.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import baywright.library.Example;
import baywright.library.Library;
import baywright.library.Stage;
import baywright.plan.Prover;
import baywright.plan.Setting;
import baywright.plan.Step;
import baywright.plan.StepWork;
import baywright.script.Value;
import baywright.vehicle.Shape;
import baywright.vehicle.Survey;
import baywright.vehicle.Zone;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The figures of the worked examples were reckoned from the workshop's table with fractions, apart from this program; the
 * program must come to the same.
 */
class ExamplesTest {

    static Stream<Arguments> examples() {
        return Shipped.library().library().stages().stream()
                .flatMap(s -> s.examples().stream().map(e -> Arguments.of(s.id(), e.name(), s, e)));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("examples")
    void comesOutAsItsAuthorReckoned(String id, String name, Stage stage, Example example) {
        StepWork work = work(stage, example);
        BigDecimal minutes = work.attendedMinutes().mean().add(work.setUpMinutes());
        assertBetween("attended", example.attended().orElseThrow(), minutes);
        example.standing().ifPresent(b -> assertBetween("standing", b, work.usualStanding()));
        example.uses()
                .forEach((item, amount) -> assertThat(
                                work.items().get(item).inBase().doubleValue())
                        .as(item)
                        .isCloseTo(
                                amount.inBase().doubleValue(),
                                within(amount.inBase().doubleValue() * 0.001)));
        assertThat(work.items().keySet())
                .as("items of %s", id)
                .isEqualTo(example.uses().keySet());
        example.removes()
                .ifPresent(b -> assertBetween(
                        "removes", b, work.removalOf(work.zones().get(0)).likely()));
        assertThat(name).isNotBlank();
    }

    private static void assertBetween(String what, Example.Between band, BigDecimal met) {
        assertThat(met).as(what).isBetween(band.least().amount(), band.most().amount());
    }

    private static StepWork work(Stage stage, Example example) {
        Library library = Shipped.library().library();
        Shape shape = Shipped.shape(example.shape());
        Map<String, String> facts = new HashMap<>();
        example.given().forEach((fact, value) -> facts.put(fact, text(value)));
        Map<String, BigDecimal> drivers = new HashMap<>();
        example.drivers().forEach((driver, value) -> drivers.put(driver, (BigDecimal) value.raw()));
        List<String> zones = example.zones().isEmpty()
                ? shape.zones().stream()
                        .filter(z -> stage.surfaces().contains(z.surface()))
                        .map(Zone::id)
                        .toList()
                : example.zones();
        Step step = new Step("s1", stage.id(), zones, example.with(), Step.Priority.MUST, Optional.empty(), drivers);
        Setting setting = new Setting(
                library, shape, new Survey(facts, List.of(), Map.of()), List.of(), LocalDateTime.of(2026, 12, 1, 8, 0));
        return Prover.forSetting(setting).work(step).orElseThrow();
    }

    private static String text(Value value) {
        return String.valueOf(value.raw());
    }
}
