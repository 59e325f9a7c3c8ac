package baywright.plan;

import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MendsTest {

    private static final Setting SETTING = new Stages()
            .opposites("dry", "wet")
            .states("washed", "wiped", "coated")
            .stage(terms("wash").sets("washed", "wet"))
            .stage(terms("dry").needs("washed").sets("dry"))
            .stage(terms("wipe").needs("washed").sets("wiped"))
            .stage(terms("coat").needs("dry").sets("coated"))
            .stage(terms("shine").needs("wiped"))
            .setting();

    private static Mends mends(Plan plan) {
        List<Repair> repairs = Repair.find(SETTING, plan, Repair.Options.USUAL).repairs();
        return Mends.of(SETTING, plan, repairs, () -> false);
    }

    private static Finding stopOf(Plan plan, String step) {
        return Prover.prove(SETTING, plan).findings().stream()
                .filter(f -> f.step().filter(step::equals).isPresent())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void eachOfTwoStopsHasItsOwnEdit() {
        Plan plan = plan(step("s1", "wash", "bonnet"), step("s2", "coat", "bonnet"), step("s3", "shine", "bonnet"));
        Mends mends = mends(plan);

        for (String step : List.of("s2", "s3")) {
            Finding stop = stopOf(plan, step);
            assertThat(mends.of(stop))
                    .isNotEmpty()
                    .allSatisfy(edit -> assertThat(
                                    Prover.prove(SETTING, edit.applyTo(plan)).findings())
                            .doesNotContain(stop));
        }
    }

    @Test
    void aStopThatTakesTwoEditsHasNone() {
        Plan plan = plan(step("s1", "coat", "bonnet"));

        assertThat(mends(plan).of(stopOf(plan, "s1"))).isEmpty();
    }

    @Test
    void aPlanWithoutAStopHasNothingToMend() {
        assertThat(mends(plan(step("s1", "wash", "bonnet"))).edits()).isEmpty();
    }
}
