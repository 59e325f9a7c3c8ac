package baywright.script;

import baywright.quantity.Quantity;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * A value of the stage language with where it was written and what it depends on.
 *
 * @param raw   one of: {@link BigDecimal}, {@link Quantity}, {@link String}, {@link Boolean}, {@code List<Value>},
 *              {@code Map<String, Value>} in order of writing, {@link Range}, {@link #NOTHING}
 * @param place where it was written; for a computed value the place of its expression
 * @param from  names of the inputs and surveyed facts that it was computed from
 */
public record Value(Object raw, Place place, Set<String> from) {

    /** Stands for Groovy's {@code null}. */
    public static final Object NOTHING = new Object() {
        @Override
        public String toString() {
            return "nothing";
        }
    };

    /** Both ends included, both numbers or both quantities of one dimension. */
    public record Range(Value from, Value to) {}

    public Value {
        from = Set.copyOf(from);
    }

    public static Value of(Object raw, Place place) {
        return new Value(raw, place, Set.of());
    }

    public Value at(Place where) {
        return new Value(raw, where, from);
    }

    public Value dependingOn(Collection<String> more) {
        if (more.isEmpty()) {
            return this;
        }
        Set<String> all = new TreeSet<>(from);
        all.addAll(more);
        return new Value(raw, place, all);
    }

    /** What kind of value it is, in words for a message: {@code the number 4}, {@code the text 'wet'}. */
    public String described() {
        if (raw instanceof BigDecimal number) {
            return "the number " + number.toPlainString();
        }
        if (raw instanceof Quantity quantity) {
            return quantity.amount().toPlainString() + "." + quantity.unit().symbol();
        }
        if (raw instanceof String text) {
            boolean fits = text.length() <= Limits.QUOTED;
            return "the text '" + (fits ? text : text.substring(0, Limits.QUOTED) + "…") + "'";
        }
        if (raw instanceof Boolean yes) {
            return yes ? "true" : "false";
        }
        if (raw instanceof List<?> list) {
            return "a list of " + list.size();
        }
        if (raw instanceof Map<?, ?>) {
            return "a map";
        }
        return raw instanceof Range ? "a range" : "nothing";
    }
}
