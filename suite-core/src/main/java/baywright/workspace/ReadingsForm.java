package baywright.workspace;

import baywright.quantity.Unit;
import java.util.Optional;

/**
 * What a person says about a file of readings that does not say it itself. What is empty must follow from the whole file
 * without doubt.
 *
 * @param separator comma, semicolon or tab
 * @param decimal   point or comma
 * @param unit      {@link Unit#MICROMETRE} or {@link Unit#MIL}
 */
public record ReadingsForm(Optional<Character> separator, Optional<Character> decimal, Optional<Unit> unit) {

    /** Nothing is said. */
    public static final ReadingsForm UNSAID = new ReadingsForm(Optional.empty(), Optional.empty(), Optional.empty());
}
