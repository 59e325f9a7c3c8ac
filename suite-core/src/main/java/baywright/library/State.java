package baywright.library;

import baywright.quantity.Quantity;
import baywright.script.Place;
import java.util.List;
import java.util.Optional;

/**
 * A fact about a zone, the vehicle or the bay that stages find, set and clear.
 *
 * @param id        stable kebab-case id
 * @param means     plain words for the reader of a finding
 * @param scope     what carries it
 * @param opposites states that end when this one begins
 * @param implies   states that hold whenever this one does
 * @param madeOf    for a worked-out state: it holds while all of these do; empty for a plain state
 * @param lasts     how long it holds after it was set before it must be made again; empty when it does not perish
 * @param place     where it was declared
 */
public record State(
        String id,
        String means,
        Scope scope,
        List<String> opposites,
        List<String> implies,
        List<String> madeOf,
        Optional<Quantity> lasts,
        Place place) {

    /** What carries a state. */
    public enum Scope {
        /** Each zone has its own. */
        ZONE,
        /** The vehicle as a whole has it. */
        VEHICLE,
        /** The bay gives it, or not, at the hour of the step: shade, light, drainage. */
        CONDITION
    }

    public State {
        opposites = List.copyOf(opposites);
        implies = List.copyOf(implies);
        madeOf = List.copyOf(madeOf);
    }
}
