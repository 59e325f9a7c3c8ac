package baywright.script;

/**
 * One thing wrong with a script or a library.
 *
 * @param place    where
 * @param severity whether the stage can be used all the same
 * @param code     stable kebab-case id of the kind of problem, for example {@code unknown-state}
 * @param message  what was met, what was expected, the nearest right choice; one line, no full stop
 * @param word     the vocabulary word whose reference helps, or the empty text
 */
public record Problem(Place place, Severity severity, String code, String message, String word)
        implements Comparable<Problem> {

    /** An error makes its stage unusable; a warning does not. */
    public enum Severity {
        ERROR,
        WARNING
    }

    @Override
    public int compareTo(Problem other) {
        int byPlace = place.compareTo(other.place);
        return byPlace != 0 ? byPlace : message.compareTo(other.message);
    }

    @Override
    public String toString() {
        return place + ": " + message;
    }
}
