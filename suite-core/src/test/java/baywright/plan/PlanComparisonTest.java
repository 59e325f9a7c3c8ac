package baywright.plan;

import static baywright.plan.Stages.at;
import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static org.assertj.core.api.Assertions.assertThat;

import baywright.plan.PlanComparison.Kind;
import baywright.plan.PlanComparison.Row;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PlanComparisonTest {

    private static List<Kind> kinds(Plan left, Plan right) {
        return PlanComparison.of(left, right, Stages.front()).rows().stream()
                .map(Row::kind)
                .toList();
    }

    @Test
    void aPlanIsTheSameAsItselfWhateverTheIds() {
        Plan plan = plan(step("s1", "wash", "bonnet"), step("s2", "dry", "bonnet"));
        Plan named = plan(step("a", "wash", "bonnet"), step("b", "dry", "bonnet"));

        assertThat(kinds(plan, named)).containsExactly(Kind.SAME, Kind.SAME);
        assertThat(PlanComparison.of(plan, named, Stages.front()).differences()).isZero();
    }

    @Test
    void howZonesAreWrittenDoesNotMatter() {
        Plan left = plan(step("s1", "wash", "surface:paint"));
        Plan right = plan(step("s1", "wash", "bonnet", "wing-left", "wing-right", "boot-lid"));

        assertThat(kinds(left, right)).containsExactly(Kind.SAME);
        assertThat(kinds(left, plan(step("s1", "wash", "surface:paint", "-bonnet"))))
                .containsExactly(Kind.CHANGED);
    }

    @Test
    void aStepMoreFacesNothing() {
        Plan left = plan(step("s1", "wash", "bonnet"), step("s2", "dry", "bonnet"));
        Plan right = plan(step("s1", "wash", "bonnet"), step("s3", "clay", "bonnet"), step("s2", "dry", "bonnet"));

        assertThat(kinds(left, right)).containsExactly(Kind.SAME, Kind.RIGHT_ONLY, Kind.SAME);
        assertThat(kinds(right, left)).containsExactly(Kind.SAME, Kind.LEFT_ONLY, Kind.SAME);
    }

    @Test
    void otherZonesOrAnotherStartChangeAStep() {
        Plan left = plan(step("s1", "wash", "bonnet"), step("s2", "dry", "bonnet"));
        Plan right = plan(step("s1", "wash", "bonnet", "boot-lid"), at(step("s2", "dry", "bonnet"), 60));

        assertThat(kinds(left, right)).containsExactly(Kind.CHANGED, Kind.CHANGED);
    }

    @Test
    void aMovedStepCountsOnce() {
        Plan left = plan(step("s1", "wash", "bonnet"), step("s2", "clay", "bonnet"), step("s3", "dry", "bonnet"));
        Plan right = plan(step("s2", "clay", "bonnet"), step("s1", "wash", "bonnet"), step("s3", "dry", "bonnet"));

        assertThat(kinds(left, right)).containsExactly(Kind.MOVED, Kind.SAME, Kind.MOVED, Kind.SAME);
        assertThat(PlanComparison.of(left, right, Stages.front()).differences()).isEqualTo(1);
    }

    @Property(tries = 200)
    void everyStepOfBothStandsOnceAndInOrder(
            @ForAll @Size(max = 7) List<@IntRange(max = 3) Integer> a,
            @ForAll @Size(max = 7) List<@IntRange(max = 3) Integer> b) {
        Plan left = of(a);
        Plan right = of(b);

        List<Row> rows = PlanComparison.of(left, right, Stages.front()).rows();

        assertThat(rows.stream().map(Row::left).flatMap(Optional::stream).toList())
                .isEqualTo(left.steps());
        assertThat(rows.stream().map(Row::right).flatMap(Optional::stream).toList())
                .isEqualTo(right.steps());
    }

    private static Plan of(List<Integer> stages) {
        return new Plan(IntStream.range(0, stages.size())
                .mapToObj(i -> step("s" + i, "stage" + stages.get(i), "bonnet"))
                .toList());
    }
}
