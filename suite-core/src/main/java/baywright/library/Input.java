package baywright.library;

import baywright.quantity.Dimension;
import baywright.script.Place;
import baywright.script.Value;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something a step may set on its stage.
 *
 * @param name      name by which the script and the plan know it
 * @param kind      what it takes
 * @param choices   for a choice: the allowed texts, in order; else empty
 * @param dimension for a measure: what it measures; else empty
 * @param least     for a count or a measure: smallest allowed, in the usual's unit
 * @param most      for a count or a measure: largest allowed
 * @param usual     value when the plan says nothing; the same in script, window and documents
 * @param why       what it is for; may be empty
 * @param place     where it was declared
 */
public record Input(
        String name,
        Kind kind,
        List<String> choices,
        Optional<Dimension> dimension,
        Optional<Value> least,
        Optional<Value> most,
        Value usual,
        String why,
        Place place) {

    /** What an input takes. */
    public enum Kind {
        CHOICE,
        COUNT,
        MEASURE,
        YES_NO
    }

    public Input {
        choices = List.copyOf(choices);
    }

    /** Values at which a script may say something else than at the usual one: every choice, yes and no, the ends of a range. */
    public List<Value> samples() {
        return switch (kind) {
            case CHOICE -> choices.stream().map(c -> Value.of(c, place)).toList();
            case YES_NO -> List.of(Value.of(true, place), Value.of(false, place));
            case COUNT, MEASURE ->
                Stream.of(least, most).flatMap(Optional::stream).toList();
        };
    }
}
