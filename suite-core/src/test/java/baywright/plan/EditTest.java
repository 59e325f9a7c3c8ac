package baywright.plan;

import static baywright.plan.Stages.at;
import static baywright.plan.Stages.plan;
import static baywright.plan.Stages.step;
import static baywright.plan.Stages.terms;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import baywright.script.Value;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class EditTest {

    private static final Plan THREE = plan(
            step("s1", "rinse", "bonnet"),
            at(step("s2", "wipe", "bonnet", "boot-lid"), 60),
            step("s3", "coat", "bonnet"));

    private static List<String> ids(Plan plan) {
        return plan.steps().stream().map(Step::id).toList();
    }

    private static Setting setting() {
        return new Stages()
                .stage(terms("rinse"))
                .stage(terms("wipe").input(Inputs.choice("cloth", "dry", "damp")))
                .stage(terms("coat"))
                .setting();
    }

    private static String said(Edit edit) {
        return new EditText(setting(), Locale.UK).of(edit, THREE);
    }

    @Test
    void anInsertedStepStandsWhereItWasPut() {
        assertThat(ids(new Edit.Insert(step("s4", "rinse", "bonnet"), 1).applyTo(THREE)))
                .containsExactly("s1", "s4", "s2", "s3");
        assertThat(ids(new Edit.Insert(step("s4", "rinse", "bonnet"), 9).applyTo(THREE)))
                .containsExactly("s1", "s2", "s3", "s4");
    }

    @Test
    void aMovedStepStandsWhereItWasPutAndGivesUpItsFixedStart() {
        Plan moved = new Edit.Move("s2", 2).applyTo(THREE);

        assertThat(ids(moved)).containsExactly("s1", "s3", "s2");
        assertThat(moved.steps().get(2).at()).isEmpty();
        assertThat(ids(new Edit.Move("s3", 0).applyTo(THREE))).containsExactly("s3", "s1", "s2");
    }

    @Test
    void aStepThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> new Edit.Drop("s9").applyTo(THREE)).hasMessage("the plan has no step 's9'");
        assertThatThrownBy(() -> new Edit.Insert(step("s1", "rinse", "bonnet"), 0).applyTo(THREE))
                .hasMessage("the plan has a step 's1' already");
        assertThatThrownBy(() -> new Edit.Move("s1", -1)).hasMessage("a position counts from 0, got -1");
    }

    @Test
    void everyEditHasASentence() {
        assertThat(said(new Edit.Insert(step("s4", "rinse", "bonnet", "surface:glass"), 1)))
                .isEqualTo("insert rinse on bonnet, windscreen before wipe (s2)");
        assertThat(said(new Edit.Insert(step("s4", "rinse", "bonnet"), 3)))
                .isEqualTo("insert rinse on bonnet at the end");
        assertThat(said(new Edit.Move("s3", 0))).isEqualTo("move coat (s3) before everything else");
        assertThat(said(new Edit.Move("s2", 2)))
                .isEqualTo("move wipe (s2) at the end and let it start as soon as it can");
        assertThat(said(new Edit.Drop("s3"))).isEqualTo("leave out coat (s3)");
        Value damp = Value.of("damp", Stages.line("job.json", 1));
        assertThat(said(new Edit.ChangeInput("s2", "cloth", Optional.of(damp))))
                .isEqualTo("set the input cloth of wipe (s2) to damp");
        assertThat(said(new Edit.ChangeInput("s2", "cloth", Optional.empty())))
                .isEqualTo("set the input cloth of wipe (s2) back to its usual dry");
        assertThat(said(new Edit.ChangeZones("s1", List.of("bonnet", "wing-left"))))
                .isEqualTo("let rinse (s1) take in wing left as well");
        assertThat(said(new Edit.ChangeZones("s2", List.of("bonnet")))).isEqualTo("let wipe (s2) leave out boot lid");
        assertThat(said(new Edit.Delay("s2", Optional.of(Stages.MONDAY_AT_EIGHT.plusMinutes(90)))))
                .isEqualTo("start wipe (s2) on Monday 7 December, 09:30");
        assertThat(said(new Edit.Delay("s2", Optional.empty()))).isEqualTo("let wipe (s2) start as soon as it can");
    }
}
