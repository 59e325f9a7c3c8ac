package baywright.plan;

import baywright.library.Rule;
import baywright.library.Rule.Spoken;
import baywright.quantity.Quantity;
import baywright.script.ScriptFault;
import baywright.script.Value;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a rule makes of its answers.
 *
 * @param spoken  empty when it stays silent
 * @param read    the figures that decided it, as text by what was asked
 * @param failure what was wrong when it could not be worked out, else empty
 */
record Verdict(Optional<Spoken> spoken, Map<String, String> read, String failure) {

    private static final Verdict SILENT = new Verdict(Optional.empty(), Map.of(), "");

    static Verdict of(Rule rule, List<Object> answers) {
        Optional<Spoken> spoken;
        try {
            spoken = rule.judge().of(answers);
        } catch (ScriptFault fault) {
            return new Verdict(Optional.empty(), Map.of(), fault.getMessage());
        }
        if (spoken.isEmpty()) {
            return SILENT;
        }
        Map<String, String> read = new LinkedHashMap<>();
        for (int number : spoken.get().read()) {
            Object answer = answers.get(number);
            if (tells(answer)) {
                read.put(rule.asks().get(number).shown(), shown(answer));
            }
        }
        return new Verdict(spoken, read, "");
    }

    /** A truth is told by the rule's title; that nothing was done before is not worth a word. */
    private static boolean tells(Object answer) {
        return !(answer instanceof Boolean)
                && answer != Value.NOTHING
                && !(answer instanceof BigDecimal number && number.signum() == 0);
    }

    private static String shown(Object answer) {
        if (answer instanceof Quantity time) {
            return time.inBase().setScale(0, RoundingMode.HALF_UP).toPlainString() + " min";
        }
        return answer instanceof BigDecimal number ? number.toPlainString() : answer.toString();
    }

    boolean isSilent() {
        return spoken.isEmpty() && failure.isEmpty();
    }
}
