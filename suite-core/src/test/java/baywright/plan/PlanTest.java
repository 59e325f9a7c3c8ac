package baywright.plan;

import static baywright.plan.Stages.at;
import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class PlanTest {

    private static final Plan FOUR = plan(
            step("s1", "wash", "bonnet"),
            at(step("s2", "rinse", "bonnet"), 60),
            step("s3", "dry", "bonnet"),
            step("s4", "look", "bonnet"));

    private static List<String> ids(Plan plan) {
        return plan.steps().stream().map(Step::id).toList();
    }

    @Test
    void severalStepsMoveTogetherInTheirOrder() {
        assertThat(ids(FOUR.moved(List.of("s3", "s1"), 4))).containsExactly("s2", "s4", "s1", "s3");
        assertThat(ids(FOUR.moved(List.of("s4"), 0))).containsExactly("s4", "s1", "s2", "s3");
        assertThat(ids(FOUR.moved(List.of("s1"), 3))).containsExactly("s2", "s3", "s1", "s4");
    }

    @Test
    void aMoveOfOneStepIsThatOfAnEdit() {
        assertThat(FOUR.moved(List.of("s2"), 4)).isEqualTo(new Edit.Move("s2", 3).applyTo(FOUR));
    }

    @Test
    void aMoveToWhereTheStepsStandLeavesEverythingAsItIs() {
        assertThat(FOUR.moved(List.of("s2"), 1)).isSameAs(FOUR);
        assertThat(FOUR.moved(List.of("s2"), 2)).isSameAs(FOUR);
        assertThat(FOUR.moved(List.of("s9"), 0)).isSameAs(FOUR);
    }

    @Property
    void aMoveLosesNoStepAndKeepsTheOrderOfTheOthers(
            @ForAll Set<@IntRange(min = 0, max = 9) Integer> chosen, @ForAll @IntRange(min = -2, max = 14) int before) {
        Plan ten = new Plan(IntStream.range(0, 10)
                .mapToObj(i -> step("s" + i, "wash", "bonnet"))
                .toList());
        List<String> block = chosen.stream().map(i -> "s" + i).toList();

        List<String> moved = ids(ten.moved(block, before));

        assertThat(moved).containsExactlyInAnyOrderElementsOf(ids(ten));
        assertThat(moved.stream().filter(i -> !block.contains(i)).toList()).isSorted();
        assertThat(moved.stream().filter(block::contains).toList()).isSorted();
    }

    @Test
    void aFreeIdIsTakenByNoStep() {
        assertThat(FOUR.freeId()).isEqualTo("s5");
        assertThat(plan(step("s2", "wash", "bonnet")).freeId()).isEqualTo("s3");
    }

    @Test
    void aStepIsReplacedByItsIdAndDroppedByIt() {
        Step could = FOUR.steps().get(2).withPriority(Step.Priority.COULD);

        assertThat(FOUR.with(could).steps().get(2)).isEqualTo(could);
        assertThat(FOUR.with(step("s9", "wash", "bonnet"))).isEqualTo(FOUR);
        assertThat(ids(FOUR.without(List.of("s1", "s3", "s9")))).containsExactly("s2", "s4");
        assertThat(FOUR.step("s3")).isEqualTo(Optional.of(FOUR.steps().get(2)));
    }
}
