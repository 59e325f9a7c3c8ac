package baywright.plan;

import baywright.vehicle.Survey;
import java.time.LocalDateTime;

/** A job of one step that takes one person so many minutes in the bay {@code box}. */
public final class OneStep {

    private OneStep() {}

    public static Setting setting(int minutes, LocalDateTime start) {
        Stages stages = new Stages()
                .bay("box", "box")
                .stage(Stages.terms("work").bay("box").on("paint").takes(minutes));
        return new Setting(
                stages.library(),
                Stages.front(),
                Survey.NOTHING,
                stages.setting().bays(),
                start);
    }

    public static Plan plan() {
        return Stages.plan(Stages.step("s1", "work", "bonnet"));
    }
}
