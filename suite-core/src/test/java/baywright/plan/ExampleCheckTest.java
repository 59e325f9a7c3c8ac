package baywright.plan;

import static baywright.plan.Stages.line;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.library.Example;
import baywright.library.Input;
import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ExampleCheckTest {

    private static final Input LOAD = new Input(
            "load",
            Input.Kind.CHOICE,
            List.of("light", "heavy"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Value.of("light", line("polish.groovy", 2)),
            "",
            line("polish.groovy", 2));

    private static Example example(
            String shape, Map<String, Value> with, int attended, String uses, List<String> sets, List<String> clears) {
        Quantity least = Quantity.of(attended, Unit.MINUTE);
        Quantity most = Quantity.of(attended + 1, Unit.MINUTE);
        return new Example(
                "bonnet",
                shape,
                List.of("bonnet"),
                with,
                Map.of(),
                Map.of(),
                Optional.of(new Example.Between(least, most)),
                Optional.of(new Example.Between(Quantity.of(3, Unit.MINUTE), Quantity.of(3, Unit.MINUTE))),
                Map.of("polish", Quantity.of(uses, Unit.MILLILITRE)),
                Optional.of(new Example.Between(Quantity.of(1, Unit.MICROMETRE), Quantity.of(2, Unit.MICROMETRE))),
                sets,
                clears,
                line("polish.groovy", 30));
    }

    private static ExampleCheck.StageOutcome check(Example... examples) {
        Stages.Terms stage = terms("polish").on("paint").input(LOAD);
        for (Example example : examples) {
            stage.example(example);
        }
        Stages stages = new Stages().states("polished", "dry", "gone").stage(stage, (with, facts) -> {
            boolean heavy = with.containsKey("load") && with.get("load").raw().equals("heavy");
            Stages.Terms terms = terms("polish")
                    .dependingOn("load")
                    .needs("dry")
                    .sets("polished")
                    .clears("gone")
                    .arrives("dry", 5)
                    .takes(ThreePoint.of("10", "14", "24"), "m2", "1")
                    .setUp(8)
                    .stands(3)
                    .uses("polish", Quantity.of(10, Unit.MILLILITRE), "m2")
                    .removes("0.5", "1", "2");
            return heavy ? terms.needs("gone").build() : terms.build();
        });
        return new ExampleCheck(stages.library(), List.of(Stages.front()))
                .of(stages.library().stages().get(0));
    }

    @Test
    void anExampleThatSaysWhatTheStageDoesPasses() {
        // 1.5 m² × 15 min on average + 8 min set-up = 30.5 min; 1.5 m² × 10 ml = 15 ml, 2 % of slack
        ExampleCheck.StageOutcome outcome =
                check(example("front", Map.of(), 30, "15.2", List.of("polished", "dry"), List.of("gone")));

        assertThat(outcome.outcomes().get(0).lines()).allMatch(ExampleCheck.Line::met);
        assertThat(outcome.passes()).isTrue();
    }

    @Test
    void aFigureThatMovedIsShownExpectedAgainstGot() {
        ExampleCheck.StageOutcome outcome =
                check(example("front", Map.of(), 31, "15.4", List.of("gone"), List.of("polished")));

        assertThat(outcome.passes()).isFalse();
        assertThat(outcome.outcomes().get(0).place()).isEqualTo(line("polish.groovy", 30));
        assertThat(outcome.outcomes().get(0).lines())
                .filteredOn(l -> !l.met())
                .containsExactly(
                        new ExampleCheck.Line("attended", "31 min to 32 min", "30.5 min", false),
                        new ExampleCheck.Line("polish", "15.4 ml", "15 ml", false),
                        new ExampleCheck.Line("gone", "holds", "does not hold", false),
                        new ExampleCheck.Line("polished", "does not hold", "holds", false));
    }

    @Test
    void aWrongShapeOrInputIsALineOfItsOwn() {
        assertThat(check(example("frnt", Map.of(), 30, "15", List.of(), List.of()))
                        .outcomes()
                        .get(0)
                        .lines())
                .containsExactly(new ExampleCheck.Line("on", "a vehicle shape", "'frnt'; nearest is 'front'", false));
        Map<String, Value> odd = Map.of("load", Value.of("medium", line("polish.groovy", 31)));
        assertThat(check(example("front", odd, 30, "15", List.of(), List.of()))
                        .outcomes()
                        .get(0)
                        .lines())
                .filteredOn(l -> !l.met())
                .singleElement()
                .satisfies(l -> assertThat(l.got()).contains("'load'", "medium", "one of 'light', 'heavy'"));
    }

    @Test
    void linesThatNoExampleBringsAboutAreNamed() {
        ExampleCheck.StageOutcome light = check(example("front", Map.of(), 30, "15", List.of(), List.of()));
        assertThat(light.unreached()).containsExactly(line("polish.groovy", 11));
        assertThat(light.declared()).isEqualTo(10);
        assertThat(light.coveragePercent()).isEqualTo(90);

        Map<String, Value> heavy = Map.of("load", Value.of("heavy", line("polish.groovy", 31)));
        assertThat(check(example("front", heavy, 30, "15", List.of(), List.of()))
                        .coveragePercent())
                .isEqualTo(100);
        assertThat(check().coveragePercent()).isZero();
    }
}
