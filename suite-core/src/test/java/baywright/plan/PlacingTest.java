package baywright.plan;

import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PlacingTest {

    private static final Setting SETTING = new Stages()
            .opposites("dry", "wet")
            .states("washed", "coated")
            .stage(terms("wash").sets("washed", "wet"))
            .stage(terms("dry").needs("washed").sets("dry"))
            .stage(terms("coat").needs("dry").sets("coated"))
            .stage(terms("look"))
            .setting();

    private static final Plan WITHOUT_DRYING =
            plan(step("s1", "wash", "bonnet"), step("s2", "look", "bonnet"), step("s3", "coat", "bonnet"));

    private static int best(Plan plan, Step step, int wished) {
        return Placing.best(SETTING, plan, step, wished, () -> false);
    }

    @Test
    void aStepGoesWhereItStopsLeast() {
        Step dry = step("s4", "dry", "bonnet");

        assertThat(best(WITHOUT_DRYING, dry, 0)).isEqualTo(1);
        assertThat(best(WITHOUT_DRYING, dry, 99)).isEqualTo(2);
    }

    @Test
    void aStepThatDoesNoHarmStaysWhereItIsWished() {
        assertThat(best(WITHOUT_DRYING, step("s4", "look", "bonnet"), 1)).isEqualTo(1);
    }

    @Test
    void whoCallsItOffGetsThePlaceThatWasWished() {
        assertThat(Placing.best(SETTING, WITHOUT_DRYING, step("s4", "dry", "bonnet"), 0, () -> true))
                .isZero();
    }

    @Property(tries = 60)
    void noOtherPlaceHasFewerStops(
            @ForAll @IntRange(min = 0, max = 26) int code, @ForAll @IntRange(max = 3) int wished) {
        String[] stages = {"wash", "dry", "coat"};
        Plan three = plan(
                step("s1", stages[code % 3], "bonnet"),
                step("s2", stages[code / 3 % 3], "bonnet"),
                step("s3", stages[code / 9], "bonnet"));
        Step dry = step("s4", "dry", "bonnet");

        int chosen = best(three, dry, wished);

        int fewest = IntStream.rangeClosed(0, 3)
                .map(i -> stops(new Edit.Insert(dry, i).applyTo(three)))
                .min()
                .orElseThrow();
        assertThat(stops(new Edit.Insert(dry, chosen).applyTo(three))).isEqualTo(fewest);
    }

    private static int stops(Plan plan) {
        return (int) Prover.prove(SETTING, plan).findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .count();
    }
}
