package baywright.plan;

import baywright.library.Input;
import baywright.library.InputValues;
import baywright.library.Stage;
import baywright.script.Nearest;
import baywright.script.Value;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Checks what a step sets on its stage.
 *
 * @param accepted values that fit, by input, as the script sees them
 * @param refused  what does not fit; its stage goes on with the usual value
 */
record StepInputs(Map<String, Value> accepted, List<Refused> refused) {

    /** A value that does not fit its input. */
    record Refused(String input, String met, String wanted) {}

    static StepInputs of(Stage stage, Map<String, Value> with) {
        Map<String, Value> accepted = new TreeMap<>();
        List<Refused> refused = new ArrayList<>();
        new TreeMap<>(with).forEach((name, value) -> {
            Optional<Input> input =
                    stage.inputs().stream().filter(i -> i.name().equals(name)).findFirst();
            Optional<Value> fitting = input.filter(i -> isSane(value)).flatMap(i -> InputValues.fit(i, value));
            if (fitting.isPresent()) {
                accepted.put(name, fitting.get());
            } else {
                String wanted = input.map(InputValues::wanted).orElseGet(() -> noSuch(stage, name));
                refused.add(new Refused(name, Texts.of(value), wanted));
            }
        });
        return new StepInputs(accepted, refused);
    }

    private static boolean isSane(Value value) {
        return !(value.raw() instanceof BigDecimal number) || Amounts.isSane(number);
    }

    private static String noSuch(Stage stage, String name) {
        List<String> known = stage.inputs().stream().map(Input::name).toList();
        if (known.isEmpty()) {
            return "no input at all";
        }
        return Nearest.to(name, known)
                .map(n -> "the input '" + n + "'")
                .orElse("one of the inputs '" + String.join("', '", known) + "'");
    }
}
