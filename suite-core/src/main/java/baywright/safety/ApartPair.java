package baywright.safety;

import baywright.plan.Severity;
import java.util.List;

/**
 * Two kinds of thing that must not meet. A kind is named by selectors such as {@code group:acid}, {@code hazard:EUH031},
 * {@code item:iron-remover}, {@code equipment:infrared lamp}, {@code risk:heat}, {@code stage:warm-cure} and
 * {@code family:correction}; one that fits is enough.
 *
 * @param id       stable kebab-case id; a shop's pair replaces the usual one of that id
 * @param first    selectors of the one
 * @param second   selectors of the other
 * @param within   when they meet
 * @param minutes  how long the first is still about after it was last in use, from 0; for {@link Within#TOGETHER}
 * @param severity how grave it is
 * @param why      what happens, words for people
 */
public record ApartPair(
        String id, List<String> first, List<String> second, Within within, int minutes, Severity severity, String why) {

    /** When two things meet. On a zone without a rinse between two items meet in either case. */
    public enum Within {
        /** In one bay while the other is in use or stands open. */
        TOGETHER,
        /** In one bay on one day, rinsed between or not. */
        DAY
    }

    /** What a selector may begin with. */
    public static final List<String> KINDS = List.of("group", "hazard", "item", "equipment", "risk", "stage", "family");

    public ApartPair {
        first = List.copyOf(first);
        second = List.copyOf(second);
        if (minutes < 0) {
            throw new IllegalArgumentException("minutes of '" + id + "' are counted from 0, got " + minutes);
        }
        for (String selector :
                java.util.stream.Stream.concat(first.stream(), second.stream()).toList()) {
            if (!isSelector(selector)) {
                throw new IllegalArgumentException(
                        "'" + id + "' has the selector '" + selector + "', give one such as group:acid");
            }
        }
    }

    /** Whether a text can select something: one of {@link #KINDS}, a colon and a name. */
    public static boolean isSelector(String text) {
        int colon = text.indexOf(':');
        return colon > 0
                && KINDS.contains(text.substring(0, colon))
                && !text.substring(colon + 1).isBlank();
    }
}
