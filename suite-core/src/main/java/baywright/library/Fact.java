package baywright.library;

import baywright.script.Place;
import baywright.script.Value;
import java.util.List;

/**
 * Something that the survey finds and that does not change by itself: paint system, hardness, soiling.
 *
 * @param id      stable kebab-case id, used in scripts as {@code surveyed('hardness')}
 * @param kind    what values it takes
 * @param choices for a choice the allowed texts, in order; else empty
 * @param usual   the value when the survey says nothing, as text; empty for a number without a usual value
 * @param means   plain words
 * @param place   where it was declared
 */
public record Fact(String id, Kind kind, List<String> choices, String usual, String means, Place place) {

    /** What values a fact takes. */
    public enum Kind {
        CHOICE,
        NUMBER,
        YES_NO
    }

    public Fact {
        choices = List.copyOf(choices);
    }

    /** Values at which a script may say something else: every choice, yes and no; a number has no ends to try. */
    public List<Value> samples() {
        return switch (kind) {
            case CHOICE -> choices.stream().map(c -> Value.of(c, place)).toList();
            case YES_NO -> List.of(Value.of(true, place), Value.of(false, place));
            case NUMBER -> List.of();
        };
    }
}
