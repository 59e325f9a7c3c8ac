package baywright.plan;

import baywright.library.Input;
import baywright.script.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Inputs of stages built by hand. */
final class Inputs {

    private Inputs() {}

    /** A choice whose first text is the usual one. */
    static Input choice(String name, String... texts) {
        return new Input(
                name,
                Input.Kind.CHOICE,
                List.of(texts),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Value.of(texts[0], Stages.line("inputs.groovy", 1)),
                "",
                Stages.line("inputs.groovy", 1));
    }

    /** The text of an input, or nothing when the step leaves it at its usual value. */
    static String text(Map<String, Value> with, String name) {
        return with.containsKey(name) ? with.get(name).raw().toString() : "";
    }
}
