package baywright.library;

import baywright.quantity.Quantity;
import baywright.quantity.ThreePoint;
import baywright.quantity.Unit;
import baywright.script.Place;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One thing that a stage says otherwise than another one: a difference of meaning, not of text. The sentence is made when it is
 * shown, by {@link StageChangeText}.
 *
 * @param aspect  what kind of declaration it is
 * @param subject which one of its kind: a driver, an item, a state, an input's name; empty where there is only one
 * @param part    what of the declaration differs
 * @param before  what was said; empty: nothing
 * @param after   what is said now; empty: nothing
 * @param old     where it was said
 * @param now     where it is said
 * @param when    inputs and facts with the values at which it differs, by name; empty: with everything at its usual value
 */
public record StageChange(
        Aspect aspect,
        String subject,
        Part part,
        Optional<Said> before,
        Optional<Said> after,
        Optional<Place> old,
        Optional<Place> now,
        Map<String, String> when) {

    /** Kinds of declarations, in the order in which they are told. */
    public enum Aspect {
        TITLE,
        ABOUT,
        FAMILY,
        REVISION,
        LIKE,
        SURFACE,
        INPUT,
        NEED,
        REFUSAL,
        PREFERENCE,
        SETS,
        CLEARS,
        ATTENDED,
        STANDING,
        SET_UP,
        USE,
        REMOVAL,
        ITEM_HAZARD,
        RISK,
        PROTECTION,
        APART,
        PEOPLE,
        MOST_PEOPLE,
        SHARES,
        SKILL,
        CHECKER,
        BAY,
        EQUIPMENT,
        COLDEST,
        WARMEST,
        DRIEST,
        DAMPEST,
        CHECK,
        MISTAKE,
        EXAMPLE,
        /** That it can be worked out at all. */
        WORKS
    }

    /** Parts of a declaration. */
    public enum Part {
        /** The declaration as a whole. */
        ITSELF,
        REASON,
        TIMES,
        AFTER,
        REACH,
        SPARES,
        PER,
        DILUTION,
        USUAL,
        LONGEST
    }

    /** A value that was declared. */
    public sealed interface Said {}

    /** Words, ids, choices; empty where a declaration says no more than that it is there. */
    public record Words(String text) implements Said {}

    /** A bare number. */
    public record Count(BigDecimal number) implements Said {
        public Count {
            number = plain(number);
        }
    }

    /** An amount; alike in another unit of the same dimension it is the same. */
    public record Amount(Quantity amount) implements Said {
        @Override
        public boolean equals(Object other) {
            return other instanceof Amount that
                    && amount.dimension() == that.amount.dimension()
                    && amount.inBase().compareTo(that.amount.inBase()) == 0;
        }

        @Override
        public int hashCode() {
            return plain(amount.inBase()).hashCode();
        }
    }

    /** Three points in one unit. */
    public record Points(ThreePoint points, Unit unit) implements Said {
        public Points {
            points = new ThreePoint(plain(points.least()), plain(points.likely()), plain(points.most()));
        }
    }

    public StageChange {
        when = Collections.unmodifiableMap(new TreeMap<>(when));
        if (before.equals(after)) {
            throw new IllegalArgumentException(aspect + " " + subject + " says " + after + " before and after");
        }
    }

    /** The same without the values at which it was met. */
    StageChange anyhow() {
        return new StageChange(aspect, subject, part, before, after, old, now, Map.of());
    }

    static BigDecimal plain(BigDecimal number) {
        return number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    }
}
