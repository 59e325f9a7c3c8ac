package baywright.plan;

import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import baywright.plan.StateCourse.Mark;
import baywright.plan.StateCourse.Row;
import baywright.vehicle.Survey;
import baywright.vehicle.ZoneSurvey;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class StateCourseTest {

    private static final Setting SETTING = new Stages()
            .opposites("dry", "wet")
            .states("soiled", "washed")
            .perishing("wiped", 30)
            .stage(terms("wash").sets("washed", "wet").clears("soiled"))
            .stage(terms("dry").sets("dry"))
            .stage(terms("wipe").sets("wiped"))
            .stage(terms("look").takes(60))
            .setting(new Survey(Map.of(), List.of(), Map.of("bonnet", found("soiled"))));

    private static ZoneSurvey found(String... states) {
        ZoneSurvey none = ZoneSurvey.NOTHING;
        return new ZoneSurvey(
                none.facts(), List.of(states), none.counts(), none.readings(), none.unreadable(), none.notes());
    }

    private static StateCourse course(Plan plan) {
        return StateCourse.of(Explanation.of(SETTING, plan).zone("bonnet").orElseThrow(), plan);
    }

    private static List<Mark> marks(StateCourse course, String state) {
        return course.rows().stream()
                .filter(r -> r.state().equals(state))
                .flatMap(r -> r.cells().stream())
                .map(StateCourse.Cell::mark)
                .toList();
    }

    @Test
    void aStateComesIsHeldAndGoes() {
        StateCourse course =
                course(plan(step("s1", "wash", "bonnet"), step("s2", "look", "boot-lid"), step("s3", "dry", "bonnet")));

        assertThat(course.steps()).containsExactly("s1", "s2", "s3");
        assertThat(marks(course, "wet")).containsExactly(Mark.SET, Mark.HELD, Mark.CLEARED);
        assertThat(marks(course, "washed")).containsExactly(Mark.SET, Mark.HELD, Mark.HELD);
        assertThat(marks(course, "dry")).containsExactly(Mark.ABSENT, Mark.ABSENT, Mark.SET);
    }

    @Test
    void whatWasFoundStandsFirstAndSaysSo() {
        StateCourse course = course(plan(step("s1", "wash", "bonnet")));

        assertThat(course.rows())
                .extracting(Row::state, Row::found, Row::lasts)
                .startsWith(tuple("soiled", true, false));
        assertThat(marks(course, "soiled")).containsExactly(Mark.CLEARED);
    }

    @Test
    void aStateThatDoesNotLastGoesByItself() {
        StateCourse course = course(
                plan(step("s1", "wipe", "bonnet"), step("s2", "look", "boot-lid"), step("s3", "look", "bonnet")));

        Row wiped = course.rows().stream()
                .filter(r -> r.state().equals("wiped"))
                .findFirst()
                .orElseThrow();
        assertThat(wiped.cells()).anySatisfy(cell -> {
            assertThat(cell.mark()).isEqualTo(Mark.CLEARED);
            assertThat(cell.itself()).isTrue();
        });
    }

    @Property(tries = 100)
    void whatLastsIsWhatTheProofFindsAtTheEnd(@ForAll @Size(max = 8) List<@IntRange(max = 3) Integer> stages) {
        String[] names = {"wash", "dry", "wipe", "look"};
        Plan plan = new Plan(IntStream.range(0, stages.size())
                .mapToObj(i -> step("s" + i, names[stages.get(i)], i % 3 == 2 ? "boot-lid" : "bonnet"))
                .toList());

        Set<String> lasting =
                course(plan).rows().stream().filter(Row::lasts).map(Row::state).collect(Collectors.toSet());

        assertThat(lasting).isEqualTo(Prover.prove(SETTING, plan).ends().get("bonnet"));
    }
}
