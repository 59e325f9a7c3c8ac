package baywright.library;

import baywright.script.Value;
import java.util.List;
import java.util.Map;

/**
 * A worked example with the places of what it refers to, for the check across the library.
 *
 * @param states the states that it names
 * @param items  the amount of each item that it names
 */
record ExampleDraft(Example example, List<Value> states, Map<String, Value> items) {

    ExampleDraft {
        states = List.copyOf(states);
        items = Map.copyOf(items);
    }
}
