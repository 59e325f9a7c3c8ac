package baywright.library;

import baywright.library.StageTerms.Origin;
import baywright.script.Call;
import baywright.script.Handler;
import baywright.script.Place;
import baywright.script.Value;
import java.util.HashMap;
import java.util.Map;

/** What the blocks have in common. */
abstract class Blocks implements Handler {

    private final String section;
    private final Map<String, Place> once = new HashMap<>();

    Blocks(String section) {
        this.section = section;
    }

    @Override
    public final String section() {
        return section;
    }

    /** Where the word stands and what it depends on. */
    static Origin origin(Call call) {
        return new Origin(call.place(), call.from());
    }

    /** Where one of its arguments stands and what the word depends on. */
    static Origin origin(Call call, Value argument) {
        return new Origin(argument.place(), call.from());
    }

    /** Notes a word that stands in a condition although it holds always; whether it does. */
    static boolean refusedInCondition(Call call) {
        if (call.isConditional()) {
            call.error(
                    call.place(),
                    "conditional",
                    "'" + call.word().name() + "' cannot stand in an if, a switch or a loop");
        }
        return call.isConditional();
    }

    /** Notes a word that may stand only once; branches that exclude each other do not count. */
    void onlyOnce(Call call) {
        onlyOnce(call, call.word().name());
    }

    /** The same where one word may stand once for each of several things. */
    void onlyOnce(Call call, String what) {
        if (call.isSpeculative()) {
            return;
        }
        Place before = once.putIfAbsent(what, call.place());
        if (before != null) {
            call.error(call.place(), "duplicate", "'" + what + "' is already given at " + before);
        }
    }
}
